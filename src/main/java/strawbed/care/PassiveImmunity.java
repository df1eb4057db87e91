package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.SerumTested;
import strawbed.event.Term.ColostrumSource;
import strawbed.event.Term.SerumMeasure;
import strawbed.event.Term.Sign;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * A calf's passive immunity, by one sample of its serum. A dead calf's sample tells as much as a living one's.
 *
 * <p>Antibody is trusted over protein and Brix, and between these two, as between samples of one measure, what was
 * drawn later, then what was told later; this order is common practice, no published source. A sample that cannot be
 * judged gives way to the next.
 *
 * <p>Sources: categories and age from Lombard 2020, doi 10.3168/jds.2019-17955; the earliest age from Bandlow 2023, doi
 * 10.3389/fvets.2023.1094272.
 *
 * @param sample the one it rests on, with its measure
 * @param age at which the blood was drawn
 * @param start what the age is counted from
 * @param notes what to read the category with
 */
public record PassiveImmunity(
        ImmunityCategory category, Timed<SerumTested> sample, Duration age, AgeStart start, Set<Note> notes) {
    /**
     * Scouring up to this long after the blood was drawn may have begun before, and so may two samples this near be of
     * the same blood. Common practice, no published source.
     */
    private static final Duration NEAR = Duration.ofHours(24);

    /** What to read a category with. */
    public enum Note {
        /**
         * Protein and Brix screen, they do not diagnose: of failed transfers some pass, of passes some fail. Source:
         * Deelen 2014, doi 10.3168/jds.2014-7939; Elsohaby 2015, doi 10.1111/jvim.12560.
         */
        SCREENING,
        /**
         * The lines are those of Holsteins. Jerseys have about 0.5 g/dL more protein and more than twice the antibody.
         * Source: Villarroel 2013, doi 10.4172/2329-888X.1000106.
         */
        JERSEY,
        /** The calf scoured: lost water raises protein and Brix. Common practice, no published source. */
        SCOURING,
        /** Protein and Brix of the same blood lie too far apart: one of them may be mistyped. See {@link SerumScales}. */
        SCALES_DISAGREE
    }

    public PassiveImmunity {
        EnumSet<Note> sorted = EnumSet.noneOf(Note.class);
        sorted.addAll(notes);
        notes = Collections.unmodifiableSet(sorted);
    }

    /** By the best sample that can be judged; where there is none, why the best one cannot be. */
    public static Judged<PassiveImmunity> of(CalfRecord calf, Farm farm) {
        List<Judged<PassiveImmunity>> judged = byTrust(calf).stream()
                .map(sample -> of(sample, calf, farm.protocolFor(calf)))
                .toList();
        return judged.stream()
                .filter(each -> each.value().isPresent())
                .findFirst()
                .or(() -> judged.stream().findFirst())
                .orElseGet(() -> Judged.not(WhyNot.NO_SAMPLE));
    }

    /** What was measured. */
    public SerumMeasure measure() {
        return sample.event().kind();
    }

    /** The reading as it is shown, in the measure's unit; see {@link ImmunityCategory#shown}. */
    public BigDecimal shown() {
        return ImmunityCategory.shown(measure(), sample.event().value());
    }

    private static List<Timed<SerumTested>> byTrust(CalfRecord calf) {
        List<Timed<SerumTested>> samples = new ArrayList<>(calf.all(SerumTested.class));
        samples.sort(Comparator.comparing(FirstDay::drawn));
        Collections.reverse(samples);
        samples.sort(Comparator.comparing(sample -> sample.event().kind() != SerumMeasure.IGG));
        return samples;
    }

    private static Judged<PassiveImmunity> of(Timed<SerumTested> sample, CalfRecord calf, Protocol protocol) {
        SerumTested tested = sample.event();
        return AgeStart.ageOf(calf, FirstDay.drawn(sample)).then(age -> {
            if (age.compareTo(protocol.time(Setting.SAMPLE_FROM_HOURS)) < 0) {
                return Judged.not(WhyNot.DRAWN_TOO_EARLY);
            }
            if (age.compareTo(protocol.time(Setting.SAMPLE_UNTIL_DAYS)) > 0) {
                return Judged.not(WhyNot.DRAWN_TOO_LATE);
            }
            if (!isPlausible(tested, isJersey(calf))) {
                return Judged.not(WhyNot.NOT_PLAUSIBLE);
            }
            if (tested.kind() != SerumMeasure.IGG && isFedReplacer(calf)) {
                return Judged.not(WhyNot.REPLACER);
            }
            return Judged.of(new PassiveImmunity(
                    ImmunityCategory.of(tested.kind(), tested.value()),
                    sample,
                    age,
                    AgeStart.of(calf).orElseThrow(),
                    notes(sample, calf)));
        });
    }

    private static Set<Note> notes(Timed<SerumTested> sample, CalfRecord calf) {
        Set<Note> notes = EnumSet.noneOf(Note.class);
        if (sample.event().kind() != SerumMeasure.IGG) {
            notes.add(Note.SCREENING);
        }
        if (isJersey(calf)) {
            notes.add(Note.JERSEY);
        }
        if (scoured(calf, FirstDay.drawn(sample).plus(NEAR))) {
            notes.add(Note.SCOURING);
        }
        if (calf.all(SerumTested.class).stream().anyMatch(other -> disagree(sample, other))) {
            notes.add(Note.SCALES_DISAGREE);
        }
        return notes;
    }

    private static boolean scoured(CalfRecord calf, Instant until) {
        return calf.signs().stream()
                .filter(seen -> seen.event().sign() == Sign.SCOURING)
                .anyMatch(seen -> !seen.at().isAfter(until));
    }

    private static boolean disagree(Timed<SerumTested> one, Timed<SerumTested> other) {
        Duration apart =
                Duration.between(FirstDay.drawn(one), FirstDay.drawn(other)).abs();
        if (apart.compareTo(NEAR) > 0) {
            return false;
        }
        return isProteinWithOtherBrix(one.event(), other.event()) || isProteinWithOtherBrix(other.event(), one.event());
    }

    private static boolean isProteinWithOtherBrix(SerumTested protein, SerumTested brix) {
        return protein.kind() == SerumMeasure.PROTEIN
                && brix.kind() == SerumMeasure.BRIX
                && SerumScales.disagree(protein.value(), brix.value());
    }

    /** It was given replacer at any time: protein and Brix then tell less of antibody, and read low. Source: Lopez 2021. */
    private static boolean isFedReplacer(CalfRecord calf) {
        return calf.all(ColostrumSourceNoted.class).stream()
                .anyMatch(noted -> noted.event().source() == ColostrumSource.REPLACER);
    }

    private static boolean isJersey(CalfRecord calf) {
        return calf.breed().filter("jersey"::equalsIgnoreCase).isPresent();
    }

    /**
     * A reading out of the range that was seen in calves is more likely one in another unit or of another scale. A
     * Jersey's is tried as a Holstein's too: with half the antibody, or 0.5 g/dL less protein. Source: Villarroel 2013.
     */
    private static boolean isPlausible(SerumTested tested, boolean jersey) {
        return Plausibility.of(tested).isEmpty()
                || (jersey && Plausibility.of(asOfHolstein(tested)).isEmpty());
    }

    private static SerumTested asOfHolstein(SerumTested jersey) {
        BigDecimal value = switch (jersey.kind()) {
            case IGG -> jersey.value().multiply(new BigDecimal("0.5"));
            case PROTEIN -> jersey.value().subtract(new BigDecimal("0.5"));
            case BRIX -> jersey.value();
        };
        return new SerumTested(jersey.kind(), value, jersey.drawnAt());
    }
}
