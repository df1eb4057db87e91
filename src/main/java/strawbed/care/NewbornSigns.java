package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.care.Vigour.Seen;
import strawbed.care.Vigour.State;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.BreathingRateCounted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.DamNursed;
import strawbed.event.Event.HeartRateCounted;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.SignNoted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.EventId;
import strawbed.event.Term.Breathing;
import strawbed.event.Term.FeedingMethod;
import strawbed.event.Term.Milestone;
import strawbed.event.Term.Sign;
import strawbed.measure.Temperature;
import strawbed.protocol.CountedSign;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * What is normal in a newborn calf.
 *
 * <p>Of what a calf does for the first time the first time counts, of what is looked at again the latest record does,
 * within the first 24 hours of life (common practice, no published source), and only with a plausible figure. What was
 * told as before the birth counts nowhere. Where the sources disagree, what one of them calls normal is normal.
 *
 * <p>Sources: newborn clinical list in the magazine Bovine Veterinarian (temperature, heart, breathing, gums, times);
 * Colorado State University calving notes (temperature, heart, times); University of Nebraska Extension 2023
 * (temperature); Rural News NZ 2015 (breath, head). The signs of a hard birth are common practice, no published source.
 */
final class NewbornSigns {
    private static final Duration NEWBORN = Duration.ofHours(24);

    /** 1 to 2 minutes. Source: Rural News NZ 2015. */
    private static final Duration HEAD_UP_WITHIN = Duration.ofMinutes(2);

    /** Source: Bovine Veterinarian; Colorado State University calving notes; Rural News NZ. */
    private static final Duration SUCKING_WITHIN = Duration.ofHours(2);

    private static final Duration FIRST_HOUR = Duration.ofHours(1);

    /**
     * Just after birth 180 to 200 beats are normal too, say the Colorado State University calving notes. How long that
     * is they do not say; a quarter of an hour is common practice, no published source.
     */
    private static final Duration FIRST_MINUTES = Duration.ofMinutes(15);

    private static final int HEART_LEAST = 100;
    private static final int HEART_MOST = 150;
    private static final int BREATHS_LEAST = 50;
    private static final int BREATHS_MOST = 75;

    /**
     * 102 to 103 F just born, 101 to 102 F at an hour, for some by 15 to 30 minutes: below 101 F is not normal at any
     * age. Source: Bovine Veterinarian; Colorado State University calving notes.
     */
    private static final Range IN_FIRST_HOUR = new Range("101", "103", "38.3", "39.4");

    /** From an hour on up to 102.5 F. Source: University of Nebraska Extension 2023. */
    private static final Range LATER = new Range("101", "102.5", "38.3", "39.2");

    /** Something seen, and the calf's age then. */
    private record Aged<E extends Event>(Timed<E> timed, Duration age) {}

    private final CalfRecord calf;
    private final Protocol protocol;
    private final boolean isAgeLeast;
    private final Set<EventId> taken;

    NewbornSigns(CalfRecord calf, Protocol protocol) {
        this.calf = calf;
        this.protocol = protocol;
        this.isAgeLeast = AgeStart.of(calf).map(AgeStart::isLeast).orElse(true);
        this.taken = FirstDay.taken(calf).stream().map(Timed::id).collect(Collectors.toUnmodifiableSet());
    }

    Seen look(CountedSign sign) {
        return switch (sign) {
            case BREATHING -> breathing();
            case HEAD_UP -> within(sign, HEAD_UP_WITHIN, reached(Milestone.HEAD_UP));
            case ON_BREASTBONE ->
                within(sign, protocol.time(Setting.ON_BREASTBONE_MINUTES), reached(Milestone.ON_ITS_BREASTBONE));
            case STANDING -> standing();
            case SUCKING -> within(sign, SUCKING_WITHIN, seen(Event.class).filter(this::sucks));
            case TEMPERATURE ->
                latest(
                        sign,
                        seen(TemperatureTaken.class),
                        seen -> isNormal(seen.timed().event().temperature(), seen.age()));
            case HEART_RATE -> latest(sign, seen(HeartRateCounted.class), NewbornSigns::isNormalHeart);
            case BREATHING_RATE ->
                latest(
                        sign,
                        seen(BreathingRateCounted.class),
                        seen -> isNormalBreathing(seen.timed().event()));
            case GUMS -> finding(sign, Sign.GUMS, "pink");
            case SUCK_REFLEX -> finding(sign, Sign.SUCK_REFLEX, "strong");
            case NO_YELLOW_STAIN -> absent(sign, Sign.MECONIUM);
            case NO_SWELLING -> absent(sign, Sign.SWOLLEN);
            case NO_WEAKNESS -> absent(sign, Sign.WEAK);
            case NO_LIMP -> absent(sign, Sign.LIMPING);
        };
    }

    /** Before the first breath is due, a calf that does not breathe yet tells nothing. */
    private Seen breathing() {
        Duration firstBreath = protocol.time(Setting.FIRST_BREATH_SECONDS);
        return latest(
                CountedSign.BREATHING,
                seen(BreathingNoted.class)
                        .filter(noted -> noted.timed().event().breathing() != Breathing.NONE
                                || isPast(noted.age(), firstBreath)),
                noted -> noted.timed().event().breathing() == Breathing.WELL);
    }

    /** That it cannot stand counts once it should, and until it is seen to stand. */
    private Seen standing() {
        Duration limit = protocol.time(Setting.STANDING_MINUTES);
        Optional<Timed<MilestoneReached>> stood =
                reached(Milestone.STANDING).map(Aged::timed).reduce((earlier, later) -> later);
        Optional<Timed<SignNoted>> cannot = seen(SignNoted.class)
                .filter(noted -> noted.timed().event().sign() == Sign.CANNOT_STAND && isPast(noted.age(), limit))
                .map(Aged::timed)
                .reduce((earlier, later) -> later);
        return cannot.filter(noted ->
                        stood.filter(last -> !last.at().isBefore(noted.at())).isEmpty())
                .map(noted -> new Seen(CountedSign.STANDING, State.NOT_NORMAL, noted))
                .orElseGet(() -> within(CountedSign.STANDING, limit, reached(Milestone.STANDING)));
    }

    /** Where only the least age is known, a sign that has its time counts at once: the birth was some time ago. */
    private boolean isPast(Duration age, Duration limit) {
        return isAgeLeast || age.compareTo(limit) > 0;
    }

    private <E extends Event> Seen within(CountedSign sign, Duration limit, Stream<Aged<E>> seen) {
        return seen.findFirst()
                .map(first -> new Seen(sign, stateWithin(limit, first.age()), first.timed()))
                .orElseGet(() -> notRecorded(sign));
    }

    private State stateWithin(Duration limit, Duration age) {
        if (age.compareTo(limit) > 0) {
            return State.NOT_NORMAL;
        }
        return isAgeLeast ? State.AGE_UNKNOWN : State.NORMAL;
    }

    private static <E extends Event> Seen latest(CountedSign sign, Stream<Aged<E>> seen, Predicate<Aged<E>> isNormal) {
        return seen.reduce((earlier, later) -> later)
                .map(last -> new Seen(sign, isNormal.test(last) ? State.NORMAL : State.NOT_NORMAL, last.timed()))
                .orElseGet(() -> notRecorded(sign));
    }

    private Seen finding(CountedSign sign, Sign looked, String normal) {
        return latest(
                sign,
                seen(SignNoted.class)
                        .filter(noted -> noted.timed().event().sign() == looked
                                && noted.timed().event().finding() != null),
                noted -> normal.equals(noted.timed().event().finding()));
    }

    /** The record has no word for a sign that was looked for and is not there: it is recorded or it is not. */
    private Seen absent(CountedSign sign, Sign unwanted) {
        return latest(
                sign,
                seen(SignNoted.class).filter(noted -> noted.timed().event().sign() == unwanted),
                noted -> false);
    }

    private static Seen notRecorded(CountedSign sign) {
        return new Seen(sign, State.NOT_RECORDED, null);
    }

    private Stream<Aged<MilestoneReached>> reached(Milestone milestone) {
        return seen(MilestoneReached.class)
                .filter(reached -> reached.timed().event().milestone() == milestone);
    }

    /** It was told to suck, nursed its dam, or drank from a bottle. */
    private boolean sucks(Aged<Event> seen) {
        Event event = seen.timed().event();
        if (event instanceof MilestoneReached reached) {
            return reached.milestone() == Milestone.SUCKING;
        }
        if (event instanceof ColostrumFed fed) {
            return fed.method() == FeedingMethod.BOTTLE
                    && taken.contains(seen.timed().id());
        }
        return event instanceof DamNursed;
    }

    private static boolean isNormal(Temperature temperature, Duration age) {
        return (age.compareTo(FIRST_HOUR) < 0 ? IN_FIRST_HOUR : LATER).contains(temperature);
    }

    private static boolean isNormalHeart(Aged<HeartRateCounted> counted) {
        int rate = counted.timed().event().perMinute();
        return rate >= HEART_LEAST && (rate <= HEART_MOST || counted.age().compareTo(FIRST_MINUTES) <= 0);
    }

    private static boolean isNormalBreathing(BreathingRateCounted counted) {
        return counted.perMinute() >= BREATHS_LEAST && counted.perMinute() <= BREATHS_MOST;
    }

    private <E extends Event> Stream<Aged<E>> seen(Class<E> kind) {
        return calf.all(kind).stream()
                .filter(timed -> Plausibility.of(timed.event()).isEmpty())
                .map(this::aged)
                .flatMap(Optional::stream)
                .filter(aged -> aged.age().compareTo(NEWBORN) <= 0);
    }

    /** Where no birth was told, what was seen before the record was opened was seen at some age all the same. */
    private <E extends Event> Optional<Aged<E>> aged(Timed<E> timed) {
        Judged<Duration> age = AgeStart.ageOf(calf, timed.at());
        @Nullable WhyNot whyNot = age.whyNot().orElse(null);
        return age.value()
                .or(() -> whyNot == WhyNot.NO_TIME_OF_BIRTH ? Optional.of(Duration.ZERO) : Optional.empty())
                .map(known -> new Aged<>(timed, known));
    }

    /** From the one to the other, both included, in the scale that was spoken: the sources print both, rounded. */
    private record Range(BigDecimal lowF, BigDecimal highF, BigDecimal lowC, BigDecimal highC) {
        Range(String lowF, String highF, String lowC, String highC) {
            this(new BigDecimal(lowF), new BigDecimal(highF), new BigDecimal(lowC), new BigDecimal(highC));
        }

        boolean contains(Temperature temperature) {
            return switch (temperature.unit()) {
                case FAHRENHEIT -> isWithin(temperature.amount(), lowF, highF);
                case CELSIUS -> isWithin(temperature.amount(), lowC, highC);
            };
        }

        private static boolean isWithin(BigDecimal amount, BigDecimal low, BigDecimal high) {
            return amount.compareTo(low) >= 0 && amount.compareTo(high) <= 0;
        }
    }
}
