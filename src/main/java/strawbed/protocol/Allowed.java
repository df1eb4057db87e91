package strawbed.protocol;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a setting may be, with its usual value. Values are text, in one form: {@code 2.5}, {@code 30, 60}, {@code yes}. */
public sealed interface Allowed {
    /** The usual value as text. */
    String usual();

    /** What may stand there, in words, such as "a number from 1 to 4". */
    String words();

    /** Whether a value may stand there. */
    boolean allows(String value);

    /** The one form of a value that is allowed, so that 2 and 2.0 are the same protocol. */
    String plain(String value);

    /** A number from the least to the greatest, both included. */
    record Amount(String usual, BigDecimal least, BigDecimal greatest) implements Allowed {
        static Amount of(String usual, String least, String greatest) {
            return new Amount(usual, new BigDecimal(least), new BigDecimal(greatest));
        }

        @Override
        public String words() {
            return "a number from " + least.toPlainString() + " to " + greatest.toPlainString();
        }

        @Override
        public boolean allows(String value) {
            return number(value).filter(this::isWithin).isPresent();
        }

        @Override
        public String plain(String value) {
            return plainly(new BigDecimal(value));
        }

        private boolean isWithin(BigDecimal value) {
            return value.compareTo(least) >= 0 && value.compareTo(greatest) <= 0;
        }
    }

    /** One to eight numbers, each greater than the one before. */
    record Ascending(String usual, BigDecimal least, BigDecimal greatest) implements Allowed {
        private static final int MOST = 8;

        static Ascending of(String usual, String least, String greatest) {
            return new Ascending(usual, new BigDecimal(least), new BigDecimal(greatest));
        }

        @Override
        public String words() {
            return "one to " + MOST + " numbers from " + least.toPlainString() + " to " + greatest.toPlainString()
                    + ", each greater than the one before";
        }

        @Override
        public boolean allows(String value) {
            BigDecimal before = null;
            List<String> parts = parts(value);
            for (String part : parts) {
                BigDecimal next = number(part).orElse(null);
                if (next == null || next.compareTo(least) < 0 || next.compareTo(greatest) > 0) {
                    return false;
                }
                if (before != null && next.compareTo(before) <= 0) {
                    return false;
                }
                before = next;
            }
            return !parts.isEmpty() && parts.size() <= MOST;
        }

        @Override
        public String plain(String value) {
            return String.join(
                    ", ",
                    parts(value).stream()
                            .map(part -> plainly(new BigDecimal(part)))
                            .toList());
        }
    }

    /** One of a few words. */
    record Word(String usual, List<String> choices) implements Allowed {
        public Word {
            choices = List.copyOf(choices);
        }

        static Word of(String usual, String... choices) {
            return new Word(usual, List.of(choices));
        }

        @Override
        public String words() {
            return "one of: " + String.join(", ", choices);
        }

        @Override
        public boolean allows(String value) {
            return choices.contains(value);
        }

        @Override
        public String plain(String value) {
            return value;
        }
    }

    /** Any of a list of words, each once; the order does not matter. */
    record Words(String usual, List<String> choices) implements Allowed {
        public Words {
            choices = List.copyOf(choices);
        }

        @Override
        public String words() {
            return "any of: " + String.join(", ", choices);
        }

        @Override
        public boolean allows(String value) {
            List<String> parts = parts(value);
            return choices.containsAll(parts) && parts.stream().distinct().count() == parts.size();
        }

        @Override
        public String plain(String value) {
            List<String> parts = parts(value);
            return String.join(", ", choices.stream().filter(parts::contains).toList());
        }
    }

    /** Yes or no. */
    record YesOrNo(String usual) implements Allowed {
        @Override
        public String words() {
            return "yes or no";
        }

        @Override
        public boolean allows(String value) {
            return value.equals("yes") || value.equals("no");
        }

        @Override
        public String plain(String value) {
            return value;
        }
    }

    /** The parts of a list. */
    static List<String> parts(String value) {
        return Arrays.stream(value.split(",", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    private static Optional<BigDecimal> number(String text) {
        try {
            return Optional.of(new BigDecimal(text));
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static String plainly(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
