package strawbed.hearing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The ways in which people say an animal's number: in full, in pairs, digit by digit, with "zero" and with "oh". A test
 * holds them against the grammar for every number from 0 to 9999.
 */
final class SpokenForms {
    private static final String[] DIGITS = {
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
    };
    private static final String[] TEENS = {
        "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"
    };
    private static final String[] TENS = {
        "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"
    };

    private SpokenForms() {}

    /**
     * All forms of a number, each as its words.
     *
     * @throws IllegalArgumentException unless it is 0 to 9999
     */
    static Set<String> of(int number) {
        if (number < 0 || number > 9999) {
            throw new IllegalArgumentException("an animal's number is 0 to 9999, not " + number);
        }
        Set<String> forms = new LinkedHashSet<>();
        forms.add(inFull(number));
        if (number >= 100) {
            pair(number).ifPresent(forms::add);
        }
        if (number >= 1000 && number % 100 == 0 && number % 1000 != 0) {
            forms.add(inFull(number / 100) + " hundred");
        }
        if (number >= 10) {
            forms.add(spelt(number, "zero"));
            forms.add(spelt(number, "oh"));
        }
        return forms;
    }

    private static Optional<String> pair(int number) {
        int head = number / 100;
        int tail = number % 100;
        if (tail == 0) {
            return Optional.empty();
        }
        String ending = tail < 10 ? "oh " + DIGITS[tail] : inFull(tail);
        return Optional.of(inFull(head) + " " + ending);
    }

    private static String spelt(int number, String zero) {
        List<String> words = new ArrayList<>();
        for (char digit : String.valueOf(number).toCharArray()) {
            words.add(digit == '0' ? zero : DIGITS[digit - '0']);
        }
        return String.join(" ", words);
    }

    private static String inFull(int number) {
        if (number < 10) {
            return DIGITS[number];
        }
        if (number < 20) {
            return TEENS[number - 10];
        }
        if (number < 100) {
            return TENS[number / 10] + (number % 10 == 0 ? "" : " " + DIGITS[number % 10]);
        }
        int unit = number < 1000 ? 100 : 1000;
        String rest = number % unit == 0 ? "" : " " + inFull(number % unit);
        return inFull(number / unit) + (unit == 100 ? " hundred" : " thousand") + rest;
    }
}
