package strawbed.journal.sqlite;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;

/**
 * Reads times as the record writes them, such as {@code 2026-03-02T17:30:05.120Z}. {@link Instant#parse} takes as long for
 * one as all the rest of a fact does; it still reads, or refuses, whatever looks otherwise.
 */
final class InstantText {
    private static final String FORM = "dddd-dd-ddTdd:dd:dd";
    private static final int NANO_DIGITS = 9;

    private InstantText() {}

    /**
     * The instant.
     *
     * @throws DateTimeParseException if it is none
     */
    static Instant parse(String text) {
        int end = text.length() - 1;
        if (!hasForm(text) || text.charAt(end) != 'Z' || !isFraction(text, end)) {
            return Instant.parse(text);
        }
        int month = number(text, 5, 7);
        int day = number(text, 8, 10);
        int hour = number(text, 11, 13);
        int minute = number(text, 14, 16);
        int second = number(text, 17, 19);
        // Dates that do not exist, midnight as 24 and leap seconds are left to the careful reader; 28 days every month
        // has.
        if (month < 1 || month > 12 || day < 1 || day > 28 || hour > 23 || minute > 59 || second > 59) {
            return Instant.parse(text);
        }
        return LocalDateTime.of(number(text, 0, 4), month, day, hour, minute, second, nanos(text, end))
                .toInstant(ZoneOffset.UTC);
    }

    private static boolean hasForm(String text) {
        if (text.length() <= FORM.length()) {
            return false;
        }
        for (int i = 0; i < FORM.length(); i++) {
            char wanted = FORM.charAt(i);
            char found = text.charAt(i);
            if (wanted == 'd' ? !isDigit(found) : found != wanted) {
                return false;
            }
        }
        return true;
    }

    /** Whether there is no fraction of a second, or one of 1 to 9 digits. */
    private static boolean isFraction(String text, int end) {
        int start = FORM.length();
        if (start == end) {
            return true;
        }
        if (text.charAt(start) != '.' || end - start - 1 < 1 || end - start - 1 > NANO_DIGITS) {
            return false;
        }
        for (int i = start + 1; i < end; i++) {
            if (!isDigit(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static int nanos(String text, int end) {
        int nanos = 0;
        for (int i = 0; i < NANO_DIGITS; i++) {
            int at = FORM.length() + 1 + i;
            nanos = nanos * 10 + (at < end ? text.charAt(at) - '0' : 0);
        }
        return nanos;
    }

    private static int number(String text, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            number = number * 10 + text.charAt(i) - '0';
        }
        return number;
    }

    private static boolean isDigit(char letter) {
        return letter >= '0' && letter <= '9';
    }
}
