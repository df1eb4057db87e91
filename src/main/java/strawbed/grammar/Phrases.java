package strawbed.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;
import strawbed.grammar.RuleExpansion.Tag;
import strawbed.grammar.RuleExpansion.Token;

/**
 * The short phrases of a part of a grammar. A rule with very many, such as all numbers, stands for itself by its shortest
 * one: its own alternatives are looked at where it is defined. Not safe for several threads.
 */
public final class Phrases {
    /** A rule with more phrases than this is shown by one. */
    private static final int MANY = 60;

    private final Grammar grammar;
    private final Map<RuleId, List<Phrase>> known = new HashMap<>();
    private final Set<RuleId> open = new HashSet<>();

    /** Phrases of the parts of a grammar. */
    public Phrases(Grammar grammar) {
        this.grammar = grammar;
    }

    /** The part's phrases, without double ones; none where it cannot be said. */
    public List<Phrase> of(RuleExpansion part) {
        if (part instanceof Token token) {
            return List.of(new Phrase(List.of(token.text()), List.of()));
        }
        if (part instanceof Tag tag) {
            return List.of(new Phrase(List.of(), List.of("{" + tag.literal() + "}")));
        }
        if (part instanceof RuleReference reference) {
            return ofRule(reference.rule());
        }
        if (part instanceof Sequence sequence) {
            List<Phrase> all = List.of(Phrase.EMPTY);
            for (RuleExpansion one : sequence.parts()) {
                all = product(all, of(one));
            }
            return all;
        }
        if (part instanceof Alternatives alternatives) {
            return alternatives.parts().stream()
                    .flatMap(one -> of(one).stream())
                    .distinct()
                    .toList();
        }
        if (part instanceof Repeat repeat) {
            return repeated(repeat);
        }
        return part == Special.VOID ? List.of() : List.of(Phrase.EMPTY);
    }

    private List<Phrase> ofRule(RuleId id) {
        List<Phrase> before = known.get(id);
        if (before != null) {
            return before;
        }
        if (!open.add(id)) {
            // A rule inside itself: what it says without itself is all that is looked at.
            return List.of();
        }
        Phrase name = new Phrase(List.of(), List.of("$" + id.name()));
        List<Phrase> all = narrowed(of(grammar.rule(id).expansion())).stream()
                .map(name::and)
                .toList();
        open.remove(id);
        known.put(id, all);
        return all;
    }

    /** The fewest times, and once more. */
    private List<Phrase> repeated(Repeat repeat) {
        List<Phrase> once = of(repeat.expansion());
        List<Phrase> all = List.of(Phrase.EMPTY);
        for (int i = 0; i < repeat.min(); i++) {
            all = product(all, once);
        }
        List<Phrase> more = new ArrayList<>(all);
        if (repeat.max() > repeat.min()) {
            more.addAll(product(all, once));
        }
        return more.stream().distinct().toList();
    }

    private static List<Phrase> product(List<Phrase> heads, List<Phrase> tails) {
        boolean many = heads.size() * tails.size() > MANY * MANY;
        List<Phrase> these = many ? narrowed(heads) : heads;
        List<Phrase> those = many ? narrowed(tails) : tails;
        return these.stream()
                .flatMap(head -> those.stream().map(head::and))
                .distinct()
                .toList();
    }

    private static List<Phrase> narrowed(List<Phrase> all) {
        return all.size() <= MANY
                ? all
                : all.stream()
                        .min(Comparator.comparingInt(phrase -> phrase.words().size()))
                        .stream()
                        .toList();
    }

    /** The shortest words of a part; empty also where it cannot be said. */
    List<String> shortest(RuleExpansion part) {
        return of(part).stream()
                .map(Phrase::words)
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }
}
