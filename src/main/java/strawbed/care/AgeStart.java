package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.event.When;

/**
 * The instant a calf's age is counted from, and how well it is known.
 *
 * @param at the birth, or the best that stands in for it
 * @param earliest the earliest that the birth can have been; differs only for a window
 */
public record AgeStart(Instant at, Instant earliest, Basis basis) {

    /** What an age rests on. */
    public enum Basis {
        /** The birth was timed. */
        BORN,
        /** The birth was in a window; its middle counts. */
        BORN_IN_WINDOW,
        /** Nobody saw the birth; the finding counts. */
        FOUND,
        /** No time was told; the opening of the record counts. */
        OPENED
    }

    /** Empty when the record has no time at all to count from. */
    public static Optional<AgeStart> of(CalfRecord calf) {
        return calf.bornAbout().map(at -> new AgeStart(at, earliest(calf, at), basis(calf)));
    }

    /** Whether it is anything but a timed birth. */
    public boolean isEstimated() {
        return basis != Basis.BORN;
    }

    /** The age at this instant; negative before the start. */
    public Duration ageAt(Instant now) {
        return Duration.between(at, now);
    }

    /**
     * Whether ages from here are only the least that the calf can be: it was found, or its record opened, some time
     * after a birth that nobody timed.
     */
    boolean isLeast() {
        return basis == Basis.FOUND || basis == Basis.OPENED;
    }

    /** The age at which something happened to the calf: zero inside the window of its birth, not judged before. */
    public Judged<Duration> ageOf(Instant happened) {
        if (happened.isBefore(earliest)) {
            return Judged.not(basis == Basis.OPENED ? WhyNot.NO_TIME_OF_BIRTH : WhyNot.BEFORE_BIRTH);
        }
        Duration age = ageAt(happened);
        return Judged.of(age.isNegative() ? Duration.ZERO : age);
    }

    /** The age that a calf had when something happened to it. */
    static Judged<Duration> ageOf(CalfRecord calf, Instant happened) {
        return of(calf).map(start -> start.ageOf(happened)).orElseGet(() -> Judged.not(WhyNot.NO_TIME_OF_BIRTH));
    }

    private static Instant earliest(CalfRecord calf, Instant at) {
        return calf.birth()
                .map(birth -> birth instanceof When.Between window ? window.earliest() : at)
                .orElse(at);
    }

    private static Basis basis(CalfRecord calf) {
        if (calf.born().isPresent()) {
            return calf.born().get() instanceof When.At ? Basis.BORN : Basis.BORN_IN_WINDOW;
        }
        return calf.found().isPresent() ? Basis.FOUND : Basis.OPENED;
    }
}
