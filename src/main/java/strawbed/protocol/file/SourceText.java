package strawbed.protocol.file;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlPosition;

/**
 * The text of the file by line and column. Numbers with a point are read from here: TOML's own kind of number is binary
 * and cannot hold 0.09.
 */
final class SourceText {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?[0-9][0-9_]{0,20}+(?:\\.[0-9_]{1,40}+)?(?:[eE][+-]?[0-9_]{1,4}+)?(?![0-9_.eE])");
    private static final int SHOWN = 40;

    private final String[] lines;

    SourceText(String text) {
        this.lines = text.split("\n", -1);
    }

    /** The number that is written after the name at this place; empty if it is none, or far too long to be one. */
    Optional<BigDecimal> numberAfterName(TomlPosition name) {
        String rest = from(name);
        char quote = 0;
        for (int i = 0; i < rest.length(); i++) {
            char letter = rest.charAt(i);
            if (quote != 0) {
                i += letter == '\\' && quote == '"' ? 1 : 0;
                quote = letter == quote ? 0 : quote;
            } else if (letter == '"' || letter == '\'') {
                quote = letter;
            } else if (letter == '=') {
                return number(rest.substring(i + 1));
            }
        }
        return Optional.empty();
    }

    /** The number that is written at this place of a list, or after it: the parser points at what is before. */
    Optional<BigDecimal> numberInList(TomlPosition place) {
        String rest = from(place).stripLeading();
        for (int next = place.line(); (rest.isEmpty() || rest.startsWith("#")) && next < lines.length; next++) {
            rest = lines[next].stripLeading();
        }
        return number(rest);
    }

    private static Optional<BigDecimal> number(String text) {
        Matcher matcher = NUMBER.matcher(text.stripLeading());
        return matcher.lookingAt() ? Optional.of(new BigDecimal(matcher.group().replace("_", ""))) : Optional.empty();
    }

    /** The rest of the line from this place on. Columns count code points. */
    String from(TomlPosition place) {
        if (place.line() > lines.length) {
            return "";
        }
        String line = lines[place.line() - 1];
        int before = Math.min(place.column() - 1, line.codePointCount(0, line.length()));
        return line.substring(line.offsetByCodePoints(0, before)).stripTrailing();
    }

    /** The beginning of a text, for a sentence: short, and nothing in it that a screen would not show. */
    static String shown(String text) {
        String plain = text.codePoints()
                .limit(SHOWN)
                .map(letter -> Character.isISOControl(letter) ? ' ' : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return plain.length() < text.length() ? plain + "..." : plain;
    }
}
