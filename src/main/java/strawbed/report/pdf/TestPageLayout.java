package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.TestPage;

/**
 * Places a printer's test page: a frame at the margin of every page of ours, one ruler down and one across that meet in
 * a corner, and between them the words, the lines and the letters.
 */
final class TestPageLayout {
    private static final double FRAME = Measures.THIN_LINE;
    /** From the edge to the line that both rulers start from. */
    private static final double RULER = Measures.MARGIN + 3;

    private static final double TICK = 0.15;
    private static final double TICK_LENGTH = 1.6;
    private static final double FIVE_LENGTH = 2.4;
    private static final double TEN_LENGTH = 3.4;
    private static final double NUMBER_GAP = 0.6;
    private static final double INSIDE = RULER + TEN_LENGTH + 9;
    /** Under the numbers of the ruler across. */
    private static final double WORDS = RULER + TEN_LENGTH + 5;

    private static final double TITLE = 3.6;
    private static final double GAP = 1.4;
    private static final double LABEL = 19;
    private static final double NAME = 16;
    private static final double SAMPLE_LINE = 30;
    private static final double LINE_STEP = 4.8;

    private final Type type;
    private final TestPage page;
    private final double width;
    private final double height;
    private final List<Drawn> drawn = new ArrayList<>();

    private TestPageLayout(Type type, TestPage page, double width, double height) {
        this.type = type;
        this.page = page;
        this.width = width;
        this.height = height;
    }

    /** Everything on the page, in the order of reading. */
    static List<Drawn> of(Type type, TestPage page, double width, double height) {
        return new TestPageLayout(type, page, width, height).lay();
    }

    private List<Drawn> lay() {
        words();
        frame();
        for (int mark = 0; mark <= page.bar(); mark++) {
            mark(mark);
        }
        bar(RULER, RULER, page.bar(), FRAME);
        bar(RULER, RULER, FRAME, page.bar());
        return List.copyOf(drawn);
    }

    private void frame() {
        double across = width - 2 * Measures.MARGIN;
        double down = height - 2 * Measures.MARGIN;
        bar(Measures.MARGIN, Measures.MARGIN, across, FRAME);
        bar(Measures.MARGIN, height - Measures.MARGIN - FRAME, across, FRAME);
        bar(Measures.MARGIN, Measures.MARGIN, FRAME, down);
        bar(width - Measures.MARGIN - FRAME, Measures.MARGIN, FRAME, down);
    }

    /** Both rulers' ticks begin at whole millimetres; the last one ends there, so that the bar is as long as it says. */
    private void mark(int millimetre) {
        double length = millimetre % 10 == 0 ? TEN_LENGTH : millimetre % 5 == 0 ? FIVE_LENGTH : TICK_LENGTH;
        double at = RULER + millimetre - (millimetre == page.bar() ? TICK : 0);
        bar(at, RULER, TICK, length);
        bar(RULER, at, length, TICK);
        if (millimetre % 10 == 0 && millimetre > 0) {
            Drawn.Words number = type.tight(String.valueOf(millimetre), Weight.REGULAR, Measures.NOTE_LEAST);
            drawn.add(number.moved(at - number.box().width() / 2, RULER + TEN_LENGTH + NUMBER_GAP)
                    .as(Role.DECORATION));
            drawn.add(number.moved(
                    RULER + TEN_LENGTH + NUMBER_GAP, at - number.box().height() / 2));
        }
    }

    private void words() {
        double y = WORDS;
        double room = width - INSIDE - Measures.MARGIN - GAP;
        Drawn.Words title = type.line(page.title(), Weight.BOLD, TITLE);
        drawn.add(title.moved(INSIDE, y).as(Role.TITLE));
        y += title.box().height() + GAP / 2;
        for (String line : page.howTo()) {
            Block block = Paragraph.ofLines(
                    type, List.of(new Run(line, Weight.REGULAR)), Measures.NOTE, room, Integer.MAX_VALUE);
            block.at(INSIDE, y).forEach(drawn::add);
            y += block.height() + GAP / 2;
        }
        y += GAP;
        lines(INSIDE, y);
        int rows = (page.lineWidths().size() + 1) / 2;
        letters(INSIDE, y + LINE_STEP * rows + GAP);
    }

    /** Two in a row, each as a line across and a short one down. */
    private void lines(double x, double top) {
        drawn.add(type.line(page.lines(), Weight.BOLD, Measures.NOTE)
                .moved(x, top)
                .as(Role.HEADING));
        double step = (width - INSIDE - Measures.MARGIN - LABEL) / 2;
        for (int i = 0; i < page.lineWidths().size(); i++) {
            TestPage.Sample sample = page.lineWidths().get(i);
            int row = i / 2;
            double left = x + LABEL + i % 2 * step;
            double y = top + LINE_STEP * row;
            Drawn.Words name = type.line(sample.name(), Weight.REGULAR, Measures.NOTE);
            drawn.add(name.moved(left, y));
            double middle = y + Measures.NOTE * Typeface.LINE / 2;
            double end = Math.min(SAMPLE_LINE, step - NAME - 3 * GAP);
            bar(left + NAME, middle, end, sample.millimetres());
            bar(left + NAME + end + GAP, middle - LINE_STEP / 3, sample.millimetres(), 2 * LINE_STEP / 3);
        }
    }

    private void letters(double x, double top) {
        drawn.add(type.line(page.letters(), Weight.BOLD, Measures.NOTE)
                .moved(x, top)
                .as(Role.HEADING));
        double y = top;
        for (TestPage.Sample sample : page.letterSizes()) {
            Drawn.Words name = type.line(sample.name(), Weight.REGULAR, Measures.NOTE);
            Drawn.Words words = type.line(page.sample(), Weight.REGULAR, sample.millimetres());
            double base = y + Math.max(name.ascent(), words.ascent());
            drawn.add(name.moved(x + LABEL, base - name.ascent()));
            drawn.add(words.moved(x + LABEL + NAME, base - words.ascent()));
            y = base + Math.max(name.box().height() - name.ascent(), words.box().height() - words.ascent());
        }
    }

    private void bar(double x, double y, double across, double down) {
        drawn.add(new Drawn.Bar(new Box(x, y, across, down)));
    }
}
