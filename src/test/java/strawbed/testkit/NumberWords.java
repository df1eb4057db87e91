package strawbed.testkit;

import java.util.List;

/** Numbers below a hundred in words, made apart from the program's own. */
public final class NumberWords {
    private static final List<String> SMALL = List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    private static final List<String> TENS =
            List.of("", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");

    private NumberWords() {}

    /** 0 to 99, such as "forty two". */
    public static String of(int number) {
        if (number < 20) {
            return SMALL.get(number);
        }
        return TENS.get(number / 10) + (number % 10 == 0 ? "" : " " + SMALL.get(number % 10));
    }

    /** Minutes after the hour: "oh five", "fifteen", "forty two". */
    public static String minute(int minute) {
        return minute < 10 ? "oh " + of(minute) : of(minute);
    }
}
