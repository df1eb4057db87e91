package strawbed.entry;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** Reads the digits of a time of day as they would be spoken: "430", "0430", "1620", "12". */
final class TimeOfDay {
    private TimeOfDay() {}

    /** The time on a clock of 24 hours; the digits are a time of day. */
    static LocalTime ofWholeDay(String digits) {
        int number = Integer.parseInt(digits);
        return digits.length() < 3 ? LocalTime.of(number, 0) : LocalTime.of(number / 100, number % 100);
    }

    /** The times that can be meant: one on a clock of 24 hours, two on one of twelve; empty where there is none. */
    static Optional<List<LocalTime>> read(String digits) {
        if (digits.isEmpty() || digits.length() > 4 || !isDigits(digits)) {
            return Optional.empty();
        }
        boolean hourAlone = digits.length() < 3;
        int number = Integer.parseInt(digits);
        int hour = hourAlone ? number : number / 100;
        int minute = hourAlone ? 0 : number % 100;
        if (hour > 23 || minute > 59) {
            return Optional.empty();
        }
        // A zero in front says that the hour is one of twenty-four.
        if (hour > 12 || hour == 0 || (digits.charAt(0) == '0')) {
            return Optional.of(List.of(LocalTime.of(hour, minute)));
        }
        LocalTime morning = LocalTime.of(hour % 12, minute);
        return Optional.of(List.of(morning, morning.plusHours(12)));
    }

    static boolean isDigits(String text) {
        return text.chars().allMatch(letter -> letter >= '0' && letter <= '9');
    }
}
