package strawbed.protocol.file;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tomlj.TomlParseError;

/** Says in plain words what the TOML parser found. */
final class SyntaxFaults {
    private static final Pattern TWICE = Pattern.compile("(.+) previously defined at line (\\d+), column \\d+");

    private static final String EXPECTED = ", expected ";

    private SyntaxFaults() {}

    /** A name that stands twice: the rest of the file could be read all the same. */
    static Optional<FileFault> twice(TomlParseError error, SourceText source) {
        Matcher matcher = TWICE.matcher(message(error));
        if (!matcher.matches()) {
            return Optional.empty();
        }
        boolean isSection = source.from(error.position()).startsWith("[");
        String name = SourceText.shown(matcher.group(1));
        return Optional.of(new FileFault(
                error.position().line(),
                (isSection ? "[" + name + "]" : name) + " stands twice, first in line " + matcher.group(2)
                        + ". Keep one of the two."));
    }

    /** Text that is no TOML. */
    static FileFault unreadable(TomlParseError error, SourceText source) {
        String rest = source.from(error.position());
        String what = rest.isEmpty()
                ? "the line ends too early."
                : "this cannot be read: " + SourceText.shown(rest) + (rest.endsWith(".") ? "" : ".");
        return new FileFault(error.position().line(), what + " " + remedy(message(error), rest));
    }

    private static String remedy(String message, String rest) {
        int at = message.lastIndexOf(EXPECTED);
        String expected = at < 0 ? "" : message.substring(at + EXPECTED.length());
        if (rest.matches("(?i)(yes|no|true|false)\\b.*")) {
            return "Put yes and no in quotation marks: \"yes\".";
        }
        if (expected.contains("a number")) {
            return rest.startsWith(".")
                    ? "A number has a digit before its point, as in 0.5."
                    : "A value is a number, a text in quotation marks, or a list in square brackets.";
        }
        if (expected.endsWith("newline or end-of-input")) {
            return rest.matches("[,.0-9].*")
                    ? "A number is written with a point, no comma, and no zero in front, as in 0.5."
                    : "One line has one setting; begin a new line, or put # before a remark.";
        }
        if (expected.endsWith("=")) {
            return "Between a name and its value stands =, and before a remark #.";
        }
        if (expected.startsWith("]")) {
            return "A closing ] is missing.";
        }
        if (expected.matches("['\"].*")) {
            return "A closing quotation mark is missing.";
        }
        if (message.contains("too large") || message.contains("too small")) {
            return "Nobody measures such a number.";
        }
        return "Write a section as [navel] and a setting as name = value; put # before a remark.";
    }

    private static String message(TomlParseError error) {
        return String.valueOf(error.getMessage());
    }
}
