package strawbed.grammar;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads what stands before the rules (SRGS 1.0, section 4 and appendix D). */
final class HeaderParser {

    private final SourceText source;
    private final Scanner scan;
    private final Set<String> declared = new HashSet<>();
    private final Map<String, String> meta = new HashMap<>();
    private @Nullable String language;
    private @Nullable String tagFormat;
    private @Nullable String root;
    private int rootAt;

    HeaderParser(SourceText source) {
        this.source = source;
        this.scan = new Scanner(source, 0);
    }

    Header parse() {
        selfIdentification();
        int end = scan.at();
        scan.skipBlanks();
        while (!scan.atEnd() && scan.here() != '$' && !scopeHere()) {
            declaration();
            end = scan.at();
            scan.skipBlanks();
        }
        if (language == null) {
            throw scan.mistake(0, "no language is declared. Add a line such as \"language en-US;\".");
        }
        return new Header(source, language, tagFormat, root, rootAt, meta, end);
    }

    private void selfIdentification() {
        if (scan.sees("<?xml") || scan.sees("<grammar")) {
            throw scan.mistake("this is the XML form of a grammar, which is not supported; use the ABNF form.");
        }
        scan.require("#ABNF", "a grammar begins with \"#ABNF 1.0;\".");
        blanks();
        int version = scan.at();
        if (!scan.run(c -> c == '.' || Character.isDigit(c)).equals("1.0")) {
            throw scan.mistake(version, "only version 1.0 is supported: \"#ABNF 1.0;\".");
        }
        blanks();
        // Any encoding may be named: the text has been decoded before it comes here.
        scan.run(c -> c > ' ' && c < 0x7F && c != ';');
        blanks();
        scan.require(";", "the first line must end with a semicolon: \"#ABNF 1.0;\".");
    }

    private void blanks() {
        scan.run(c -> c == ' ' || c == '\t');
    }

    private boolean scopeHere() {
        return word("public") || word("private");
    }

    private boolean word(String wanted) {
        return scan.sees(wanted)
                && new Scanner(source, scan.at()).run(HeaderParser::keyword).equals(wanted);
    }

    private static boolean keyword(int c) {
        return Character.isLetterOrDigit(c) || c == '-' || c == '_';
    }

    private void declaration() {
        int start = scan.at();
        if (scan.here() == '{') {
            throw scan.mistake("tags before the rules are not supported.");
        }
        String keyword = scan.run(HeaderParser::keyword);
        scan.skipBlanks();
        switch (keyword) {
            case "language" -> language = languageCode();
            case "mode" -> mode();
            case "root" -> {
                rootAt = scan.at();
                root = scan.ruleName();
            }
            case "tag-format" -> tagFormat = scan.address();
            case "meta" -> meta(meta);
            // What a web server would be told is checked and left.
            case "http-equiv" -> meta(new HashMap<>());
            case "base", "lexicon" -> throw scan.mistake(start, "\"" + keyword + "\" is not supported.");
            default -> throw scan.mistake(start, "a declaration or a rule such as \"$yes = yes;\" must stand here.");
        }
        if (!keyword.equals("meta") && !keyword.equals("http-equiv") && !declared.add(keyword)) {
            throw scan.mistake(start, "\"" + keyword + "\" is declared twice.");
        }
        scan.skipBlanks();
        scan.require(";", "the declaration of " + keyword + " must end with a semicolon.");
    }

    private String languageCode() {
        int start = scan.at();
        String code = scan.run(c -> c < 0x7F && (Character.isLetterOrDigit(c) || c == '-'));
        if (code.isEmpty()) {
            throw scan.mistake(start, "a language such as en-US must stand here.");
        }
        return code;
    }

    private void mode() {
        int start = scan.at();
        String mode = scan.run(HeaderParser::keyword);
        if (mode.equals("dtmf")) {
            throw scan.mistake(start, "the mode dtmf (touch tones) is not supported; use voice.");
        }
        if (!mode.equals("voice")) {
            throw scan.mistake(start, "the mode must be voice.");
        }
    }

    private void meta(Map<String, String> into) {
        String name = quoted();
        scan.skipBlanks();
        scan.require("is", "\"is\" must stand here: meta \"name\" is \"content\";");
        scan.skipBlanks();
        into.put(name, quoted());
    }

    private String quoted() {
        int start = scan.at();
        String quote = scan.sees("'") ? "'" : "\"";
        scan.require(quote, "a text in quotes must stand here.");
        return scan.until(quote, start, "this text has no closing quote.");
    }
}
