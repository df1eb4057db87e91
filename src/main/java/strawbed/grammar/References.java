package strawbed.grammar;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Where the parts of rules stand, and which rules they refer to; needed only while reading. */
final class References {

    /**
     * One mention of a rule.
     *
     * @param byFile whether the file was named without a rule, which means its root, public or not
     */
    private record Mention(SourceText source, int at, RuleId rule, boolean byFile) {}

    private record Place(SourceText source, int at) {}

    private final List<Mention> mentions = new ArrayList<>();
    private final IdentityHashMap<RuleExpansion, Place> places = new IdentityHashMap<>();
    private final Set<String> files = new LinkedHashSet<>();

    void mention(SourceText source, int at, RuleId rule, boolean byFile) {
        mentions.add(new Mention(source, at, rule, byFile));
        files.add(rule.file());
    }

    <E extends RuleExpansion> E placed(E expansion, SourceText source, int at) {
        places.put(expansion, new Place(source, at));
        return expansion;
    }

    Set<String> files() {
        return files;
    }

    /** A mistake at a part that was placed before. */
    GrammarException mistake(RuleExpansion expansion, String problem) {
        Place place = Objects.requireNonNull(places.get(expansion), "place");
        return place.source().mistake(place.at(), problem);
    }

    void checkAll(Map<RuleId, Rule> rules) {
        for (Mention mention : mentions) {
            RuleId id = mention.rule();
            Rule rule = rules.get(id);
            boolean foreign = !id.file().equals(mention.source().file());
            if (rule == null) {
                String where = foreign ? "in " + id.file() + " " : "";
                throw mention.source().mistake(mention.at(), where + Spelling.unknownRule(id, rules.keySet()));
            }
            if (foreign && !rule.isPublic() && !mention.byFile()) {
                throw mention.source()
                        .mistake(
                                mention.at(),
                                "the rule $" + id.name() + " of " + id.file()
                                        + " is private. Write \"public\" before its definition.");
            }
        }
    }
}
