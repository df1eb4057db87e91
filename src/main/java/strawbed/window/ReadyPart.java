package strawbed.window;

import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.Stream;
import strawbed.station.Body;
import strawbed.station.DueRow;

/** What came of the last statement, for two metres, and below it what is due. */
final class ReadyPart extends Part {
    private static final long serialVersionUID = 1;

    /** One row of what is due, with air around it. */
    private static final double ROW = 13;

    /** Where the word for two metres ends, and one line below it. */
    private static final double BELOW_WORD = 25;

    private static final double LINE = 9;

    private static final double CALF_SHARE = 0.17;
    private static final double WHAT_SHARE = 0.42;

    private final transient Body.Ready ready;

    ReadyPart(Body.Ready ready, Paint paint) {
        super(paint, spoken(ready));
        this.ready = ready;
    }

    private static String spoken(Body.Ready ready) {
        StringBuilder spoken = new StringBuilder(ready.number() + " " + ready.word() + ". " + ready.text());
        ready.due()
                .forEach(row -> spoken.append(" ")
                        .append(row.calf())
                        .append(", ")
                        .append(row.what())
                        .append(", ")
                        .append(row.when())
                        .append("."));
        return spoken.toString().strip();
    }

    private double headHeight() {
        return paint.px(paint.isUpright() ? 58 : 24.5);
    }

    /** How many rows have room. */
    int rows() {
        Room room = room();
        double end = Math.max(headHeight(), ready.text().isEmpty() ? 0 : room.top() + room.height());
        return Math.max(0, Math.min(ready.due().size(), (int) ((getHeight() - end) / paint.px(ROW))));
    }

    @Override
    List<Double> farCapitals() {
        return ready.number().isEmpty()
                ? List.of(word().capitals())
                : List.of(word().capitals(), number().text().capitals());
    }

    @Override
    boolean fits() {
        return number().isEmptyOrFits() && word().fits() && in(room()).fits();
    }

    private record Head(Fitted text, boolean isEmpty) {
        boolean isEmptyOrFits() {
            return isEmpty || text.fits();
        }
    }

    private Head number() {
        return new Head(
                paint.bold(
                        ready.number(),
                        getWidth() * 0.34,
                        headHeight(),
                        paint.isUpright() ? 24 : 23,
                        Measures.FAR_CAPITALS),
                ready.number().isEmpty());
    }

    private double wordLeft() {
        return ready.number().isEmpty()
                ? 0
                : Typeface.width(number().text().lines().get(0), number().text().font()) + paint.px(Measures.GAP);
    }

    private Fitted word() {
        return paint.bold(
                ready.word(), getWidth() - wordLeft(), paint.px(25), Measures.FAR_CAPITALS, Measures.NEAR_CAPITALS);
    }

    private double textLeft() {
        return paint.isUpright()
                ? 0
                : wordLeft()
                        + (ready.word().isEmpty()
                                ? 0
                                : Typeface.width(word().lines().get(0), word().font()) + paint.px(Measures.GAP));
    }

    private double textTop() {
        return paint.px(paint.isUpright() ? 29 : 2);
    }

    /** Where a text goes, in dots, and how small its capitals may become, in units. */
    private record Room(double left, double top, double width, double height, double least) {}

    private Fitted in(Room room) {
        return paint.regular(ready.text(), room.width(), room.height(), Measures.NEAR_CAPITALS, room.least());
    }

    /**
     * The first room that the text fits: beside the word; in one line below it; else, as a caution may need, all of what
     * is due.
     */
    private Room room() {
        double below = paint.px(BELOW_WORD);
        Room beside = new Room(
                textLeft(),
                textTop(),
                getWidth() - textLeft(),
                headHeight() - textTop() - paint.px(2),
                Measures.LEAST_CAPITALS);
        Room line = new Room(0, below, getWidth(), paint.px(LINE), Measures.LEAST_CAPITALS);
        Room all = new Room(0, below, getWidth(), getHeight() - below, Measures.DETAIL_CAPITALS * 0.95);
        return Stream.of(beside, line)
                .filter(room -> in(room).fits())
                .findFirst()
                .orElse(all);
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().ink());
        double top = paint.px(1);
        if (!ready.number().isEmpty()) {
            Brush.write(g, number().text(), 0, top);
        }
        Brush.write(g, word(), wordLeft(), top);
        if (!ready.text().isEmpty()) {
            Room room = room();
            Brush.write(g, in(room), room.left(), room.top());
        }
        List<DueRow> rows = ready.due().subList(0, rows());
        double y = getHeight() - rows.size() * (double) paint.px(ROW);
        for (DueRow row : rows) {
            draw(g, row, y);
            y += paint.px(ROW);
        }
    }

    private void draw(Graphics2D g, DueRow row, double y) {
        double height = paint.px(ROW);
        g.setColor(paint.colours().line());
        g.fillRect(0, (int) y, getWidth(), Math.max(1, paint.px(0.3)));
        double inset = paint.px(1);
        if (row.pressing()) {
            Palette.Pair pair = paint.colours().pressing();
            g.setColor(pair.on());
            g.fillRect(0, (int) (y + inset), getWidth(), (int) (height - inset));
            g.setColor(pair.ink());
        } else {
            g.setColor(paint.colours().ink());
        }
        double width = getWidth() - 2.0 * paint.px(Measures.EDGE);
        double x = paint.px(Measures.EDGE);
        cell(
                g,
                paint.bold(
                        row.calf(),
                        width * CALF_SHARE - inset,
                        height,
                        Measures.NEAR_CAPITALS,
                        Measures.LEAST_CAPITALS * 0.7),
                x,
                y,
                height);
        cell(
                g,
                paint.regular(
                        row.what(),
                        width * WHAT_SHARE - inset,
                        height,
                        Measures.NEAR_CAPITALS,
                        Measures.LEAST_CAPITALS * 0.7),
                x + width * CALF_SHARE,
                y,
                height);
        double left = width * (CALF_SHARE + WHAT_SHARE);
        Fitted when = row.pressing()
                ? paint.bold(row.when(), width - left, height, Measures.NEAR_CAPITALS, Measures.LEAST_CAPITALS * 0.7)
                : paint.regular(
                        row.when(), width - left, height, Measures.NEAR_CAPITALS, Measures.LEAST_CAPITALS * 0.7);
        cell(g, when, x + left, y, height);
    }

    private static void cell(Graphics2D g, Fitted text, double x, double y, double height) {
        Brush.write(g, text, x, y + (height - text.height()) / 2 + text.capitals() * Typeface.BELOW / 2);
    }
}
