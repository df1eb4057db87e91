package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * Reads grammars in the ABNF form of SRGS 1.0 (W3C Recommendation, 16 March 2004) with literal tags of SISR 1.0.
 *
 * <p>What the reader does not support it names and refuses: other tag formats, touch-tone grammars, base addresses,
 * lexicons, header tags, media types, second languages and the XML form.
 */
public final class GrammarReader {

    private final GrammarSource source;
    private final Map<String, Header> headers = new HashMap<>();

    private GrammarReader(GrammarSource source) {
        this.source = source;
    }

    /**
     * Reads a file and all files it refers to.
     *
     * @throws GrammarException when one of them cannot be read; it names the place
     */
    public static Grammar read(GrammarSource source, String mainFile) {
        return new GrammarReader(source).read(FileNames.check(mainFile));
    }

    private Grammar read(String mainFile) {
        Map<RuleId, Rule> rules = new LinkedHashMap<>();
        References references = new References();
        Set<String> seen = new HashSet<>(Set.of(mainFile));
        Deque<String> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            Header header = header(open.remove());
            new RuleParser(header, this::header, references).parse().forEach(rule -> rules.put(rule.id(), rule));
            references.files().stream().filter(seen::add).forEach(open::add);
        }
        Grammar grammar = new Grammar(header(mainFile), rules);
        references.checkAll(rules);
        headers.values().forEach(header -> header.checkRoot(rules));
        new GrammarCheck(grammar, references).run();
        return grammar;
    }

    private Header header(String file) {
        Header known = headers.get(file);
        if (known == null) {
            known = new HeaderParser(new SourceText(file, source.text(file))).parse();
            headers.put(file, known);
        }
        return known;
    }
}
