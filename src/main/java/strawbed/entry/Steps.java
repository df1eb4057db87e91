package strawbed.entry;

import static strawbed.entry.EntryUnit.*;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.statement.Scale;

/**
 * The steps that kinds of facts are put together from.
 *
 * <p>Amounts that people pour and strengths that stand on a bottle have quick values. What is read off an instrument has
 * none: a button beside the true figure would tempt people to round it. Quick values are common practice, no published
 * source.
 */
final class Steps {
    /** Animals, batches and places have numbers that can be called: up to four digits. */
    private static final int CALLED = 4;

    private static final int LONGEST_TAG = 15;

    /** An official number has fifteen digits; others are taken too, so that they can be asked about, as when spoken. */
    private static final int LEAST_OFFICIAL = 8;

    private static final int MOST_OFFICIAL = 17;

    /** The country code of the United States in ISO 3166, with which official numbers there begin. */
    private static final String UNITED_STATES = "840";

    private static final List<BigDecimal> QUARTERS =
            List.of(new BigDecimal("0.25"), new BigDecimal("0.5"), new BigDecimal("0.75"));
    private static final List<Duration> AGO = Stream.of(0, 5, 10, 15, 30, 45, 60, 90, 120)
            .map(Duration::ofMinutes)
            .toList();

    private Steps() {}

    static Step.Choose choose(Question question, List<Option> options) {
        return new Step.Choose(question, options, false);
    }

    static Step.Choose choose(Question question, Class<? extends Enum<?>> list) {
        return choose(question, words(list));
    }

    static Step.Choose perhaps(Question question, Class<? extends Enum<?>> list) {
        return new Step.Choose(question, words(list), true);
    }

    private static List<Option> words(Class<? extends Enum<?>> list) {
        return Stream.of(list.getEnumConstants()).<Option>map(Option.Word::new).toList();
    }

    static Step.Quantity volume(FarmChoices farm, String... quick) {
        return quantity(Question.VOLUME, farm, null, "0.01", "100", 2, false, quick, QUARTERS, QUART, PINT, LITRE);
    }

    static Step.Quantity weight(FarmChoices farm) {
        return quantity(
                Question.WEIGHT, farm, null, "0.01", "2000", 2, false, new String[0], List.of(), POUND, KILOGRAM);
    }

    /** Of a body, of milk or of the air; odd ones are asked about later. */
    static Step.Quantity temperature(
            Question question, FarmChoices farm, @Nullable Scale scale, boolean mayBeLeftOut, String... quick) {
        String low = scale == null ? "-99" : "0";
        return quantity(question, farm, scale, low, "1000", 2, mayBeLeftOut, quick, List.of(), FAHRENHEIT, CELSIUS);
    }

    static Step.Quantity percent(Question question, int decimals, boolean mayBeLeftOut, String... quick) {
        return quantity(
                question, FarmChoices.USUAL, null, "0", "100", decimals, mayBeLeftOut, quick, List.of(), PERCENT);
    }

    /** What one unit only is for. */
    static Step.Quantity reading(Question question, EntryUnit unit, int decimals) {
        return quantity(
                question, FarmChoices.USUAL, null, "0", "999.99", decimals, false, new String[0], List.of(), unit);
    }

    private static Step.Quantity quantity(
            Question question,
            FarmChoices farm,
            @Nullable Scale scale,
            String low,
            String high,
            int decimals,
            boolean mayBeLeftOut,
            String[] quick,
            List<BigDecimal> parts,
            EntryUnit... units) {
        List<EntryUnit> ordered = Stream.of(units)
                .sorted(Comparator.comparing(unit -> unit.isMetric() != farm.metric()))
                .toList();
        EntryUnit first = ordered.get(0);
        return new Step.Quantity(
                question,
                ordered,
                scale,
                new BigDecimal(low),
                new BigDecimal(high),
                decimals,
                Stream.of(quick)
                        .map(amount -> new Answer.Amount(new BigDecimal(amount), first))
                        .toList(),
                parts,
                mayBeLeftOut);
    }

    /** The number of an animal, a batch or a place. */
    static Step.Digits called(Question question) {
        return new Step.Digits(question, 1, CALLED, List.of(), false);
    }

    static Step.Digits perhapsCalled(Question question) {
        return new Step.Digits(question, 1, CALLED, List.of(), true);
    }

    static Step.Digits tag() {
        return new Step.Digits(Question.TAG, 1, LONGEST_TAG, List.of(), false);
    }

    static Step.Digits officialTag() {
        return new Step.Digits(Question.OFFICIAL_TAG, LEAST_OFFICIAL, MOST_OFFICIAL, List.of(UNITED_STATES), false);
    }

    /** When a fact was; it was now where nobody says. */
    static Step.Time when() {
        return new Step.Time(Question.WHEN, AGO, false, true);
    }

    static Step.Time drawn() {
        return new Step.Time(Question.DRAWN, AGO, false, true);
    }

    /** Of a birth, a finding or a death: nobody may have seen it. */
    static List<Asked> ownTime() {
        return List.of(
                Asked.always(new Step.Time(Question.WHEN, AGO, true, true)),
                new Asked(new Step.Time(Question.EARLIEST, List.of(), false, false), Given::isBetween),
                new Asked(new Step.Time(Question.LATEST, List.of(), false, false), Given::isBetween));
    }
}
