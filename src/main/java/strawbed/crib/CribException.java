package strawbed.crib;

import java.util.List;

/** A sheet would not agree with the grammar. The message names every place and says what to do. */
public final class CribException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    CribException(List<String> faults) {
        super("The crib sheet would not agree with the grammar, so none was written:\n  "
                + String.join("\n  ", faults)
                + "\nChange the comment before the rule, or the rule, and try again.");
    }
}
