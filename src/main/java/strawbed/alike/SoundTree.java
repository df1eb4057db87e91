package strawbed.alike;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Words by their phones, so that words with the same beginning are compared once. Not safe for several threads. */
final class SoundTree {
    private final Map<Phone, SoundTree> next = new EnumMap<>(Phone.class);
    private @Nullable String word;

    /** Adds a word; of words that sound the same the first that was added stays. */
    void add(String added, Sounding sounding) {
        SoundTree place = this;
        for (Phone phone : sounding.phones()) {
            place = place.next.computeIfAbsent(phone, unused -> new SoundTree());
        }
        String known = place.word;
        if (known == null || isPlainer(added, known)) {
            place.word = added;
        }
    }

    private static boolean isPlainer(String added, String known) {
        return added.length() != known.length() ? added.length() < known.length() : added.compareTo(known) < 0;
    }

    /**
     * Shows every word that is near some beginning of the target, with its costs for each length of that beginning.
     *
     * @param limit words that cost more for every beginning are not shown
     */
    void near(List<Phone> target, double limit, BiConsumer<String, double[]> found) {
        near(Sounding.start(target), target, limit, found);
    }

    private void near(double[] row, List<Phone> target, double limit, BiConsumer<String, double[]> found) {
        if (word != null) {
            found.accept(word, row);
        }
        for (Map.Entry<Phone, SoundTree> branch : new ArrayList<>(next.entrySet())) {
            double[] after = Sounding.next(row, branch.getKey(), target);
            if (least(after) <= limit) {
                branch.getValue().near(after, target, limit, found);
            }
        }
    }

    private static double least(double[] row) {
        double least = row[0];
        for (double cost : row) {
            least = Math.min(least, cost);
        }
        return least;
    }
}
