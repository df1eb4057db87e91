package strawbed.entry;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** One of the buttons of a choice. */
public sealed interface Option {
    /** A word of one of the program's lists. */
    record Word(Enum<?> constant) implements Option {}

    /** A name of the farm's own, as it goes into the record. */
    record Name(String name) implements Option {}

    /** A small number. */
    record Count(int count) implements Option {}

    /** All words of a list. */
    static <T extends Enum<T>> List<Option> words(Class<T> list) {
        return Arrays.stream(list.getEnumConstants()).<Option>map(Word::new).toList();
    }

    /** All numbers from one to another. */
    static List<Option> counts(int first, int last) {
        return IntStream.rangeClosed(first, last).<Option>mapToObj(Count::new).toList();
    }

    /** These names. */
    static List<Option> names(List<String> names) {
        return names.stream().<Option>map(Name::new).toList();
    }
}
