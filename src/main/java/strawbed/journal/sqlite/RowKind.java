package strawbed.journal.sqlite;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The tables of the record, known by the number and the types of their columns and not by what the file says of its
 * tables, as that may be lost.
 */
enum RowKind {
    /** A row has as many values as the table had columns when it was written. */
    EVENT(
            "fact",
            "#,id,recorded_at,occurred_at,zone,calf?,type,version#,json,source,words?,verdict?,grammar?,model?,sound?",
            "operator?"),
    LINK("link of the chain", "#,station,previous?,hash", ""),
    STATION("station", "#,id", ""),
    STATEMENT("statement", "#,id,recorded_at,began_at,length,verdict,words,reading?,sound", ""),
    SETTLED("end of a statement", "statement,settled_at,how", "");

    private final String word;

    @SuppressWarnings("ImmutableEnumChecker") // List.of makes one that never changes
    private final List<String> columns;

    /** How many of the columns every row has. */
    private final int least;

    /**
     * @param columns texts by their names; with ? what may be empty; with # a number; # alone is the row's own number,
     *     which the format keeps before the row and leaves empty in it
     * @param later columns that older rows do not have
     */
    RowKind(String word, String columns, String later) {
        this.word = word;
        this.least = columns.split(",").length;
        this.columns = List.of((later.isEmpty() ? columns : columns + "," + later).split(","));
    }

    /** What a row of it is called. */
    String word() {
        return word;
    }

    String column(int index) {
        String column = columns.get(index);
        return column.equals("#") ? "sequence" : column.replaceAll("[?#]", "");
    }

    /** The kind whose columns have these serial types. */
    static Optional<RowKind> of(List<Long> types) {
        return Arrays.stream(values()).filter(kind -> kind.fits(types)).findFirst();
    }

    private boolean fits(List<Long> types) {
        if (types.size() < least || types.size() > columns.size()) {
            return false;
        }
        for (int i = 0; i < types.size(); i++) {
            if (!fits(columns.get(i), types.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(String column, long type) {
        if (column.equals("#")) {
            return type == SerialType.NULL;
        }
        if (column.endsWith("#")) {
            return SerialType.isWhole(type);
        }
        return SerialType.isText(type) || (column.endsWith("?") && type == SerialType.NULL);
    }
}
