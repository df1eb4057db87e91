package strawbed.alike;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import strawbed.grammar.Grammar;
import strawbed.grammar.Phrase;
import strawbed.grammar.Phrases;
import strawbed.grammar.RuleExpansion;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleId;
import strawbed.grammar.Surroundings;

/**
 * Finds alternatives of a grammar that sound alike and mean different things. Each pair is cut down to the words that
 * differ, and told once.
 */
public final class AlikeChoices {
    /** What differs in more words than this is not mistaken for each other as a whole. */
    private static final int LONGEST = 3;

    private final Grammar grammar;
    private final Phrases phrases;
    private final Surroundings surroundings;
    private final Function<String, List<String>> pronunciation;
    private final Set<String> numberWords;
    private final Map<List<String>, Sounding> soundings = new HashMap<>();

    /**
     * Looks at everything that can be said under a rule.
     *
     * @param numberWords words of which numbers are made: those are compared one by one only, as numbers of several words
     *     make endless pairs of the same few
     */
    public AlikeChoices(
            Grammar grammar, RuleId root, Set<String> numberWords, Function<String, List<String>> pronunciation) {
        this.grammar = grammar;
        this.numberWords = Set.copyOf(numberWords);
        this.phrases = new Phrases(grammar);
        this.surroundings = new Surroundings(grammar, root, phrases);
        this.pronunciation = pronunciation;
    }

    /**
     * The pairs at least this close, the closest first.
     *
     * @param least from 0 to 1
     */
    public List<AlikePair> pairs(double least) {
        List<AlikePair> found = new ArrayList<>();
        Set<Set<List<String>>> seen = new HashSet<>();
        grammar.rules()
                .forEach(rule -> surroundings.visit(rule.id(), (part, around) -> {
                    if (part instanceof Alternatives choice) {
                        pairs(choice, around, least, seen, found);
                    }
                }));
        found.sort(Comparator.comparingDouble(AlikePair::closeness).reversed());
        return found;
    }

    private void pairs(
            Alternatives choice,
            Surroundings.Around around,
            double least,
            Set<Set<List<String>>> seen,
            List<AlikePair> found) {
        List<List<Phrase>> all = new ArrayList<>();
        for (RuleExpansion part : choice.parts()) {
            all.add(phrases.of(part));
        }
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                for (Phrase one : all.get(i)) {
                    for (Phrase other : all.get(j)) {
                        if (!one.sense().equals(other.sense())) {
                            pair(one.words(), other.words(), around, least, seen, found);
                        }
                    }
                }
            }
        }
    }

    private void pair(
            List<String> one,
            List<String> other,
            Surroundings.Around around,
            double least,
            Set<Set<List<String>>> seen,
            List<AlikePair> found) {
        int shorter = Math.min(one.size(), other.size());
        int head = 0;
        while (head < shorter && one.get(head).equals(other.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < shorter - head && one.get(one.size() - 1 - tail).equals(other.get(other.size() - 1 - tail))) {
            tail++;
        }
        List<String> first = one.subList(head, one.size() - tail);
        List<String> second = other.subList(head, other.size() - tail);
        if (first.isEmpty()
                || second.isEmpty()
                || Math.max(first.size(), second.size()) > LONGEST
                || isLongNumber(first)
                || isLongNumber(second)
                || !seen.add(Set.of(first, second))) {
            return;
        }
        double closeness = sounding(first).closeness(sounding(second));
        if (closeness >= least) {
            found.add(new AlikePair(first, second, closeness, around.with(one), around.with(other)));
        }
    }

    private boolean isLongNumber(List<String> words) {
        return words.size() > 1 && words.stream().anyMatch(numberWords::contains);
    }

    private Sounding sounding(List<String> words) {
        return soundings.computeIfAbsent(List.copyOf(words), some -> Sounding.of(some, pronunciation));
    }
}
