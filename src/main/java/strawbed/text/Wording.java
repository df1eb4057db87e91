package strawbed.text;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;

/** The one difference between what is shown and what is said: how texts, numbers and clock times come out. */
sealed interface Wording permits Written, Spoken {
    Messages messages();

    /** The key's form for this way of telling. */
    String key(String key);

    /** A number as a quantity: 3.5, or three point five. */
    String number(BigDecimal number);

    /** The number as it stands before a masculine noun: veintiún. */
    default String beforeMasculine(BigDecimal number) {
        return number(number);
    }

    /** The number as it stands before a feminine noun: veintiuna. */
    default String beforeFeminine(BigDecimal number) {
        return number(number);
    }

    /** The digits of an animal's number or of a tag: 417, or four one seven. */
    String digits(String number);

    /** A place such as "hutch 12", or any other words with digits in them. */
    String place(String words);

    /** Groups of digits, one after the other. */
    String groups(List<String> groups);

    String clock(LocalTime time);

    default String text(MessageKey key, Object... args) {
        return at(key.inBundle(), args);
    }

    /** A key's text for a number of things. */
    default String counted(MessageKey key, BigDecimal number) {
        return counted(key.inBundle(), number);
    }

    default String counted(String key, BigDecimal number) {
        return at(key, number(number), beforeMasculine(number), beforeFeminine(number));
    }

    default String word(Enum<?> constant) {
        return at(Messages.key(constant));
    }

    default String at(String key, Object... args) {
        return messages().at(key(key), args);
    }
}
