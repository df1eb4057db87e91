package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.event.When;

/**
 * How old a calf was at its first feed of which it took anything, for the figures of a herd. What it sucked from its
 * dam is no measured feed. Where nobody timed the birth there is no such age: the hours since a calf was found are not
 * the hours since it was born. That a birth in a window counts by its middle, and is marked, is common practice, no
 * published source.
 *
 * @param least the least it can have been
 * @param middle what counts
 * @param most the most it can have been
 */
public record FirstFeedAge(Duration least, Duration middle, Duration most) {
    public static Judged<FirstFeedAge> of(CalfRecord calf) {
        When born = calf.born().orElse(null);
        if (born == null) {
            return Judged.not(WhyNot.NO_TIME_OF_BIRTH);
        }
        Optional<Instant> fed = calf.firstFeed().map(Feed::at);
        return fed.map(at -> AgeStart.ageOf(calf, at).then(middle -> Judged.of(of(born, at, middle))))
                .orElseGet(() -> Judged.not(calf.nursings().isEmpty() ? WhyNot.NOT_FED : WhyNot.SUCKLED));
    }

    /** Whether the birth was only known to be in a window. */
    public boolean isEstimated() {
        return !least.equals(most);
    }

    private static FirstFeedAge of(When born, Instant fed, Duration middle) {
        if (born instanceof When.Between window) {
            Duration least = Duration.between(window.latest(), fed);
            return new FirstFeedAge(
                    least.isNegative() ? Duration.ZERO : least, middle, Duration.between(window.earliest(), fed));
        }
        return new FirstFeedAge(middle, middle, middle);
    }
}
