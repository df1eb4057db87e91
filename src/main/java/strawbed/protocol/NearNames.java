package strawbed.protocol;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Says which name was probably meant. */
public final class NearNames {
    private static final int MOST = 3;

    private NearNames() {}

    /**
     * The known names that are spelled much like the wanted one, or have it as a part, the nearest first; three at most.
     */
    public static List<String> of(String wanted, Collection<String> known) {
        String plain = plain(wanted);
        int most = Math.max(2, plain.length() / 4);
        return known.stream()
                .filter(name -> distance(plain, name) <= most || (plain.length() > 2 && name.contains(plain)))
                .sorted(Comparator.comparingInt((String name) -> distance(plain, name))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList();
    }

    /** A name as it would stand in the file: small letters, with underscores between its words. */
    public static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
    }

    /** The letters to insert, delete or replace to get from one to the other (Levenshtein 1966). */
    private static int distance(String from, String to) {
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
