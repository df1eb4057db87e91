package strawbed.protocol.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import strawbed.protocol.Allowed;
import strawbed.protocol.Setting;

/** Values that settings can have, made at random. */
final class Values {
    private Values() {}

    /** One that its setting allows; with others it may be out of order. */
    static String any(Setting setting, SplittableRandom random) {
        Allowed allowed = setting.allowed();
        if (allowed instanceof Allowed.Amount amount) {
            return number(amount.least(), amount.greatest(), random).toPlainString();
        }
        if (allowed instanceof Allowed.Ascending list) {
            TreeSet<BigDecimal> numbers = new TreeSet<>();
            int count = 1 + random.nextInt(8);
            for (int i = 0; i < count; i++) {
                numbers.add(number(list.least(), list.greatest(), random));
            }
            return String.join(
                    ", ", numbers.stream().map(BigDecimal::toPlainString).toList());
        }
        if (allowed instanceof Allowed.Word word) {
            return word.choices().get(random.nextInt(word.choices().size()));
        }
        if (allowed instanceof Allowed.Words words) {
            List<String> chosen = new ArrayList<>(words.choices());
            chosen.removeIf(choice -> random.nextBoolean());
            return String.join(", ", chosen);
        }
        return random.nextBoolean() ? "yes" : "no";
    }

    private static BigDecimal number(BigDecimal least, BigDecimal greatest, SplittableRandom random) {
        int decimals = random.nextInt(4);
        return least.add(greatest.subtract(least).multiply(BigDecimal.valueOf(random.nextInt(10_001), 4)))
                .setScale(Math.max(decimals, least.scale()), RoundingMode.DOWN);
    }
}
