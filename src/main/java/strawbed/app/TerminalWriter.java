package strawbed.app;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/**
 * Lets no control character through but the ends of lines, returns and tabs, so that a name or note out of a record or
 * a file cannot move the cursor, hide text or change the terminal.
 */
final class TerminalWriter extends FilterWriter {
    TerminalWriter(Writer out) {
        super(out);
    }

    @Override
    public void write(int character) throws IOException {
        if (isHarmless(character)) {
            out.write(character);
        }
    }

    @Override
    public void write(char[] characters, int from, int count) throws IOException {
        write(new String(characters, from, count), 0, count);
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        String part = text.substring(from, from + count);
        if (part.chars().allMatch(TerminalWriter::isHarmless)) {
            out.write(part);
            return;
        }
        StringBuilder harmless = new StringBuilder();
        part.chars().filter(TerminalWriter::isHarmless).forEach(character -> harmless.append((char) character));
        out.write(harmless.toString());
    }

    private static boolean isHarmless(int character) {
        return character == '\n' || character == '\r' || character == '\t' || !Character.isISOControl(character);
    }
}
