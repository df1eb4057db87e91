package strawbed.statement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.grammar.ParseTree;

/**
 * The value of a number as it was spoken: in full, in pairs, digit by digit, with a point, with a half.
 *
 * <p>The grammar's tags give the values of single words; how they go together is told by the rules that they stand
 * under.
 */
final class SpokenNumber {
    private static final Set<String> WORDS =
            Set.of("digit", "zero", "teen", "tens", "hundred", "thousand", "small_hundreds_in_full");
    private static final Set<String> PAIRED = Set.of("in_pairs", "small_pairs");
    private static final Set<String> SPELT = Set.of("digit_by_digit", "three_digits", "official_digits");

    private SpokenNumber() {}

    /** The value of a whole number below ten thousand. */
    static int whole(ParseTree tree) {
        return Integer.parseInt(digits(tree));
    }

    /** The digits of a number, zeros in front kept: for tags. */
    static String digits(ParseTree tree) {
        if (PAIRED.contains(tree.rule())) {
            ParseTree head = tree.children().get(0);
            ParseTree tail = tree.children().get(1);
            return inFull(head) + "%02d".formatted(inFull(tail));
        }
        if (SPELT.contains(tree.rule())) {
            return leaves(tree).stream().map(String::valueOf).collect(Collectors.joining());
        }
        if (tree.rule().equals("digit_groups") || tree.rule().equals("after_tens")) {
            return groups(tree);
        }
        if (tree.children().size() == 1 && tree.tag() == null) {
            return digits(tree.children().get(0));
        }
        return String.valueOf(inFull(tree));
    }

    /** The value of a number that may have a point and may end in "and a half". */
    static BigDecimal decimal(ParseTree tree) {
        ParseTree before = tree.children().get(0);
        BigDecimal value = tree.child("fraction")
                .map(fraction -> new BigDecimal(digits(before) + "." + spelt(fraction)))
                .orElseGet(() -> new BigDecimal(digits(before)));
        return value.stripTrailingZeros();
    }

    private static String spelt(ParseTree tree) {
        return leaves(tree).stream().map(String::valueOf).collect(Collectors.joining());
    }

    /** Forty, one, twenty, seven: each group of tens takes the digit behind it, and all are written in a row. */
    private static String groups(ParseTree tree) {
        StringBuilder written = new StringBuilder();
        int tens = 0;
        for (int leaf : leaves(tree)) {
            if (tens > 0) {
                boolean belongs = leaf > 0 && leaf < 10;
                written.append(belongs ? tens + leaf : tens);
                tens = 0;
                if (belongs) {
                    continue;
                }
            }
            if (leaf >= 20) {
                tens = leaf;
            } else {
                written.append(leaf);
            }
        }
        return (tens > 0 ? written.append(tens) : written).toString();
    }

    private static int inFull(ParseTree tree) {
        int thousands = 0;
        int current = 0;
        for (int leaf : leaves(tree)) {
            if (leaf == 1000) {
                thousands = current * 1000;
                current = 0;
            } else if (leaf == 100) {
                current *= 100;
            } else {
                current += leaf;
            }
        }
        return thousands + current;
    }

    /** The values of the number words in order. A tag on a rule above them, as in "a hundred", stands first. */
    private static List<Integer> leaves(ParseTree tree) {
        List<Integer> values = new ArrayList<>();
        collect(tree, values);
        return values;
    }

    private static void collect(ParseTree tree, List<Integer> values) {
        String tag = tree.tag();
        if (tag != null && (WORDS.contains(tree.rule()) || tree.children().isEmpty() || startsWithA(tree))) {
            values.add(Integer.valueOf(tag));
        }
        tree.children().forEach(child -> collect(child, values));
    }

    private static boolean startsWithA(ParseTree tree) {
        return tree.words().get(0).equals("a");
    }
}
