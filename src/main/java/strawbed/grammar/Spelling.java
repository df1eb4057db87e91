package strawbed.grammar;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Says which rule was probably meant. */
final class Spelling {

    private Spelling() {}

    static String unknownRule(RuleId wanted, Collection<RuleId> known) {
        Optional<String> near = known.stream()
                .filter(id -> id.file().equals(wanted.file()))
                .map(RuleId::name)
                .filter(name -> distance(name, wanted.name())
                        <= Math.max(1, wanted.name().length() / 3))
                .min(Comparator.comparingInt((String name) -> distance(name, wanted.name()))
                        .thenComparing(Comparator.naturalOrder()));
        return "there is no rule named $" + wanted.name() + "."
                + near.map(name -> " Did you mean $" + name + "?").orElse("");
    }

    /** The letters to insert, delete or replace to get from one to the other (Levenshtein 1966). */
    private static int distance(String a, String b) {
        String from = a.toLowerCase(Locale.ROOT);
        String to = b.toLowerCase(Locale.ROOT);
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
