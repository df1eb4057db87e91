package strawbed.grammar;

import java.util.Objects;

/**
 * One rule definition.
 *
 * @param id its name and file
 * @param isPublic whether other files may refer to it
 * @param expansion what may be said
 * @param position where the definition begins
 */
public record Rule(RuleId id, boolean isPublic, RuleExpansion expansion, SourcePosition position) {

    /** Refuses missing parts. */
    public Rule {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(expansion, "expansion");
        Objects.requireNonNull(position, "position");
    }
}
