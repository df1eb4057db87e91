package strawbed.grammar;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What stands before the rules of a file (SRGS 1.0, section 4).
 *
 * @param source the file
 * @param language its language, such as {@code en-US}
 * @param tagFormat its tag format, or null when none is declared
 * @param root its root rule, or null when none is declared
 * @param rootAt where the root rule is declared
 * @param meta its metadata: content by name, the last one where a name comes twice
 * @param end where the rules begin, with the comments before them
 */
record Header(
        SourceText source,
        String language,
        @Nullable String tagFormat,
        @Nullable String root,
        int rootAt,
        Map<String, String> meta,
        int end) {

    Header {
        meta = Map.copyOf(meta);
    }

    static final String LITERALS = "semantics/1.0-literals";

    /** Whether tags are literals; so are those of a file that does not say. */
    boolean tagsAreLiterals() {
        return tagFormat == null || tagFormat.equals(LITERALS);
    }

    void checkRoot(Map<RuleId, Rule> rules) {
        if (root != null) {
            RuleId id = new RuleId(source.file(), root);
            if (!rules.containsKey(id)) {
                throw source.mistake(rootAt, Spelling.unknownRule(id, rules.keySet()));
            }
        }
    }
}
