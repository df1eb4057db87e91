package strawbed.grammar;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A grammar cannot be read or does not have what it is asked for; the message is for whoever wrote the grammar.
 *
 * <p>Where a place is known, the message ends with the line and a caret under the place.
 */
public final class GrammarException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String file;
    private final transient @Nullable SourcePosition position;
    private final String lineText;
    private final String problem;

    /** A problem of a whole file. */
    public GrammarException(String file, String problem) {
        this(file, problem, null);
    }

    /** A problem of a whole file with what led to it. */
    public GrammarException(String file, String problem, @Nullable Throwable cause) {
        super(file + ": " + problem, cause);
        this.file = Objects.requireNonNull(file, "file");
        this.position = null;
        this.lineText = "";
        this.problem = Objects.requireNonNull(problem, "problem");
    }

    /** A problem at one place of a file. */
    public GrammarException(SourcePosition position, String lineText, String problem, @Nullable Throwable cause) {
        super(message(position, lineText, problem), cause);
        this.file = position.file();
        this.position = position;
        this.lineText = lineText;
        this.problem = problem;
    }

    /** The file with the problem. */
    public String file() {
        return file;
    }

    /** The place of the problem; empty when it is the whole file's. */
    public Optional<SourcePosition> position() {
        return Optional.ofNullable(position);
    }

    /** The line from 1, or 0 when the problem is the whole file's. */
    public int line() {
        return position == null ? 0 : position.line();
    }

    /** The column from 1, or 0 when the problem is the whole file's. */
    public int column() {
        return position == null ? 0 : position.column();
    }

    /** The line's text, or nothing when the problem is the whole file's. */
    public String lineText() {
        return lineText;
    }

    /** What is wrong, without the place. */
    public String problem() {
        return problem;
    }

    private static String message(SourcePosition position, String lineText, String problem) {
        // Tabs stay tabs, so that the caret stands under its character however wide they are shown.
        String indent = lineText.substring(0, Math.min(position.column() - 1, lineText.length()))
                .replaceAll("[^\t]", " ");
        return position.file() + ", line " + position.line() + ", column " + position.column() + ": " + problem + "\n"
                + lineText + "\n" + indent + "^";
    }
}
