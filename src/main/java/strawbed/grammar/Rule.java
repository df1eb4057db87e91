package strawbed.grammar;

import java.util.Objects;

/**
 * One rule definition.
 *
 * @param id its name and file
 * @param isPublic whether other files may refer to it
 * @param expansion what may be said
 * @param position where the definition begins
 * @param documentation the documentation comment right before it
 */
public record Rule(
        RuleId id, boolean isPublic, RuleExpansion expansion, SourcePosition position, Documentation documentation) {

    /** Refuses missing parts. */
    public Rule {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(expansion, "expansion");
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(documentation, "documentation");
    }
}
