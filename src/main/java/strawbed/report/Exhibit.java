package strawbed.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A part of a chapter. All words are finished. */
public sealed interface Exhibit {
    /**
     * Figures below each other, each with what it means.
     *
     * @param legend what the signs beside them mean; may be blank
     */
    record Figures(List<FigureRow> rows, String legend) implements Exhibit {
        public Figures {
            rows = List.copyOf(rows);
            Objects.requireNonNull(legend);
        }
    }

    /**
     * One figure.
     *
     * @param value the figure itself, such as "90.2 %", or the counts where there are too few for a share
     * @param counts of how many, and what is not known
     * @param definition what is counted
     * @param benchmark what others found, with the source; may be blank
     */
    record FigureRow(
            String label, String value, String counts, String definition, String benchmark, Optional<Range> range) {
        public FigureRow {
            if (label.isBlank() || value.isBlank()) {
                throw new IllegalArgumentException("a figure needs a name and a value: \"" + label + "\"");
            }
            Objects.requireNonNull(counts);
            Objects.requireNonNull(definition);
            Objects.requireNonNull(benchmark);
            Objects.requireNonNull(range);
        }
    }

    /**
     * A picture.
     *
     * @param caption what is to be known of it: how many, of what
     */
    record Graph(String title, Chart chart, String caption) implements Exhibit {
        public Graph {
            Objects.requireNonNull(title);
            Objects.requireNonNull(chart);
            Objects.requireNonNull(caption);
        }
    }

    /**
     * Parts of a herd held against each other.
     *
     * @param columns the first of the parts' names, the second of their sizes, then one for each cell
     */
    record Comparison(String title, List<String> columns, List<ComparisonRow> rows) implements Exhibit {
        public Comparison {
            Objects.requireNonNull(title);
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
            for (ComparisonRow row : rows) {
                if (row.cells().size() + 2 != columns.size()) {
                    throw new IllegalArgumentException(
                            "\"" + row.name() + "\" has " + row.cells().size() + " cells, and there are "
                                    + (columns.size() - 2) + " columns for them");
                }
            }
        }
    }

    /** One part. */
    record ComparisonRow(String name, String size, List<Cell> cells) {
        public ComparisonRow {
            cells = List.copyOf(cells);
        }
    }

    /** A share of a part, in words and as a picture. */
    record Cell(String text, Optional<Range> range) {}

    /** Sentences. */
    record Lines(List<String> lines) implements Exhibit {
        public Lines {
            lines = List.copyOf(lines);
        }
    }
}
