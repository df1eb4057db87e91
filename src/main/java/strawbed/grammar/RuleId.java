package strawbed.grammar;

import java.util.Objects;

/**
 * The name of a rule and the file it stands in.
 *
 * @param file the file as its source knows it, such as {@code calf.abnf}
 * @param name the rule's name without the dollar sign
 */
public record RuleId(String file, String name) {

    /** Refuses missing parts. */
    public RuleId {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(name, "name");
    }

    @Override
    public String toString() {
        return "$<" + file + "#" + name + ">";
    }
}
