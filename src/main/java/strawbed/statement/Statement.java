package strawbed.statement;

import java.util.List;
import java.util.stream.Stream;

/**
 * What somebody said of a calf, or of the barn.
 *
 * @param facts in the order in which they were said; may be empty while the statement is not complete
 */
public record Statement(CalfReference calf, List<SaidFact> facts) {
    public Statement {
        facts = List.copyOf(facts);
    }

    /** This statement with more facts behind its own. */
    public Statement and(List<SaidFact> more) {
        return new Statement(calf, Stream.concat(facts.stream(), more.stream()).toList());
    }
}
