package strawbed.grammar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.RuleExpansion.Alternative;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;
import strawbed.grammar.RuleExpansion.Tag;
import strawbed.grammar.RuleExpansion.Token;

/**
 * Reads the rules of a file (SRGS 1.0, sections 2 and 3 and appendix D).
 *
 * <p>A repeat and a language bind to the one thing before them, a sequence binds tighter than alternatives, and a weight
 * belongs to its whole alternative (section 2.8).
 */
final class RuleParser {

    /** Deeper brackets are a mistake of a program, and would exhaust the stack. */
    private static final int DEEPEST = 100;

    private static final double OPTIONAL = 0.5;

    private final Header header;
    private final SourceText source;
    private final Scanner scan;
    private final RepeatParser repeats;
    private final Function<String, Header> headers;
    private final References references;
    private String ruleName = "";
    private int depth;

    RuleParser(Header header, Function<String, Header> headers, References references) {
        this.header = header;
        this.source = header.source();
        this.scan = new Scanner(source, header.end());
        this.repeats = new RepeatParser(scan);
        this.headers = headers;
        this.references = references;
    }

    Collection<Rule> parse() {
        Map<RuleId, Rule> rules = new LinkedHashMap<>();
        scan.skipBlanks();
        while (!scan.atEnd()) {
            int start = scan.at();
            Rule rule = rule();
            Rule earlier = rules.putIfAbsent(rule.id(), rule);
            if (earlier != null) {
                throw scan.mistake(
                        start,
                        "the rule $" + ruleName + " is already defined in line "
                                + earlier.position().line() + ".");
            }
            scan.skipBlanks();
        }
        return rules.values();
    }

    private Rule rule() {
        Documentation documentation = scan.documentation();
        int start = scan.at();
        boolean isPublic = scan.takes("public");
        if (!isPublic) {
            scan.takes("private");
        }
        scan.skipBlanks();
        int nameAt = scan.at();
        if (scan.here() != '$') {
            throw scan.mistake(start, "a rule such as \"$yes = yes;\" must stand here.");
        }
        ruleName = scan.ruleName();
        if (special(ruleName) != null) {
            throw scan.mistake(nameAt, "$" + ruleName + " has its meaning already and cannot be defined.");
        }
        scan.skipBlanks();
        scan.require("=", "\"=\" must stand after $" + ruleName + ".");
        RuleExpansion expansion = alternatives();
        if (!scan.takes(";")) {
            throw unexpected();
        }
        return new Rule(
                new RuleId(source.file(), ruleName), isPublic, expansion, source.position(start), documentation);
    }

    private RuleExpansion alternatives() {
        List<Alternative> found = new ArrayList<>();
        boolean weighted = false;
        do {
            scan.skipBlanks();
            boolean hasWeight = scan.here() == '/';
            double weight = hasWeight ? repeats.weight() : 1;
            weighted |= hasWeight;
            found.add(new Alternative(weight, sequence()));
        } while (scan.takes("|"));
        return found.size() == 1 && !weighted ? found.get(0).expansion() : new Alternatives(found);
    }

    private RuleExpansion sequence() {
        List<RuleExpansion> parts = new ArrayList<>();
        scan.skipBlanks();
        while (!scan.atEnd() && "|;)]".indexOf(scan.here()) < 0) {
            parts.add(repeated());
            scan.skipBlanks();
        }
        if (parts.isEmpty()) {
            throw scan.atEnd()
                    ? unexpected()
                    : scan.mistake("something to say must stand here; write $NULL where nothing need be said.");
        }
        return parts.size() == 1 ? parts.get(0) : new Sequence(parts);
    }

    private RuleExpansion repeated() {
        int start = scan.at();
        RuleExpansion part = part();
        language();
        scan.skipBlanks();
        if (scan.here() != '<') {
            return part;
        }
        Repeat repeat = references.placed(repeats.repeat(part), source, start);
        scan.skipBlanks();
        if (scan.here() == '<') {
            throw scan.mistake("only one repeat may follow; put the first into ( ).");
        }
        return repeat;
    }

    private RuleExpansion part() {
        int start = scan.at();
        return switch (scan.here()) {
            case '(' -> group(")");
            case '[' -> references.placed(new Repeat(group("]"), 0, 1, OPTIONAL), source, start);
            case '{' -> tag();
            case '$' -> reference();
            case '"' -> quoted();
            default -> token();
        };
    }

    private RuleExpansion group(String close) {
        int start = scan.at();
        String open = String.valueOf(scan.here());
        scan.takes(open);
        scan.skipBlanks();
        if (close.equals(")") && scan.takes(close)) {
            return Special.NULL;
        }
        if (++depth > DEEPEST) {
            throw scan.mistake(start, "brackets inside brackets go deeper than " + DEEPEST + "; use more rules.");
        }
        RuleExpansion inner = alternatives();
        depth--;
        if (!scan.takes(close)) {
            throw scan.mistake(start, "this " + open + " is never closed with " + close + ".");
        }
        return inner;
    }

    private Tag tag() {
        int start = scan.at();
        if (!header.tagsAreLiterals()) {
            throw scan.mistake("tags of the format <" + header.tagFormat()
                    + "> are not supported; declare \"tag-format <" + Header.LITERALS + ">;\".");
        }
        String close = scan.takes("{!{") ? "}!}" : "}";
        scan.takes("{");
        return new Tag(scan.until(close, start, "this tag is never closed with " + close + ".")
                .strip());
    }

    private RuleExpansion reference() {
        int start = scan.at();
        if (scan.sees("$<")) {
            scan.takes("$");
            return fileReference(start);
        }
        String name = scan.ruleName();
        int afterName = scan.at();
        scan.skipBlanks();
        if (scan.here() == '=') {
            throw scan.mistake(start, "the rule $" + ruleName + " before $" + name + " does not end with a semicolon.");
        }
        Special special = special(name);
        if (special != null) {
            return special;
        }
        // A language must follow without a blank, so the blanks just skipped cannot hide one.
        if (afterName == scan.at()) {
            language();
        }
        return mention(start, new RuleId(source.file(), name), false);
    }

    private RuleExpansion fileReference(int start) {
        String address = scan.address();
        if (scan.sees("~")) {
            throw scan.mistake("a media type after ~ is not supported.");
        }
        int hash = address.indexOf('#');
        String file = hash < 0 ? address : address.substring(0, hash);
        String name = hash < 0 ? "" : address.substring(hash + 1);
        if (hash == 0) {
            return mention(start, new RuleId(source.file(), name), false);
        }
        String problem = FileNames.problem(file);
        if (!problem.isEmpty()) {
            throw scan.mistake(start, problem);
        }
        String resolved = FileNames.resolve(source.file(), file);
        Header other = header(start, resolved);
        if (hash >= 0) {
            return mention(start, new RuleId(resolved, name), false);
        }
        if (other.root() == null) {
            throw scan.mistake(start, resolved + " declares no root rule; name one: $<" + file + "#rule>.");
        }
        return mention(start, new RuleId(resolved, other.root()), true);
    }

    private Header header(int start, String file) {
        try {
            return headers.apply(file);
        } catch (GrammarException e) {
            // Inside the other file the place is known already; a missing file is a mistake of this reference.
            throw e.position().isPresent()
                    ? e
                    : source.mistake(start, "the file " + file + " cannot be used: " + e.problem(), e);
        }
    }

    private RuleReference mention(int start, RuleId rule, boolean byFile) {
        references.mention(source, start, rule, byFile);
        return references.placed(new RuleReference(rule), source, start);
    }

    private RuleExpansion quoted() {
        int start = scan.at();
        scan.takes("\"");
        String text = scan.until("\"", start, "this quote is never closed.").strip();
        if (text.isEmpty()) {
            throw scan.mistake(start, "there is no word between these quotes.");
        }
        List<RuleExpansion> words = new ArrayList<>();
        for (String word : text.split("\\s+", -1)) {
            words.add(new Token(lowerCase(word)));
        }
        return words.size() == 1 ? words.get(0) : new Sequence(words);
    }

    private Token token() {
        int start = scan.at();
        String word = scan.run(RuleParser::isTokenPart);
        if (word.isEmpty()) {
            throw unexpected();
        }
        return references.placed(new Token(lowerCase(word)), source, start);
    }

    /** Lower case twice: of a few letters the lower case has a lower case of its own. */
    private static String lowerCase(String word) {
        return word.toLowerCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    private static boolean isTokenPart(int c) {
        return !Character.isWhitespace(c) && !Character.isISOControl(c) && ";=|*+<>()[]{}/\\$!\"".indexOf(c) < 0;
    }

    private void language() {
        int start = scan.at();
        if (scan.takes("!")) {
            String code = scan.run(c -> c < 0x7F && (Character.isLetterOrDigit(c) || c == '-'));
            if (!code.equalsIgnoreCase(header.language())) {
                throw scan.mistake(
                        start, "only the language of the whole grammar, " + header.language() + ", is supported.");
            }
        }
    }

    private static @Nullable Special special(String name) {
        return switch (name) {
            case "NULL" -> Special.NULL;
            case "VOID" -> Special.VOID;
            case "GARBAGE" -> Special.GARBAGE;
            default -> null;
        };
    }

    private GrammarException unexpected() {
        if (scan.atEnd()) {
            return scan.mistake("the rule $" + ruleName + " does not end with a semicolon.");
        }
        char c = scan.here();
        return scan.mistake(
                switch (c) {
                    case ')', ']', '}' -> "there is nothing open that this " + c + " could close.";
                    case '*' -> "* is not supported; repeat with <0->.";
                    case '+' -> "+ is not supported; repeat with <1->.";
                    case '/' -> "a weight stands at the beginning of an alternative; put a word with / into quotes.";
                    case '<' -> "there is nothing before this repeat.";
                    default -> "\"" + c + "\" cannot stand here; put a word with it into quotes.";
                });
    }
}
