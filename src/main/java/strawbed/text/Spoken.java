package strawbed.text;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalTime;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** For the ear: every number is written out, so that no voice has to guess how to read it. */
record Spoken(Messages messages) implements Wording {
    private static final String SPOKEN = ".spoken";
    private static final Pattern NUMBER = Pattern.compile("[0-9]+");
    private static final BigInteger THOUSAND = BigInteger.valueOf(1000);
    private static final int HUNDRED = 100;
    private static final int NOON = 12;

    @Override
    public String key(String key) {
        return messages.has(key + SPOKEN) ? key + SPOKEN : key;
    }

    @Override
    public String number(BigDecimal number) {
        if (number.signum() < 0) {
            return text(MessageKey.NUMBER_MINUS, number(number.negate()));
        }
        BigInteger whole = number.toBigInteger();
        String before = whole.compareTo(THOUSAND) < 0 ? below1000(whole.intValueExact()) : digits(whole.toString());
        String plain = number.stripTrailingZeros().toPlainString();
        int point = plain.indexOf('.');
        return point < 0 ? before : text(MessageKey.NUMBER_POINT, before, digits(plain.substring(point + 1)));
    }

    @Override
    public String beforeMasculine(BigDecimal number) {
        return agreed(number, MessageKey.NUMBER_BEFORE_MASCULINE);
    }

    @Override
    public String beforeFeminine(BigDecimal number) {
        return agreed(number, MessageKey.NUMBER_BEFORE_FEMININE);
    }

    /** With the endings that the language changes there; what follows a point stays as it is. */
    private String agreed(BigDecimal number, MessageKey key) {
        String words = number(number);
        if (number.stripTrailingZeros().scale() > 0) {
            return words;
        }
        for (String change : row(key)) {
            int colon = change.indexOf(':');
            if (colon > 0) {
                words = words.replaceAll(change.substring(0, colon) + "\\b", change.substring(colon + 1));
            }
        }
        return words;
    }

    @Override
    public String digits(String number) {
        return number.chars()
                .mapToObj(character -> character >= '0' && character <= '9'
                        ? small().get(character - '0')
                        : Character.toString(character))
                .collect(Collectors.joining(" "));
    }

    @Override
    public String place(String words) {
        return NUMBER.matcher(words).replaceAll((MatchResult found) -> number(new BigDecimal(found.group())));
    }

    /** The commas make the voice pause. */
    @Override
    public String groups(List<String> groups) {
        return groups.stream().map(this::digits).collect(Collectors.joining(", "));
    }

    /** On the clock of 24 hours as the screen shows it, so that no half of the day is left open. */
    @Override
    public String clock(LocalTime time) {
        String hour = row(MessageKey.CLOCK_HOURS).get(time.getHour());
        if (time.getHour() == 0 && time.getMinute() == 0) {
            return text(MessageKey.CLOCK_MIDNIGHT);
        }
        if (time.getMinute() == 0) {
            return text(time.getHour() > NOON ? MessageKey.CLOCK_LATE_HOUR : MessageKey.CLOCK_HOUR, hour);
        }
        String minute = below1000(time.getMinute());
        return text(
                MessageKey.CLOCK_HOUR_AND_MINUTE,
                hour,
                time.getMinute() < 10 ? text(MessageKey.CLOCK_SINGLE_MINUTE, minute) : minute);
    }

    private String below1000(int number) {
        if (number < HUNDRED) {
            return below100(number);
        }
        int hundreds = number / HUNDRED;
        return number % HUNDRED == 0
                ? row(MessageKey.NUMBER_HUNDREDS).get(hundreds)
                : text(
                        MessageKey.NUMBER_HUNDREDS_AND_MORE,
                        row(MessageKey.NUMBER_HUNDREDS_BEFORE_MORE).get(hundreds),
                        below100(number % HUNDRED));
    }

    private String below100(int number) {
        if (number < small().size()) {
            return small().get(number);
        }
        String tens = row(MessageKey.NUMBER_TENS).get(number / 10);
        return number % 10 == 0 ? tens : text(MessageKey.NUMBER_TENS_AND_ONES, tens, small().get(number % 10));
    }

    private List<String> small() {
        return row(MessageKey.NUMBER_WORDS);
    }

    private List<String> row(MessageKey key) {
        return List.of(text(key).split(", ", -1));
    }
}
