package strawbed.exchange.ade;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import strawbed.calf.Numbers;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Term.TagScheme;

/**
 * How animals are called in the document: a scheme, and a number under it.
 *
 * <p>A calf is called by its official tag where one was told, else by its identity in this record; all its other
 * identifiers stand beside. A scheme that is not the standard's own begins with the farm's name.
 */
final class Identifiers {
    /**
     * A US animal identification number: 840 and twelve digits. Sources: the list of well-known animal identifier
     * schemes of the ICAR Animal Data Exchange standard; US Code of Federal Regulations, title 9, part 86.
     */
    private static final Pattern US_NUMBER = Pattern.compile("840[0-9]{12}");

    private static final String US_SCHEME = "usa.ain";

    private final AdeSource source;

    private record Identifier(String scheme, String id) {
        Fields fields() {
            return new Fields().text("id", id).text("scheme", scheme);
        }
    }

    Identifiers(AdeSource source) {
        this.source = source;
    }

    Fields main(CalfFacts calf) {
        return identifier(calf).fields();
    }

    /** Its other identifiers, each once. */
    List<Fields> others(CalfFacts calf) {
        Set<Identifier> others = new LinkedHashSet<>();
        others.add(own(calf));
        calf.tags(TagScheme.OFFICIAL).forEach(tag -> others.add(official(tag.value())));
        calf.tags(TagScheme.FARM)
                .forEach(tag -> others.add(
                        new Identifier(source.scheme("farm-tag"), tag.value().number())));
        others.remove(identifier(calf));
        return others.stream().map(Identifier::fields).toList();
    }

    /** The official tag that it is called by. */
    static Optional<CalfFacts.Told<EarTagFitted>> officialTag(CalfFacts calf) {
        List<CalfFacts.Told<EarTagFitted>> tags = calf.tags(TagScheme.OFFICIAL);
        return tags.isEmpty() ? Optional.empty() : Optional.of(tags.get(tags.size() - 1));
    }

    /** A cow by her number on this farm; 0412 and 412 are one cow. */
    Fields cow(String number) {
        return new Identifier(source.scheme("cow"), Numbers.plain(number)).fields();
    }

    Fields breed(String word) {
        return new Identifier(source.scheme("breed"), word).fields();
    }

    private Identifier identifier(CalfFacts calf) {
        return officialTag(calf).map(tag -> official(tag.value())).orElseGet(() -> own(calf));
    }

    private Identifier own(CalfFacts calf) {
        return new Identifier(source.scheme("calf"), calf.id().toString());
    }

    private Identifier official(EarTagFitted tag) {
        String scheme = US_NUMBER.matcher(tag.number()).matches() ? US_SCHEME : source.scheme("official-tag");
        return new Identifier(scheme, tag.number());
    }
}
