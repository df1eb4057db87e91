package strawbed.exchange;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * A table as CSV by RFC 4180 with a heading. A cell of which nothing is known stays empty. Numbers stand as they are,
 * with a point and no exponent; every text goes through {@link CellText}.
 */
final class Sheet {
    private static final Instant FIRST = Instant.parse("0000-01-02T00:00:00Z");
    private static final Instant LAST = Instant.parse("9999-12-30T00:00:00Z");

    private final List<String> columns;
    private final CSVPrinter printer;

    /** Writes the heading. */
    Sheet(List<String> columns, Appendable out) throws IOException {
        this.columns = columns;
        this.printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(columns);
    }

    Row row() {
        return new Row(columns);
    }

    void write(Row row) throws IOException {
        printer.printRecord(Arrays.asList(row.cells));
    }

    /** Date and time in a zone, to the second: the form that spreadsheets read. */
    static String local(Instant instant, ZoneId zone) {
        // A year of five digits has no form that they read, and at the ends of time a zone cannot be counted in.
        return instant.isBefore(FIRST) || instant.isAfter(LAST)
                ? instant.toString()
                : instant.truncatedTo(ChronoUnit.SECONDS)
                        .atZone(zone)
                        .toLocalDateTime()
                        .format(DateTimeFormatter.ISO_LOCAL_DATE_TIME);
    }

    /** One line of the table; each cell is put by the name of its column. */
    static final class Row {
        private final List<String> columns;
        private final @Nullable String[] cells;

        private Row(List<String> columns) {
            this.columns = columns;
            this.cells = new @Nullable String[columns.size()];
        }

        Row text(String column, @Nullable String text) {
            return put(column, text == null ? null : CellText.of(text));
        }

        Row number(String column, @Nullable BigDecimal number) {
            return put(column, number == null ? null : number.toPlainString());
        }

        Row number(String column, @Nullable Integer number) {
            return put(column, number == null ? null : number.toString());
        }

        Row number(String column, long number) {
            return put(column, Long.toString(number));
        }

        private Row put(String column, @Nullable String cell) {
            int place = columns.indexOf(column);
            if (place < 0) {
                throw new IllegalArgumentException("the table has no column " + column);
            }
            cells[place] = cell;
            return this;
        }
    }
}
