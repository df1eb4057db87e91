package strawbed.entry;

import java.math.BigDecimal;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/** What a person answers to a step. */
public sealed interface Answer {
    /** Nothing was noted. */
    record NotNoted() implements Answer {}

    /** One of the offered buttons. */
    record Chosen(Option option) implements Answer {}

    /**
     * A quantity.
     *
     * @param unit null for the one that the pad begins with; of a temperature, for the scale that the number tells
     */
    record Amount(BigDecimal amount, @Nullable EntryUnit unit) implements Answer {}

    /** The digits of a number. */
    record Digits(String digits) implements Answer {}

    /** So long before the fact was begun. */
    record Ago(Duration duration) implements Answer {}

    /**
     * A time of day: "430" or "4" is the nearest one in the past, in either half of the day; "0430" and "1620" are on a
     * clock of 24 hours, as they are when spoken.
     *
     * @param yesterday whether the day before is meant; then all digits are on a clock of 24 hours
     */
    record Clock(String digits, boolean yesterday) implements Answer {}

    /** Nobody saw it: two times will be asked. */
    record Between() implements Answer {}

    /** The answer to a choice between words. */
    static Answer of(Enum<?> word) {
        return new Chosen(new Option.Word(word));
    }

    /** A time of today, or of the night before. */
    static Answer at(String digits) {
        return new Clock(digits, false);
    }
}
