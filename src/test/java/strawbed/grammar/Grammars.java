package strawbed.grammar;

import java.util.List;
import java.util.Map;

/** Short ways to grammars and word lists in tests. */
final class Grammars {

    static final String HEADER = "#ABNF 1.0 UTF-8;\nlanguage en-US;\n";

    private Grammars() {}

    /** A grammar of these rules; the rule {@code $s} is its root. */
    static Grammar of(String rules) {
        return read(Map.of("test.abnf", HEADER + "root $s;\n" + rules));
    }

    /** A grammar of several whole files; {@code test.abnf} is the main one. */
    static Grammar read(Map<String, String> files) {
        return GrammarReader.read(source(files), "test.abnf");
    }

    static GrammarSource source(Map<String, String> files) {
        return file -> {
            String text = files.get(file);
            if (text == null) {
                throw new GrammarException(file, "there is no such file here.");
            }
            return text;
        };
    }

    static List<String> words(String sentence) {
        return sentence.isBlank() ? List.of() : List.of(sentence.split(" ", -1));
    }

    static boolean accepts(Grammar grammar, String sentence) {
        return !new GrammarMatcher(grammar)
                .match(grammar.root(), words(sentence), 1)
                .isEmpty();
    }
}
