package strawbed.exchange;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which column of somebody's table holds which fact of a calf. */
public final class ColumnMap {
    /** What a table of calves can tell. */
    enum Field {
        NUMBER,
        DAM,
        BORN,
        SEX,
        BREED;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Map<Field, String> headings;

    private ColumnMap(Map<Field, String> headings) {
        this.headings = headings;
    }

    /**
     * From the words number, dam, born, sex and breed to the headings of the table's columns.
     *
     * @throws ExchangeException if a word is another one, or if there is neither a number nor a dam
     */
    public static ColumnMap of(Map<String, String> columns) {
        Map<Field, String> headings = new EnumMap<>(Field.class);
        columns.forEach((word, heading) -> headings.put(field(word), heading.strip()));
        if (!headings.containsKey(Field.NUMBER) && !headings.containsKey(Field.DAM)) {
            throw new ExchangeException(
                    "A calf needs its number or its dam: say which column that is, such as number=Ear or dam=Cow.",
                    null);
        }
        return new ColumnMap(headings);
    }

    /** The heading of a fact's column, where the table has one. */
    Optional<String> heading(Field field) {
        return Optional.ofNullable(headings.get(field));
    }

    private static Field field(String word) {
        return Arrays.stream(Field.values())
                .filter(field -> field.word().equals(word.strip()))
                .findFirst()
                .orElseThrow(() -> new ExchangeException(
                        "\"" + CellText.withoutControls(word) + "\" is nothing that can be imported of a calf. Use "
                                + Arrays.stream(Field.values()).map(Field::word).toList() + ".",
                        null));
    }
}
