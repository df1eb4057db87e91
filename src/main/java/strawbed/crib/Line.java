package strawbed.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A line of the sheet: an example with the signs for what can be left out or chosen.
 *
 * @param words the whole example
 * @param choices by the index of the first word that they stand for: the words to choose from, and how many of the
 *     example's words they replace
 * @param from index of the first word that can be left out
 * @param to index after the last one; the same where nothing can be left out
 * @param anything whether any words may follow
 */
record Line(List<String> words, Map<Integer, Choice> choices, int from, int to, boolean anything) {
    private static final String OR = " / ";
    private static final String ANYTHING = "…";

    /** Words to choose from, in place of so many of the example's words. */
    record Choice(int length, List<String> phrases) {
        Choice {
            phrases = List.copyOf(phrases);
        }
    }

    Line {
        words = List.copyOf(words);
        choices = Map.copyOf(choices);
    }

    /** Whole words of which none can be left out. */
    static Line of(List<String> words, Map<Integer, Choice> choices, boolean anything) {
        return new Line(words, choices, 0, 0, anything);
    }

    /** Words that are all to choose from. */
    static Line ofChoices(List<String> phrases) {
        return of(List.of(phrases.get(0)), Map.of(0, new Choice(1, phrases)), false);
    }

    /** This line and a shorter one as one, if the shorter one only leaves out words that stand together. */
    Optional<Line> leavingOut(Line shorter) {
        int less = words.size() - shorter.words.size();
        if (less <= 0 || from < to || shorter.from < shorter.to) {
            return Optional.empty();
        }
        // From behind, as what can be left out mostly stands at the end.
        for (int at = shorter.words.size(); at >= 0; at--) {
            List<String> left = new ArrayList<>(words.subList(0, at));
            left.addAll(words.subList(at + less, words.size()));
            if (left.equals(shorter.words)) {
                return Optional.of(new Line(words, choices, at, at + less, anything));
            }
        }
        return Optional.empty();
    }

    String text() {
        List<String> shown = new ArrayList<>();
        Map<Integer, Choice> inOrder = new TreeMap<>(choices);
        int index = 0;
        while (index < words.size()) {
            Choice choice = inOrder.get(index);
            int length = choice == null ? 1 : choice.length();
            String word = choice == null ? words.get(index) : String.join(OR, choice.phrases());
            String open = from < to && index == from ? "(" : "";
            index += length;
            String close = from < to && index == to ? ")" : "";
            shown.add(open + word + close);
        }
        if (anything) {
            shown.add(ANYTHING);
        }
        return shown.stream().collect(Collectors.joining(" "));
    }
}
