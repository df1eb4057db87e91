package strawbed.statement;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** The facts of the grammar file colostrum.abnf. */
final class ColostrumFacts {
    static final Map<String, FactReader> READERS = Map.ofEntries(
            Map.entry("fed", (tree, speech) -> fed(tree)),
            Map.entry(
                    "left",
                    (tree, speech) ->
                            new Event.ColostrumLeft(volume(tree.child("volume").orElseThrow()))),
            Map.entry("refused", (tree, speech) -> new Event.FeedRefused()),
            Map.entry("nursed", (tree, speech) -> new Event.DamNursed()),
            Map.entry("colostrum_brix", (tree, speech) -> new Event.ColostrumTestedByBrix(brix(tree))),
            Map.entry("hydrometer", (tree, speech) -> hydrometer(tree)),
            Map.entry("colostrum_source", (tree, speech) -> source(tree)),
            Map.entry("colostrum_stored", (tree, speech) -> stored(tree)));

    private ColostrumFacts() {}

    static Volume volume(ParseTree tree) {
        String unit = tree.child("volume_unit")
                .or(() -> tree.child("one_unit"))
                .map(Tags::tag)
                .orElseThrow();
        return new Volume(
                tree.child("volume_amount").map(ColostrumFacts::amount).orElseGet(() -> new BigDecimal(Tags.tag(tree))),
                switch (unit) {
                    case "quart" -> VolumeUnit.QUART;
                    case "pint" -> VolumeUnit.PINT;
                    case "litre" -> VolumeUnit.LITRE;
                    default -> throw new IllegalStateException("the tag {" + unit + "} is no unit of volume");
                });
    }

    private static BigDecimal amount(ParseTree tree) {
        BigDecimal share =
                tree.child("share").map(Tags::tag).map(BigDecimal::new).orElse(BigDecimal.ZERO);
        return SpokenNumber.decimal(tree).add(share);
    }

    private static Event fed(ParseTree tree) {
        ParseTree how =
                tree.descendant("by_what").or(() -> tree.child("fed_how")).orElse(null);
        return new Event.ColostrumFed(
                volume(tree.child("volume").orElseThrow()),
                how == null ? null : Tags.term(Term.FeedingMethod.class, how),
                temperature(tree.descendant("warmth"), Scale.OF_FEED));
    }

    private static @Nullable Temperature temperature(Optional<ParseTree> tree, Scale scale) {
        return tree.map(found -> MeasureFacts.degrees(found, scale)).orElse(null);
    }

    private static BigDecimal brix(ParseTree tree) {
        return SpokenNumber.decimal(
                tree.child("brix_value").orElseThrow().child("small_decimal").orElseThrow());
    }

    private static Event hydrometer(ParseTree tree) {
        return new Event.ColostrumTestedByHydrometer(
                new BigDecimal(
                        SpokenNumber.digits(tree.child("hydrometer_value").orElseThrow())),
                temperature(tree.child("milk_temperature"), Scale.OF_MILK));
    }

    private static Event source(ParseTree tree) {
        Term.ColostrumSource source = null;
        Term.ColostrumTreatment treatment = null;
        for (ParseTree word : tree.descendants()
                .filter(part -> part.rule().equals("origin_word") || part.rule().equals("bare_word"))
                .toList()) {
            Optional<Term.ColostrumSource> said = Term.find(Term.ColostrumSource.class, Tags.tag(word));
            if (said.isPresent()) {
                source = said.get();
            } else {
                treatment = Tags.term(Term.ColostrumTreatment.class, word);
            }
        }
        String cow = tree.descendant("cow_number").map(Tags::number).orElse(null);
        String batch = tree.descendant("batch_number").map(Tags::number).orElse(null);
        if (cow != null) {
            source = Term.ColostrumSource.COW;
        } else if (batch != null && source == null) {
            source = Term.ColostrumSource.BATCH;
        }
        return new Event.ColostrumSourceNoted(source, cow, batch, treatment);
    }

    private static Event stored(ParseTree tree) {
        return new Event.ColostrumStored(
                Tags.number(tree.child("batch_number").orElseThrow()),
                volume(tree.child("volume").orElseThrow()),
                tree.child("brix_value").isPresent() ? brix(tree) : null,
                Tags.termIn(Term.ColostrumTreatment.class, tree, "stored_treatment"));
    }
}
