package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long people waited for what the screen said of their utterances.
 *
 * @param words from the end of speech to the words that were understood
 * @param again from there to "say again"
 * @param nothing how many utterances changed nothing on the screen
 * @param early how many were answered only before their end, as they paused
 */
record Waits(List<Duration> words, List<Duration> again, int nothing, int early) {
    static final Waits NONE = new Waits(List.of(), List.of(), 0, 0);

    Waits {
        words = List.copyOf(words);
        again = List.copyOf(again);
    }

    /** What the screen said and when it was painted. */
    record Seen(Instant at, boolean isAgain) {
        /** Of a line of {@link StationWatcher}; empty for a line that tells of no answer. */
        static Optional<Seen> of(String line) {
            String[] parts = line.split(" ", 3);
            if (!line.startsWith(StationWatcher.SHOWN) || parts.length < 3) {
                return Optional.empty();
            }
            boolean isAgain = (parts[2] + " ").startsWith(StationWatcher.AGAIN);
            boolean isAsked = (parts[2] + " ").startsWith(StationWatcher.ASKED);
            return isAgain || isAsked ? Optional.of(new Seen(Instant.parse(parts[1]), isAgain)) : Optional.empty();
        }
    }

    /** With one more utterance: what was seen of it, in order, and when its sound ended. */
    Waits plus(List<Seen> seen, Instant end) {
        Optional<Seen> answer =
                seen.stream().filter(one -> !one.at().isBefore(end)).findFirst();
        if (answer.isEmpty()) {
            return new Waits(words, again, nothing + (seen.isEmpty() ? 1 : 0), early + (seen.isEmpty() ? 0 : 1));
        }
        Duration wait = Duration.between(end, answer.get().at());
        return answer.get().isAgain()
                ? new Waits(words, joined(again, wait), nothing, early)
                : new Waits(joined(words, wait), again, nothing, early);
    }

    private static List<Duration> joined(List<Duration> waits, Duration wait) {
        List<Duration> more = new ArrayList<>(waits);
        more.add(wait);
        return more;
    }

    /** Number, median, 95th percentile (the least wait that 95% do not exceed) and longest, as cells of a table. */
    static String cells(List<Duration> waits) {
        if (waits.isEmpty()) {
            return "0 | | | ";
        }
        List<Duration> sorted = waits.stream().sorted().toList();
        return String.format(
                Locale.ROOT,
                "%d | %s | %s | %s",
                sorted.size(),
                seconds(share(sorted, 0.5)),
                seconds(share(sorted, 0.95)),
                seconds(sorted.get(sorted.size() - 1)));
    }

    private static Duration share(List<Duration> sorted, double share) {
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }

    private static String seconds(Duration wait) {
        return String.format(Locale.ROOT, "%.3f s", wait.toNanos() / 1e9);
    }
}
