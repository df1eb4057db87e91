package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Tag;
import strawbed.grammar.RuleExpansion.Token;

/** What is said around each part of a grammar in a short whole sentence. */
public final class Surroundings {
    /** The words before and after. */
    public record Around(List<String> before, List<String> after) {
        /** Keeps its own copies of the lists. */
        public Around {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        /** The whole sentence with these words in the middle. */
        public List<String> with(List<String> words) {
            return Phrase.joined(Phrase.joined(before, words), after);
        }

        private int size() {
            return before.size() + after.size();
        }
    }

    private final Grammar grammar;
    private final Phrases phrases;
    private final Map<RuleId, Around> rules = new HashMap<>();

    /** Finds them for every rule that can be reached from one. */
    public Surroundings(Grammar grammar, RuleId root, Phrases phrases) {
        this.grammar = grammar;
        this.phrases = phrases;
        rules.put(root, new Around(List.of(), List.of()));
        Deque<RuleId> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            visit(open.remove(), (part, around) -> {
                if (part instanceof RuleReference reference) {
                    Around known = rules.get(reference.rule());
                    if (known == null || around.size() < known.size()) {
                        rules.put(reference.rule(), around);
                        open.add(reference.rule());
                    }
                }
            });
        }
    }

    /** Short sentences that together pass through every word and every tag that can be reached. */
    public List<List<String>> throughEveryPart() {
        Set<List<String>> sentences = new LinkedHashSet<>();
        grammar.rules()
                .forEach(rule -> visit(rule.id(), (part, around) -> {
                    if (part instanceof Token || part instanceof Tag) {
                        sentences.add(around.with(phrases.shortest(part)));
                    }
                }));
        return List.copyOf(sentences);
    }

    /** Shows every part of a rule with what is said around it; nothing of a rule that cannot be reached. */
    public void visit(RuleId id, BiConsumer<RuleExpansion, Around> visitor) {
        Around around = rules.get(id);
        if (around != null) {
            visit(grammar.rule(id).expansion(), around, visitor);
        }
    }

    private void visit(RuleExpansion part, Around around, BiConsumer<RuleExpansion, Around> visitor) {
        if (phrases.of(part).isEmpty()) {
            return;
        }
        visitor.accept(part, around);
        if (part instanceof Sequence sequence) {
            List<RuleExpansion> parts = sequence.parts();
            for (int i = 0; i < parts.size(); i++) {
                List<String> before = words(parts.subList(0, i));
                List<String> after = words(parts.subList(i + 1, parts.size()));
                visit(
                        parts.get(i),
                        new Around(Phrase.joined(around.before(), before), Phrase.joined(after, around.after())),
                        visitor);
            }
        } else if (part instanceof Repeat repeat) {
            List<String> others = phrases.shortest(
                    new Repeat(repeat.expansion(), Math.max(0, repeat.min() - 1), Math.max(0, repeat.min() - 1), 0));
            visit(repeat.expansion(), new Around(around.before(), Phrase.joined(others, around.after())), visitor);
        } else {
            part.parts().forEach(one -> visit(one, around, visitor));
        }
    }

    private List<String> words(List<RuleExpansion> parts) {
        return parts.stream().flatMap(part -> phrases.shortest(part).stream()).toList();
    }
}
