package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.When;

/** What cannot be true together with what is on record, or with the clock. It is a reason to ask, never to refuse. */
public sealed interface Contradiction {
    /** Something was done for a calf before it was born. */
    record BeforeBirth(Instant at, Instant birth) implements Contradiction {}

    /** A calf's birth is told again, at another time. */
    record SecondBirth(Instant before, Instant now) implements Contradiction {}

    /** Something is told that lies ahead. */
    record LaterThanNow(Instant at) implements Contradiction {}

    /** A birth told again this near to the first time is the same word. Common practice, no published source. */
    Duration SAME = Duration.ofMinutes(2);

    /**
     * What is said of the dam, of the colostrum or of the birth itself may well be older than the calf. Everything else
     * is done to a calf that is there.
     */
    Set<Class<? extends Event>> BEFORE_THE_CALF = Set.of(
            Event.CalfOpened.class,
            Event.CalfNumbered.class,
            Event.DamNoted.class,
            Event.BreedNoted.class,
            Event.TwinNoted.class,
            Event.CalfBorn.class,
            Event.CalfFound.class,
            Event.CalvingEaseNoted.class,
            Event.PresentationNoted.class,
            Event.CalfDied.class,
            Event.ColostrumTestedByBrix.class,
            Event.ColostrumTestedByHydrometer.class,
            Event.ColostrumSourceNoted.class,
            Event.VetCalled.class,
            Event.VoiceNoteTaken.class);

    /**
     * The contradictions of one fact.
     *
     * @param at when it is said to have happened
     * @param birth when the calf was born, where a time was told before
     */
    static List<Contradiction> of(Event event, Instant at, @Nullable When birth, Instant now) {
        List<Contradiction> found = new ArrayList<>();
        if (at.isAfter(now)) {
            found.add(new LaterThanNow(at));
        }
        if (birth != null && !BEFORE_THE_CALF.contains(event.getClass()) && at.isBefore(earliest(birth))) {
            found.add(new BeforeBirth(at, earliest(birth)));
        }
        if (birth != null && event instanceof Event.CalfBorn again && isAnother(birth, again.when())) {
            found.add(new SecondBirth(birth.midpoint(), again.when().midpoint()));
        }
        return List.copyOf(found);
    }

    private static boolean isAnother(When one, When other) {
        return Duration.between(one.midpoint(), other.midpoint()).abs().compareTo(SAME) > 0;
    }

    /** The earliest time that a birth can have been at. */
    static Instant earliest(When birth) {
        return birth instanceof When.Between window ? window.earliest() : birth.midpoint();
    }
}
