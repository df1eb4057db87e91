package strawbed.exchange.ade;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.event.RecordedEvent;
import strawbed.event.Term.TagScheme;

/** Calves as animals of the standard. */
final class Animals {
    private final AdeSource source;
    private final Identifiers identifiers;

    Animals(AdeSource source, Identifiers identifiers) {
        this.source = source;
        this.identifiers = identifiers;
    }

    /**
     * The calf. The dam is not named as its parent: a parent without a relation is read as the genetic one, and the
     * record knows the cow that bore it.
     */
    Resource resource(CalfFacts calf) {
        List<RecordedEvent> told = told(calf);
        Fields fields = Resource.begin(AdeType.ANIMAL, source, calf.id().toString(), told);
        identity(calf, fields)
                .time("birthDate", calf.bornAt())
                .object("primaryBreed", calf.breed().map(breed -> identifiers.breed(breed.value())))
                .text("status", calf.death().map(death -> AdeWords.DEAD));
        return Resource.of(AdeType.ANIMAL, fields, told);
    }

    /** Adds who it is: what an animal and an offspring of a birth have in common. */
    Fields identity(CalfFacts calf, Fields fields) {
        return fields.object("identifier", identifiers.main(calf))
                .list("alternativeIdentifiers", identifiers.others(calf))
                .text("specie", AdeWords.CATTLE)
                .text(
                        "gender",
                        calf.sex().map(sex -> AdeWords.gender(sex.value())).orElse(AdeWords.UNKNOWN_GENDER))
                .text("managementTag", calf.number().map(CalfFacts.Told::value));
    }

    private static List<RecordedEvent> told(CalfFacts calf) {
        List<RecordedEvent> told = new ArrayList<>(calf.openings());
        Stream.of(calf.number(), calf.breed(), calf.sex())
                .forEach(fact -> fact.ifPresent(known -> told.add(known.by())));
        Stream.of(TagScheme.values())
                .flatMap(scheme -> calf.tags(scheme).stream())
                .forEach(tag -> told.add(tag.by()));
        return told;
    }
}
