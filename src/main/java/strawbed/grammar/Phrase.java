package strawbed.grammar;

import java.util.List;
import java.util.stream.Stream;

/**
 * Words that a part of a grammar allows.
 *
 * @param words in order, perhaps none
 * @param sense the rules and tags passed: phrases with the same sense may be mistaken for each other freely
 */
public record Phrase(List<String> words, List<String> sense) {
    static final Phrase EMPTY = new Phrase(List.of(), List.of());

    /** Keeps its own copies of the lists. */
    public Phrase {
        words = List.copyOf(words);
        sense = List.copyOf(sense);
    }

    Phrase and(Phrase more) {
        return new Phrase(joined(words, more.words), joined(sense, more.sense));
    }

    static <T> List<T> joined(List<T> one, List<T> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }
}
