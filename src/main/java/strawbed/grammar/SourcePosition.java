package strawbed.grammar;

import java.util.Objects;

/**
 * A place in a grammar file.
 *
 * @param file the file as its source knows it
 * @param line the line, from 1
 * @param column the UTF-16 unit in the line, from 1
 */
public record SourcePosition(String file, int line, int column) {

    /** Refuses places that no text has. */
    public SourcePosition {
        Objects.requireNonNull(file, "file");
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("Lines and columns count from 1, not " + line + ":" + column + ".");
        }
    }
}
