package strawbed.care;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Term;
import strawbed.event.Term.Breathing;

/** A warning that holds for a calf, gravest first. It never keeps anything from being recorded. */
public enum Caution {
    /**
     * The calf does not breathe, or gasps. Tickle the nostril with clean straw, never hang it by the hind legs, call
     * the veterinarian. Common practice, no published source; gasping as an alarm: newborn clinical list in the
     * magazine Bovine Veterinarian.
     */
    NOT_BREATHING,
    /**
     * Its own temperature is below 100 F. University of Nevada Reno, Cattle Producer's Library CL 788; the veterinarian
     * first below 94 F or when it does not respond: common practice, no published source.
     */
    COLD,
    /** The birth was hard, or the calf shows it: watch it. Common practice, no published source. */
    HARD_BIRTH,
    /**
     * Fed by tube: trained people only. Dairy Calf and Heifer Association, Gold Standards III; how to place it and how
     * the calf must lie is common practice, no published source.
     */
    TUBE_FEEDING,
    /** Iodine of 7 % or of unknown strength: corrosive, and harmful to breathe. OSHA sampling data, CAS 7553-56-2. */
    STRONG_IODINE,
    /** A heifer born with a bull: more than 9 in 10 are infertile. Beef cattle extension; Canadian veterinary column. */
    FREEMARTIN,
    /** A heifer of several whose sex is not all known. Common practice, no published source. */
    FREEMARTIN_UNKNOWN,
    /**
     * A fresh cow may attack whoever touches her calf: a barrier first. Cornell Cooperative Extension 2024. Holds until
     * the calf was moved.
     */
    FRESH_COW;

    private static final BigDecimal STRONG_FROM = new BigDecimal(7);

    /** The cautions that hold for a living calf by its whole record, gravest first; none for a dead one. */
    public static List<Caution> of(CalfRecord calf, Herd herd) {
        if (!calf.isAlive()) {
            return List.of();
        }
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        calf.breathing().map(Timed::event).flatMap(Caution::ofBreathing).ifPresent(cautions::add);
        calf.last(TemperatureTaken.class).map(Timed::event).flatMap(Caution::of).ifPresent(cautions::add);
        calf.all(ColostrumFed.class).forEach(fed -> of(fed.event()).ifPresent(cautions::add));
        calf.dips().forEach(dip -> of(dip.event()).ifPresent(cautions::add));
        if (HardBirth.is(calf)) {
            cautions.add(HARD_BIRTH);
        }
        switch (Freemartin.of(calf, herd)) {
            case LIKELY -> cautions.add(FREEMARTIN);
            case UNKNOWN -> cautions.add(FREEMARTIN_UNKNOWN);
            case NO -> {}
        }
        if (!calf.has(CalfMoved.class)) {
            cautions.add(FRESH_COW);
        }
        return List.copyOf(cautions);
    }

    /** The gravest caution that this event calls for at once, whatever else is known. */
    public static Optional<Caution> of(Event event) {
        if (event instanceof BreathingNoted noted && ofBreathing(noted).isPresent()) {
            return ofBreathing(noted);
        }
        if (HardBirth.tells(event)) {
            return Optional.of(HARD_BIRTH);
        }
        if (event instanceof TemperatureTaken taken && Cold.isCold(taken.temperature())) {
            return Optional.of(COLD);
        }
        if (event instanceof ColostrumFed fed && fed.method() == Term.FeedingMethod.TUBE) {
            return Optional.of(TUBE_FEEDING);
        }
        if (event instanceof NavelDipped dipped && isStrongIodine(dipped)) {
            return Optional.of(STRONG_IODINE);
        }
        return event instanceof CalfBorn || event instanceof CalfFound ? Optional.of(FRESH_COW) : Optional.empty();
    }

    private static Optional<Caution> ofBreathing(BreathingNoted noted) {
        return noted.breathing() == Breathing.NONE || noted.breathing() == Breathing.GASPING
                ? Optional.of(NOT_BREATHING)
                : Optional.empty();
    }

    /** A dip of 7 % whose agent was not said counts as iodine, to be on the safe side. */
    private static boolean isStrongIodine(NavelDipped dipped) {
        BigDecimal percent = dipped.percent();
        return percent == null
                ? dipped.agent() == Term.NavelAgent.IODINE
                : dipped.agent() != Term.NavelAgent.CHLORHEXIDINE && percent.compareTo(STRONG_FROM) >= 0;
    }
}
