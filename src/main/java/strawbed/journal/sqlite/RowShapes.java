package strawbed.journal.sqlite;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import strawbed.event.RecordedEvent;

/** What the values of a row must look like, and what they then mean. */
final class RowShapes {
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    /** Columns of a fact that this program can keep; what a row has behind them must be empty, or it would be lost. */
    private static final int KEPT = 16;

    private RowShapes() {}

    /**
     * A fact's row.
     *
     * @throws IllegalArgumentException if a value is not as it is written; the message is a clause
     */
    static EventRow event(StoredRow row) {
        for (int i = KEPT; i < row.values().size(); i++) {
            if (row.values().get(i) != null) {
                throw new IllegalArgumentException("it has the column "
                        + row.kind().column(i) + ", which a newer Strawbed writes; rescue with that");
            }
        }
        return new EventRow(
                row.present(1),
                row.present(2),
                row.present(3),
                row.present(4),
                row.text(5),
                row.present(6),
                version(row.values().get(7)),
                row.present(8),
                row.present(9),
                row.text(10),
                row.text(11),
                row.text(12),
                row.text(13),
                row.text(14),
                row.text(15));
    }

    private static int version(@Nullable Object value) {
        if (value instanceof Long number && number == number.intValue()) {
            return number.intValue();
        }
        throw new IllegalArgumentException("its version is " + value);
    }

    /**
     * What of a row without a proof must be as the program writes it, and not only as it can be read.
     *
     * @throws IllegalArgumentException if something is not
     */
    static void requireExact(EventRow row, RecordedEvent read) {
        requireSame("id", row.id(), read.id().toString());
        requireSame("recorded_at", row.recordedAt(), read.recordedAt().toString());
        requireSame("occurred_at", row.occurredAt(), read.occurredAt().toString());
        requireSame("calf", row.calf(), read.calf() == null ? null : read.calf().toString());
    }

    private static void requireSame(String column, @Nullable String written, @Nullable String read) {
        if (written != null && !written.equals(read)) {
            throw new IllegalArgumentException("its " + column + " is not as it is written");
        }
    }

    /** A row whose short fields are as the program writes them: nothing else is, by chance. */
    static boolean isWellFormed(StoredRow row) {
        try {
            return switch (row.kind()) {
                case EVENT, STATEMENT ->
                    is(row.present(1), UUID::fromString)
                            && is(row.present(2), Instant::parse)
                            && is(row.present(3), Instant::parse);
                case LINK ->
                    is(row.present(1), UUID::fromString)
                            && HASH.matcher(row.present(3)).matches()
                            && (row.text(2) == null
                                    || HASH.matcher(row.present(2)).matches());
                case STATION -> is(row.present(1), UUID::fromString);
                case SETTLED -> is(row.present(0), UUID::fromString) && is(row.present(1), Instant::parse);
            };
        } catch (IllegalArgumentException e) {
            // A value that is no text is the answer here, and is told where the row is listed.
            return false;
        }
    }

    private static boolean is(String text, Function<String, Object> reader) {
        try {
            return reader.apply(text).toString().equals(text);
        } catch (DateTimeException | IllegalArgumentException e) {
            // What does not read is no such text; that is the answer.
            return false;
        }
    }
}
