package strawbed.event;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;

/**
 * What happened. One record per kind of fact; a part that was not said is null and stays "not recorded", it is never
 * turned into zero or no.
 *
 * <p>{@link #match} dispatches over all kinds: a new kind fails to compile in every place that must know it.
 */
public sealed interface Event {
    <R> R match(Cases<R> cases);

    /** Our name of the kind, as the record keeps it. */
    default String type() {
        return getClass().getSimpleName();
    }

    // Who the calf is.

    /**
     * A calf's record was opened.
     *
     * @param number its number now
     * @param dam the cow that bore it
     */
    record CalfOpened(@Nullable String number, @Nullable String dam) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfOpened(this);
        }
    }

    /** A calf got a number, or another one. */
    record CalfNumbered(String number) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfNumbered(this);
        }
    }

    /**
     * What was said of the dam.
     *
     * @param dam her number
     * @param parity calvings so far, this one counted
     */
    record DamNoted(@Nullable String dam, @Nullable Integer parity) implements Event {
        public DamNoted {
            if (dam == null && parity == null) {
                throw new IllegalArgumentException("of a dam, a number or a parity must be known");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.damNoted(this);
        }
    }

    record BreedNoted(String breed) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.breedNoted(this);
        }
    }

    /**
     * One of several.
     *
     * @param of the number of another one, where it was said
     * @param count how many were born
     */
    record TwinNoted(@Nullable String of, int count) implements Event {
        public TwinNoted {
            if (count < 2 || count > 5) {
                throw new IllegalArgumentException("a calf can be one of 2 to 5, not of " + count);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.twinNoted(this);
        }
    }

    record SexNoted(Term.Sex sex) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.sexNoted(this);
        }
    }

    record EarTagFitted(String number, Term.TagScheme scheme) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.earTagFitted(this);
        }
    }

    // The birth.

    record CalfBorn(When when) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfBorn(this);
        }
    }

    /** A calf was found whose birth nobody saw. */
    record CalfFound(When when) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfFound(this);
        }
    }

    /** How the birth went: in words, or as a score of 1 to 5. One is never turned into the other. */
    record CalvingEaseNoted(
            Term.@Nullable CalvingEase ease, @Nullable Integer score) implements Event {
        public CalvingEaseNoted {
            if ((ease == null) == (score == null)) {
                throw new IllegalArgumentException("calving ease is either a word or a score: " + ease + ", " + score);
            }
            if (score != null && (score < 1 || score > 5)) {
                throw new IllegalArgumentException("a calving ease score is 1 to 5, not " + score);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calvingEaseNoted(this);
        }
    }

    record PresentationNoted(Term.Presentation presentation) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.presentationNoted(this);
        }
    }

    record CalfDied(Instant at, Term.DeathTime when) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfDied(this);
        }
    }

    // The first minutes.

    record BreathingNoted(Term.Breathing breathing) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.breathingNoted(this);
        }
    }

    record BreathingStimulated(Term.Stimulation means) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.breathingStimulated(this);
        }
    }

    record LickingNoted(boolean licked) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.lickingNoted(this);
        }
    }

    record CalfDried(Term.@Nullable DryingMeans means) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfDried(this);
        }
    }

    record ShelterGiven(Term.Shelter means) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.shelterGiven(this);
        }
    }

    record MilestoneReached(Term.Milestone milestone) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.milestoneReached(this);
        }
    }

    /**
     * A sign that was seen.
     *
     * @param place where
     * @param finding how it was, such as the colour of the gums
     */
    record SignNoted(
            Term.Sign sign,
            @Nullable String place,
            @Nullable String finding) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.signNoted(this);
        }
    }

    // The navel.

    /**
     * The navel was dipped.
     *
     * @param percent the strength that was said
     */
    record NavelDipped(
            Term.@Nullable NavelAgent agent, @Nullable BigDecimal percent) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.navelDipped(this);
        }
    }

    record NavelChecked(Term.NavelFinding finding) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.navelChecked(this);
        }
    }

    // Measures on the calf.

    record TemperatureTaken(Temperature temperature) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.temperatureTaken(this);
        }
    }

    record HeartRateCounted(int perMinute) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.heartRateCounted(this);
        }
    }

    record BreathingRateCounted(int perMinute) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.breathingRateCounted(this);
        }
    }

    record CalfWeighed(Mass weight, Term.@Nullable WeighingMethod method) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfWeighed(this);
        }
    }

    /**
     * A measure of a calf's serum.
     *
     * @param value g/dL for protein, percent for Brix, g/L for antibody
     * @param drawnAt when the blood was drawn, where it was said
     */
    record SerumTested(
            Term.SerumMeasure kind,
            BigDecimal value,
            @Nullable Instant drawnAt) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.serumTested(this);
        }
    }

    // Colostrum.

    record ColostrumTestedByBrix(BigDecimal brix) implements Event {
        @Override
        public String type() {
            return "ColostrumTested";
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumTestedByBrix(this);
        }
    }

    /**
     * Colostrum was tested with a hydrometer.
     *
     * @param reading mg/mL as the hydrometer shows it, not corrected
     * @param milk the milk's temperature
     */
    record ColostrumTestedByHydrometer(
            BigDecimal reading, @Nullable Temperature milk) implements Event {
        @Override
        public String type() {
            return "ColostrumTested";
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumTestedByHydrometer(this);
        }
    }

    record ColostrumSourceNoted(
            Term.@Nullable ColostrumSource source,
            @Nullable String cow,
            @Nullable String batch,
            Term.@Nullable ColostrumTreatment treatment)
            implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumSourceNoted(this);
        }
    }

    record ColostrumFed(
            Volume volume,
            Term.@Nullable FeedingMethod method,
            @Nullable Temperature warmedTo) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumFed(this);
        }
    }

    /** What the calf left of its last feed. */
    record ColostrumLeft(Volume volume) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumLeft(this);
        }
    }

    record FeedRefused() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.feedRefused(this);
        }
    }

    record DamNursed() implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.damNursed(this);
        }
    }

    // Places, people, free speech.

    record CalfMoved(String place) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.calfMoved(this);
        }
    }

    /**
     * The veterinarian was called.
     *
     * @param sound the file name of what was said, in the record's sound folder
     */
    record VetCalled(@Nullable String sound) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.vetCalled(this);
        }
    }

    /**
     * Somebody says that something was given.
     *
     * @param sound the file name of what was said, in the record's sound folder
     */
    record TreatmentNoted(Term.Treatment kind, @Nullable String sound) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.treatmentNoted(this);
        }
    }

    /**
     * A note in free speech.
     *
     * @param sound the file name of what was said, in the record's sound folder
     */
    record VoiceNoteTaken(@Nullable String sound) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.voiceNoteTaken(this);
        }
    }

    // Of no single calf.

    /**
     * How warm and how humid the barn is.
     *
     * @param humidity percent, where it was said
     */
    record BarnClimateNoted(
            Temperature temperature, @Nullable BigDecimal humidity) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.barnClimateNoted(this);
        }
    }

    record ColostrumStored(
            String batch, Volume volume, @Nullable BigDecimal brix, Term.@Nullable ColostrumTreatment treatment)
            implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.colostrumStored(this);
        }
    }

    /**
     * The farm took up a protocol, and cares for calves by it from now on.
     *
     * @param settings every value as text, by the name of its setting
     */
    record ProtocolAdopted(SortedMap<String, String> settings) implements Event {
        public ProtocolAdopted {
            settings = Collections.unmodifiableSortedMap(new TreeMap<>(settings));
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.protocolAdopted(this);
        }
    }

    // About the record itself.

    /**
     * A paper about the calf was printed; it takes the place of the one before.
     *
     * @param number 1 for the first of this calf
     * @param size of the paper
     */
    record CardPrinted(int number, Term.Printout printout, Term.CardSize size) implements Event {
        public CardPrinted {
            if (number < 1) {
                throw new IllegalArgumentException("a calf's prints are counted from 1, so none is number " + number);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cardPrinted(this);
        }
    }

    /** An earlier event no longer counts: undone, or told better by another one. It stays in the record. */
    record EventWithdrawn(EventId event) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.eventWithdrawn(this);
        }
    }

    /**
     * Who works from now on, chosen at the recorder.
     *
     * @param operator null for nobody
     */
    record OperatorChosen(@Nullable String operator) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.operatorChosen(this);
        }
    }

    /**
     * Old sounds were removed by the farm's own rule. What was heard in them stays in the record.
     *
     * @param count how many
     * @param bytes how much room they took
     */
    record SoundsRemoved(int count, long bytes) implements Event {
        public SoundsRemoved {
            if (count < 1 || bytes < 0) {
                throw new IllegalArgumentException("nobody removes " + count + " sounds of " + bytes + " bytes");
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.soundsRemoved(this);
        }
    }

    /**
     * The computer's clock jumped: times told before and after it do not fit together.
     *
     * @param expected what it should have shown
     * @param found what it showed
     */
    record ClockChanged(Instant expected, Instant found) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.clockChanged(this);
        }
    }

    /** The computer's time zone is another one than at the fact before; a change to summer time is none. */
    record ZoneChanged(ZoneId from, ZoneId to) implements Event {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.zoneChanged(this);
        }
    }

    /** One method per kind of event. */
    interface Cases<R> {
        R calfOpened(CalfOpened e);

        R calfNumbered(CalfNumbered e);

        R damNoted(DamNoted e);

        R breedNoted(BreedNoted e);

        R twinNoted(TwinNoted e);

        R sexNoted(SexNoted e);

        R earTagFitted(EarTagFitted e);

        R calfBorn(CalfBorn e);

        R calfFound(CalfFound e);

        R calvingEaseNoted(CalvingEaseNoted e);

        R presentationNoted(PresentationNoted e);

        R calfDied(CalfDied e);

        R breathingNoted(BreathingNoted e);

        R breathingStimulated(BreathingStimulated e);

        R lickingNoted(LickingNoted e);

        R calfDried(CalfDried e);

        R shelterGiven(ShelterGiven e);

        R milestoneReached(MilestoneReached e);

        R signNoted(SignNoted e);

        R navelDipped(NavelDipped e);

        R navelChecked(NavelChecked e);

        R temperatureTaken(TemperatureTaken e);

        R heartRateCounted(HeartRateCounted e);

        R breathingRateCounted(BreathingRateCounted e);

        R calfWeighed(CalfWeighed e);

        R serumTested(SerumTested e);

        R colostrumTestedByBrix(ColostrumTestedByBrix e);

        R colostrumTestedByHydrometer(ColostrumTestedByHydrometer e);

        R colostrumSourceNoted(ColostrumSourceNoted e);

        R colostrumFed(ColostrumFed e);

        R colostrumLeft(ColostrumLeft e);

        R feedRefused(FeedRefused e);

        R damNursed(DamNursed e);

        R calfMoved(CalfMoved e);

        R vetCalled(VetCalled e);

        R treatmentNoted(TreatmentNoted e);

        R voiceNoteTaken(VoiceNoteTaken e);

        R barnClimateNoted(BarnClimateNoted e);

        R colostrumStored(ColostrumStored e);

        R protocolAdopted(ProtocolAdopted e);

        R cardPrinted(CardPrinted e);

        R eventWithdrawn(EventWithdrawn e);

        R operatorChosen(OperatorChosen e);

        R soundsRemoved(SoundsRemoved e);

        R clockChanged(ClockChanged e);

        R zoneChanged(ZoneChanged e);
    }
}
