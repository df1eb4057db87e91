package strawbed.crib;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import strawbed.grammar.Documentation;
import strawbed.grammar.Rule;
import strawbed.grammar.SourcePosition;

/**
 * A sentence that stands beside a rule.
 *
 * @param isChoice whether it is one of the words to choose from, which are shown in one line
 */
record Example(Rule rule, List<String> words, SourcePosition position, boolean isChoice) {
    private static final String TAG = "example";

    Example {
        words = List.copyOf(words);
    }

    /** All of a rule: first the words to choose from, then the examples as they are written. */
    static List<Example> of(Rule rule) {
        Stream<Example> choices =
                Choices.of(rule).stream().map(words -> new Example(rule, words, rule.position(), true));
        Stream<Example> written = rule.documentation().tags(TAG).stream()
                .map(tag -> new Example(rule, words(tag), tag.position(), false));
        return Stream.concat(choices, written).toList();
    }

    private static List<String> words(Documentation.Tag tag) {
        return Arrays.asList(tag.text().toLowerCase(Locale.ROOT).split(" "));
    }

    String text() {
        return String.join(" ", words);
    }
}
