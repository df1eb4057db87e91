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
 */
public record AgeStart(Instant at, Basis basis) {

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
        return calf.bornAbout().map(at -> new AgeStart(at, basis(calf)));
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
    public boolean isLeast() {
        return basis == Basis.FOUND || basis == Basis.OPENED;
    }

    /**
     * How old the calf was at this instant. Inside the window of a birth it is zero. Before the birth it is not judged,
     * nor before the opening of a record that says no more of the birth.
     */
    static Judged<Duration> ageOf(CalfRecord calf, Instant at) {
        AgeStart start = of(calf).orElse(null);
        if (start == null) {
            return Judged.not(WhyNot.NO_TIME_OF_BIRTH);
        }
        Duration age = start.ageAt(at);
        if (!age.isNegative()) {
            return Judged.of(age);
        }
        return calf.birth()
                .map(birth -> at.isBefore(Contradiction.earliest(birth))
                        ? Judged.<Duration>not(WhyNot.BEFORE_BIRTH)
                        : Judged.of(Duration.ZERO))
                .orElseGet(() -> Judged.not(WhyNot.NO_TIME_OF_BIRTH));
    }

    private static Basis basis(CalfRecord calf) {
        if (calf.born().isPresent()) {
            return calf.born().get() instanceof When.At ? Basis.BORN : Basis.BORN_IN_WINDOW;
        }
        return calf.found().isPresent() ? Basis.FOUND : Basis.OPENED;
    }
}
