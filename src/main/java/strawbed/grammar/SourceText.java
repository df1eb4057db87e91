package strawbed.grammar;

import org.jspecify.annotations.Nullable;

/** The text of one grammar file, able to say where in it something is wrong. */
record SourceText(String file, String text) {

    SourceText {
        // A byte order mark is no part of the grammar.
        text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    SourcePosition position(int offset) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < offset; i++) {
            if (endsLine(i)) {
                line++;
                lineStart = i + 1;
            }
        }
        return new SourcePosition(file, line, offset - lineStart + 1);
    }

    GrammarException mistake(int offset, String problem) {
        return mistake(offset, problem, null);
    }

    GrammarException mistake(int offset, String problem, @Nullable Throwable cause) {
        SourcePosition position = position(offset);
        int start = offset - (position.column() - 1);
        int end = start;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return new GrammarException(position, text.substring(start, end), problem, cause);
    }

    /** Lines end as on any system: line feed, carriage return, or both. */
    private boolean endsLine(int offset) {
        char c = text.charAt(offset);
        boolean halfOfBoth = c == '\r' && offset + 1 < text.length() && text.charAt(offset + 1) == '\n';
        return c == '\n' || (c == '\r' && !halfOfBoth);
    }
}
