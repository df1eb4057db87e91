package strawbed.alike;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Finds known words, one to three in a row, that sound most like a word that is not known. Built once for a list of
 * known words, which takes about a second for a hundred thousand. Not safe for several threads.
 */
public final class StandIns {
    private static final int MOST_WORDS = 3;

    /** One part of a stand-in may be this far from what it stands for; an edit of a whole phone is 0.35 to 1. */
    private static final double LIMIT = 1.1;

    /** Each further word is another chance to be misheard; a word of one sound is hardly heard at all. */
    private static final double FURTHER_WORD = 0.08;

    private static final double ONE_SOUND = 0.25;

    /** What sounds less alike than this is of no use. */
    private static final double LEAST = 0.7;

    /** So many words are kept for each stretch, and so many beginnings for each length. */
    private static final int KEPT = 12;

    /** Of two that sound equally close the more common one: this for each time that it is half as high in the list. */
    private static final double RARER = 0.015;

    private static final int COMMON = 1_000;

    /** A compound is of words among the 16,000 most common, of four letters at least. */
    private static final double COMPOUND = 4 * RARER;

    private static final int SHORTEST_PART = 4;

    private final SoundTree tree = new SoundTree();
    private final Map<String, Double> rareness = new HashMap<>();
    private final Function<String, List<String>> pronunciation;

    /**
     * Takes the words to choose from.
     *
     * @param known words in small letters, the most common first; others are left out
     * @param pronunciation the phones of a word
     */
    public StandIns(Collection<String> known, Function<String, List<String>> pronunciation) {
        this.pronunciation = pronunciation;
        for (String word : known) {
            if (isPlain(word)) {
                rareness.put(word, rareness(rareness.size()));
                tree.add(word, Sounding.of(List.of(word), pronunciation));
            }
        }
    }

    private static double rareness(int place) {
        return Math.max(0, RARER * Math.log((double) place / COMMON) / Math.log(2));
    }

    /** Letters that are said one by one, "bbc", are no words to say in a row. */
    private static boolean isPlain(String word) {
        return word.matches("[a-z]{2,}") && word.matches(".*[aeiouy].*");
    }

    /** A beginning of the target put together from words. */
    private record Beginning(List<String> words, double cost) {
        Beginning and(Piece piece) {
            List<String> more =
                    Stream.concat(words.stream(), Stream.of(piece.word())).toList();
            return new Beginning(more, cost + piece.cost() + (words.isEmpty() ? 0 : FURTHER_WORD));
        }
    }

    private record Piece(String word, double cost) {}

    /**
     * The stand-ins that sound most like a word, the best first, no two of them the same sounds.
     *
     * @param wanted the word; it is never its own stand-in
     * @param taken words that must not be all of a stand-in, as they mean something by themselves
     * @param count how many at most
     */
    public List<StandIn> closest(String wanted, Set<String> taken, int count) {
        Sounding target = Sounding.of(parts(wanted), pronunciation);
        Set<Sounding> seen = new HashSet<>();
        return beginnings(target.phones(), wanted).stream()
                .filter(whole -> !taken.containsAll(whole.words()))
                .filter(whole -> seen.add(Sounding.of(whole.words(), pronunciation)))
                .map(whole -> new StandIn(
                        whole.words(), Sounding.of(whole.words(), pronunciation).closeness(target)))
                .filter(standIn -> standIn.closeness() >= LEAST)
                .limit(count)
                .toList();
    }

    /** "Shorthorn" is short and horn: two common words in one are said as they are, whatever the rules of spelling say. */
    private List<String> parts(String wanted) {
        for (int end = wanted.length() - SHORTEST_PART; end >= SHORTEST_PART; end--) {
            List<String> parts = List.of(wanted.substring(0, end), wanted.substring(end));
            if (parts.stream().allMatch(part -> rareness.getOrDefault(part, COMPOUND) < COMPOUND)) {
                return parts;
            }
        }
        return List.of(wanted);
    }

    /** All ways found to say the whole target, the cheapest first. */
    private List<Beginning> beginnings(List<Phone> target, String wanted) {
        List<List<Beginning>> upTo = new ArrayList<>();
        for (int i = 0; i <= target.size(); i++) {
            upTo.add(new ArrayList<>());
        }
        upTo.get(0).add(new Beginning(List.of(), 0));
        for (int from = 0; from < target.size(); from++) {
            List<Beginning> begun = best(upTo.get(from));
            if (begun.isEmpty()) {
                continue;
            }
            List<List<Piece>> pieces = pieces(target.subList(from, target.size()), wanted);
            for (int length = 1; length < pieces.size(); length++) {
                for (Piece piece : pieces.get(length)) {
                    for (Beginning beginning : begun) {
                        if (beginning.words().size() < MOST_WORDS) {
                            upTo.get(from + length).add(beginning.and(piece));
                        }
                    }
                }
            }
        }
        return upTo.get(target.size()).stream()
                .sorted(Comparator.comparingDouble(Beginning::cost))
                .toList();
    }

    private static List<Beginning> best(List<Beginning> all) {
        // Of each number of words, so that cheap long ones do not crowd out those that still may grow.
        return Stream.iterate(0, words -> words < MOST_WORDS, words -> words + 1)
                .flatMap(words -> all.stream()
                        .filter(one -> one.words().size() == words)
                        .sorted(Comparator.comparingDouble(Beginning::cost))
                        .limit(KEPT))
                .toList();
    }

    /** For each length of a beginning of the target the words nearest to it. */
    private List<List<Piece>> pieces(List<Phone> target, String wanted) {
        List<List<Piece>> pieces = new ArrayList<>();
        for (int i = 0; i <= target.size(); i++) {
            pieces.add(new ArrayList<>());
        }
        tree.near(target, LIMIT, (word, costs) -> {
            double more = rareness.getOrDefault(word, 0.0)
                    + (pronunciation.apply(word).size() < 2 ? ONE_SOUND : 0);
            for (int length = 1; length < costs.length; length++) {
                if (costs[length] <= LIMIT && !word.equals(wanted)) {
                    pieces.get(length).add(new Piece(word, costs[length] + more));
                }
            }
        });
        pieces.replaceAll(all -> all.stream()
                .sorted(Comparator.comparingDouble(Piece::cost).thenComparing(Piece::word))
                .limit(KEPT)
                .toList());
        return pieces;
    }
}
