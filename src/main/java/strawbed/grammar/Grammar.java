package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a grammar file and of all files it refers to, checked and ready for use.
 *
 * <p>Made by {@link GrammarReader}. Immutable, and safe for any thread.
 */
public final class Grammar {

    private final String file;
    private final @Nullable String root;
    private final String language;
    private final Map<String, String> meta;
    private final Map<RuleId, Rule> rules;

    Grammar(Header header, Map<RuleId, Rule> rules) {
        this.file = header.source().file();
        this.root = header.root();
        this.language = header.language();
        this.meta = header.meta();
        this.rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
    }

    /**
     * The root rule of the main file.
     *
     * @throws GrammarException when it declares none
     */
    public RuleId root() {
        if (root == null) {
            throw new GrammarException(file, "no root rule is declared. Add a line such as \"root $statement;\".");
        }
        return new RuleId(file, root);
    }

    /** The language of the main file, such as {@code en-US}. */
    public String language() {
        return language;
    }

    /** What the main file declares as {@code meta "name" is "content";}. */
    public Optional<String> meta(String name) {
        return Optional.ofNullable(meta.get(name));
    }

    /**
     * The rule with this name and file.
     *
     * @throws GrammarException when there is none
     */
    public Rule rule(RuleId id) {
        Rule rule = rules.get(id);
        if (rule == null) {
            throw new GrammarException(id.file(), Spelling.unknownRule(id, rules.keySet()));
        }
        return rule;
    }

    /**
     * The rule of the main file with this name, given without the dollar sign.
     *
     * @throws GrammarException when there is none
     */
    public RuleId ruleNamed(String name) {
        return rule(new RuleId(file, name)).id();
    }

    /** All rules: the main file's first, then those of the files it refers to, each in the order written. */
    public Collection<Rule> rules() {
        return rules.values();
    }

    /** Every word that occurs in any rule. */
    public SortedSet<String> tokens() {
        return tokens(rules.keySet());
    }

    /** Every word of the given rules and of those they refer to, however indirectly. */
    public SortedSet<String> tokens(Collection<RuleId> from) {
        SortedSet<String> words = new TreeSet<>();
        for (RuleId id : reached(from)) {
            visit(rule(id).expansion(), part -> {
                if (part instanceof RuleExpansion.Token token) {
                    words.add(token.text());
                }
            });
        }
        return Collections.unmodifiableSortedSet(words);
    }

    /** The given rules and those they refer to, however indirectly. */
    public Set<RuleId> reached(Collection<RuleId> from) {
        Set<RuleId> seen = new LinkedHashSet<>(from);
        Deque<RuleId> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            visit(rule(open.remove()).expansion(), part -> {
                if (part instanceof RuleExpansion.RuleReference reference && seen.add(reference.rule())) {
                    open.add(reference.rule());
                }
            });
        }
        return Collections.unmodifiableSet(seen);
    }

    List<RuleId> ids() {
        return List.copyOf(rules.keySet());
    }

    /** Shows the expansion and everything inside it. */
    static void visit(RuleExpansion expansion, Consumer<RuleExpansion> visitor) {
        visitor.accept(expansion);
        expansion.parts().forEach(part -> visit(part, visitor));
    }
}
