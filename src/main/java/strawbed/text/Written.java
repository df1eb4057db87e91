package strawbed.text;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;

/** For the eye. */
record Written(Messages messages) implements Wording {
    private static final int MOST_DECIMALS = 9;

    @Override
    public String key(String key) {
        return key;
    }

    @Override
    public String number(BigDecimal number) {
        NumberFormat format = NumberFormat.getNumberInstance(messages.locale());
        format.setGroupingUsed(false);
        format.setMaximumFractionDigits(MOST_DECIMALS);
        return format.format(number);
    }

    @Override
    public String digits(String number) {
        return number;
    }

    @Override
    public String place(String words) {
        return words;
    }

    @Override
    public String groups(List<String> groups) {
        return String.join(" ", groups);
    }

    @Override
    public String clock(LocalTime time) {
        return DateTimeFormatter.ofPattern(text(MessageKey.CLOCK_PATTERN), messages.locale())
                .format(time);
    }
}
