package strawbed.grammar;

import java.util.function.IntPredicate;

/** Goes through a grammar's text, over blanks and comments. */
final class Scanner {

    private final SourceText source;
    private final String text;
    private int at;
    private Documentation documentation = Documentation.NONE;

    Scanner(SourceText source, int at) {
        this.source = source;
        this.text = source.text();
        this.at = at;
    }

    int at() {
        return at;
    }

    /** The character here, or 0 at the end of the text. */
    char here() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    boolean sees(String wanted) {
        return text.startsWith(wanted, at);
    }

    /** Steps over the wanted text, if it stands here. */
    boolean takes(String wanted) {
        boolean there = sees(wanted);
        if (there) {
            at += wanted.length();
        }
        return there;
    }

    void require(String wanted, String problem) {
        if (!takes(wanted)) {
            throw mistake(problem);
        }
    }

    /** The longest run of such code points from here, perhaps empty. */
    String run(IntPredicate fits) {
        int start = at;
        while (at < text.length() && fits.test(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        return text.substring(start, at);
    }

    /** The text from here to the closing mark, which is stepped over; the mistake is blamed on the opening. */
    String until(String close, int openedAt, String problem) {
        int end = text.indexOf(close, at);
        if (end < 0) {
            throw source.mistake(openedAt, problem);
        }
        String content = text.substring(at, end);
        at = end + close.length();
        return content;
    }

    void skipBlanks() {
        documentation = Documentation.NONE;
        while (true) {
            run(Character::isWhitespace);
            int start = at;
            if (takes("//")) {
                run(c -> c != '\n' && c != '\r');
            } else if (takes("/*")) {
                String comment = until("*/", start, "this comment is never closed with */.");
                if (comment.startsWith("*")) {
                    int textAt = start + "/**".length();
                    documentation = Documentation.parse(source, textAt, comment.substring(1));
                }
            } else {
                return;
            }
        }
    }

    /** The last documentation comment among the blanks skipped just now. */
    Documentation documentation() {
        return documentation;
    }

    /** A rule's name after the dollar sign: an XML name without full stop, colon and hyphen (SRGS 1.0, section 3.1). */
    String ruleName() {
        int start = at;
        require("$", "a rule name beginning with $ must stand here.");
        String name = run(
                c -> Character.isLetterOrDigit(c) || c == '_' || Character.getType(c) == Character.NON_SPACING_MARK);
        if (name.isEmpty() || !(Character.isLetter(name.codePointAt(0)) || name.charAt(0) == '_')) {
            throw source.mistake(start, "a rule name is $ and a letter, then letters, digits and _.");
        }
        return name;
    }

    /** An address between angle brackets. */
    String address() {
        int start = at;
        require("<", "an address between < and > must stand here.");
        return until(">", start, "this < is never closed with >.").strip();
    }

    GrammarException mistake(String problem) {
        return source.mistake(at, problem);
    }

    GrammarException mistake(int place, String problem) {
        return source.mistake(place, problem);
    }
}
