package strawbed.statement;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.event.When;
import strawbed.grammar.ParseTree;

/**
 * Spoken times: "ten minutes ago", "at four thirty", "yesterday at ten fifteen", "between two and four".
 *
 * <p>A clock time is the nearest one in the past; on a clock of twelve hours either half of the day can be meant. Days
 * are calendar days in the farm's zone, so a change to summer time is right by itself.
 */
final class SpokenTime {
    private SpokenTime() {}

    /** The instant that a {@code when} rule names. */
    static Instant when(ParseTree tree, SpeechTime speech) {
        Optional<ParseTree> ago = tree.child("ago");
        if (ago.isPresent()) {
            return speech.start().minus(ago(ago.get()));
        }
        Optional<ParseTree> yesterday = tree.child("yesterday");
        if (yesterday.isPresent()) {
            return ClockTimes.yesterday(times(yesterday.get().child("clock").orElseThrow()), speech);
        }
        return tree.child("clock").map(clock -> clock(clock, speech)).orElse(speech.start());
    }

    /** The instant or window that a {@code birth_time} rule names. */
    static When birthTime(ParseTree tree, SpeechTime speech) {
        Optional<ParseTree> between = tree.child("between");
        if (between.isEmpty()) {
            return new When.At(
                    tree.child("when").map(when -> when(when, speech)).orElse(speech.start()));
        }
        ParseTree latestTree = between.get().child("latest").orElseThrow();
        ParseTree earliestTree = between.get().child("earliest").orElseThrow();
        Instant latest = clock(latestTree.child("clock").orElseThrow(), speech);
        // The window begins at the nearest such time before it ends.
        Instant earliest = clock(earliestTree.child("clock").orElseThrow(), new SpeechTime(latest, speech.zone()));
        return new When.Between(earliest, latest);
    }

    /** The nearest such time in the past. */
    static Instant clock(ParseTree clock, SpeechTime speech) {
        return ClockTimes.nearest(times(clock), speech);
    }

    /** How far back an {@code ago} rule goes. */
    static Duration ago(ParseTree tree) {
        ParseTree span = tree.child("span").orElseThrow();
        return Duration.ofMinutes(span.child("hours").map(SpokenTime::hours).orElse(0)
                + span.child("minutes").map(SpokenTime::minutes).orElse(0));
    }

    private static int hours(ParseTree tree) {
        if (tree.tag() != null) {
            return Integer.parseInt(tree.tag());
        }
        int half = tree.child("half_hours").isPresent() ? 30 : 0;
        return value(tree.descendant("hour_count").orElseThrow()) * 60 + half;
    }

    private static int minutes(ParseTree tree) {
        return tree.tag() != null
                ? Integer.parseInt(tree.tag())
                : SpokenNumber.whole(tree.child("minute_count").orElseThrow());
    }

    private static int value(ParseTree tree) {
        return tree.tag() != null ? Integer.parseInt(tree.tag()) : SpokenNumber.whole(tree);
    }

    /** The times of day that a clock time may mean: one on a clock of 24 hours, two on one of twelve. */
    private static List<LocalTime> times(ParseTree clock) {
        Optional<ParseTree> named = clock.child("named_time");
        if (named.isPresent()) {
            return List.of("noon".equals(named.get().tag()) ? LocalTime.NOON : LocalTime.MIDNIGHT);
        }
        int minute = clock.child("minute").map(SpokenTime::minute).orElse(0);
        Optional<ParseTree> early = clock.child("early_hour");
        if (early.isPresent()) {
            ParseTree digit = early.get().child("early_digit").orElseThrow();
            return List.of(LocalTime.of(SpokenNumber.whole(digit), minute));
        }
        Optional<ParseTree> late = clock.descendant("late_hour");
        if (late.isPresent()) {
            return List.of(LocalTime.of(value(late.get()), minute));
        }
        int hour = value(clock.descendant("hour_of_twelve").orElseThrow()) % 12;
        LocalTime morning = LocalTime.of(hour, minute);
        Optional<ParseTree> past = clock.child("past");
        if (past.isPresent()) {
            morning = LocalTime.of(hour, part(past.get()));
        }
        Optional<ParseTree> to = clock.child("to");
        if (to.isPresent()) {
            morning = LocalTime.of(hour, 0).minusMinutes(part(to.get()));
            morning = morning.getHour() >= 12 ? morning.minusHours(12) : morning;
        }
        LocalTime evening = morning.plusHours(12);
        String half = clock.child("half_day").map(ParseTree::tag).orElse("");
        return switch (half) {
            case "am" -> List.of(morning);
            case "pm" -> List.of(evening);
            // At night is before six in the morning or after six in the evening.
            case "night" -> List.of(morning.getHour() < 6 ? morning : evening);
            default -> Stream.of(morning, evening).toList();
        };
    }

    private static int minute(ParseTree tree) {
        if (tree.tag() != null) {
            return Integer.parseInt(tree.tag());
        }
        return tree.children().stream().mapToInt(SpokenTime::value).sum();
    }

    private static int part(ParseTree tree) {
        return Integer.parseInt(tree.child("part").map(ParseTree::tag).orElseThrow());
    }
}
