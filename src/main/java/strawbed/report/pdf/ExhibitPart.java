package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.report.Exhibit;
import strawbed.report.Exhibit.Cell;
import strawbed.report.Exhibit.Comparison;
import strawbed.report.Exhibit.ComparisonRow;
import strawbed.report.Exhibit.FigureRow;
import strawbed.report.Exhibit.Graph;
import strawbed.report.Range;

/** Lays the parts of a chapter out in strips over the whole width, none of which is torn by the end of a page. */
final class ExhibitPart {
    private static final double VALUE_END = 84;
    private static final double RANGE_START = 92;
    /** Half of the number at a line's end. */
    private static final double RANGE_END = 3.4;

    private static final double ROW_GAP = 2.4;
    private static final double LABEL_GAP = 0.6;
    private static final double NAME_WIDTH = 40;
    private static final double SIZE_END = 50;
    private static final double CELL_GAP = 5;
    private static final double CELL_WORDS = 15;
    private static final double CELL_HEIGHT = 5.4;
    private static final double LEGEND_GAP = 1.5;
    private static final double CAPTION_GAP = 1;

    private final Type type;
    private final double width;
    private final RangePart range;

    ExhibitPart(Type type, double width) {
        this.type = type;
        this.width = width;
        this.range = new RangePart(type, width - RANGE_START - RANGE_END);
    }

    /** All of a chapter; two pictures that follow each other stand side by side. */
    List<Block> strips(List<Exhibit> exhibits) {
        List<Block> strips = new ArrayList<>();
        for (int i = 0; i < exhibits.size(); i++) {
            Exhibit exhibit = exhibits.get(i);
            if (exhibit instanceof Graph graph) {
                boolean isPair = i + 1 < exhibits.size() && exhibits.get(i + 1) instanceof Graph;
                strips.add(pair(graph, isPair ? Optional.of((Graph) exhibits.get(i + 1)) : Optional.empty()));
                i += isPair ? 1 : 0;
            } else if (exhibit instanceof Exhibit.Figures figures) {
                strips.addAll(figures(figures));
            } else if (exhibit instanceof Comparison comparison) {
                strips.add(comparison(comparison));
            } else if (exhibit instanceof Exhibit.Lines lines) {
                lines.lines().forEach(line -> strips.add(text(line)));
            }
        }
        return strips;
    }

    private List<Block> figures(Exhibit.Figures figures) {
        List<Block> strips = new ArrayList<>();
        if (!figures.legend().isBlank()) {
            strips.add(text(figures.legend()));
        }
        boolean isFirst = true;
        for (FigureRow row : figures.rows()) {
            strips.add(row(row, isFirst));
            isFirst = false;
        }
        return strips;
    }

    private Block row(FigureRow row, boolean hasNumbers) {
        Sketch sketch = new Sketch(type);
        double y = 0;
        if (hasNumbers && row.range().isPresent()) {
            sketch.block(range.numbers().as(Role.DECORATION), RANGE_START, 0);
            y = ChartMeasures.NOTE * Typeface.LINE;
        }
        double valueWidth = sketch.width(row.value(), Weight.BOLD, ChartMeasures.LABEL);
        sketch.wordsWithin(
                row.label(), Weight.BOLD, ChartMeasures.LABEL, 0, y, VALUE_END - valueWidth - SheetMeasures.COLUMN_GAP);
        sketch.words(row.value(), Weight.BOLD, ChartMeasures.LABEL, VALUE_END, y, Sketch.Side.RIGHT);
        if (row.range().isPresent()) {
            Range shown = row.range().get();
            sketch.block(
                    range.lay(shown),
                    RANGE_START,
                    y + ChartMeasures.LABEL * (Typeface.ABOVE - 0.5) - RangePart.HEIGHT / 2);
        }
        y += ChartMeasures.LABEL * Typeface.LINE + LABEL_GAP;
        Block notes = Paragraph.ofLines(
                type,
                List.of(
                        new Run(row.counts(), Weight.BOLD),
                        new Run(row.definition(), Weight.REGULAR),
                        new Run(row.benchmark(), Weight.REGULAR)),
                ChartMeasures.NOTE,
                width,
                Integer.MAX_VALUE);
        sketch.block(notes, 0, y);
        return sketch.block(y + notes.height() + ROW_GAP);
    }

    private Block pair(Graph left, Optional<Graph> right) {
        double column = (width - ChartMeasures.COLUMN_GAP) / 2;
        Sketch sketch = new Sketch(type);
        Block one = graph(left, column);
        sketch.block(one, 0, 0);
        double height = one.height();
        if (right.isPresent()) {
            Block other = graph(right.get(), column);
            sketch.block(other, column + ChartMeasures.COLUMN_GAP, 0);
            height = Math.max(height, other.height());
        }
        return sketch.block(height + SheetMeasures.SECTION_GAP);
    }

    private Block graph(Graph graph, double column) {
        Sketch sketch = new Sketch(type);
        sketch.wordsWithin(graph.title(), Weight.BOLD, ChartMeasures.LABEL, 0, 0, column);
        double y = ChartMeasures.LABEL * Typeface.LINE + CAPTION_GAP;
        Block picture = ChartPart.lay(type, graph.chart(), column)
                .as(Role.figure(graph.chart().inWords()));
        sketch.block(picture, 0, y);
        y += picture.height() + CAPTION_GAP;
        Block caption = note(graph.caption(), column);
        sketch.block(caption, 0, y);
        return sketch.block(y + caption.height());
    }

    private Block comparison(Comparison comparison) {
        Sketch sketch = new Sketch(type);
        int cells = comparison.columns().size() - 2;
        double column = (width - SIZE_END - cells * CELL_GAP) / cells;
        sketch.wordsWithin(comparison.title(), Weight.BOLD, ChartMeasures.LABEL, 0, 0, width);
        double y = ChartMeasures.LABEL * Typeface.LINE + LABEL_GAP;
        sketch.words(comparison.columns().get(1), Weight.REGULAR, ChartMeasures.NOTE, SIZE_END, y, Sketch.Side.RIGHT);
        for (int i = 0; i < cells; i++) {
            sketch.wordsWithin(
                    comparison.columns().get(i + 2),
                    Weight.REGULAR,
                    ChartMeasures.NOTE,
                    SIZE_END + CELL_GAP + i * (column + CELL_GAP),
                    y,
                    column);
        }
        y += CELL_HEIGHT;
        for (ComparisonRow row : comparison.rows()) {
            sketch.wordsWithin(row.name(), Weight.REGULAR, ChartMeasures.NOTE, 0, y, NAME_WIDTH);
            sketch.words(row.size(), Weight.REGULAR, ChartMeasures.NOTE, SIZE_END, y, Sketch.Side.RIGHT);
            for (int i = 0; i < cells; i++) {
                cell(row.cells().get(i), SIZE_END + CELL_GAP + i * (column + CELL_GAP), y, column, sketch);
            }
            y += CELL_HEIGHT;
        }
        return sketch.block(y + SheetMeasures.SECTION_GAP);
    }

    private void cell(Cell cell, double x, double y, double column, Sketch sketch) {
        sketch.words(cell.text(), Weight.REGULAR, ChartMeasures.NOTE, x + CELL_WORDS, y, Sketch.Side.RIGHT);
        if (cell.range().isPresent()) {
            double from = x + CELL_WORDS + ChartMeasures.DOT;
            Block drawn = new RangePart(type, column - CELL_WORDS - 2 * ChartMeasures.DOT)
                    .lay(cell.range().get());
            sketch.block(drawn, from, y + ChartMeasures.NOTE * (Typeface.ABOVE - 0.5) - RangePart.HEIGHT / 2);
        }
    }

    private Block text(String line) {
        Block words = note(line, width);
        return new Block(words.height() + LEGEND_GAP, words.drawn());
    }

    private Block note(String words, double room) {
        return Paragraph.ofLines(
                type, List.of(new Run(words, Weight.REGULAR)), ChartMeasures.NOTE, room, Integer.MAX_VALUE);
    }
}
