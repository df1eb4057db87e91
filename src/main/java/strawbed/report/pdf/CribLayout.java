package strawbed.report.pdf;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strawbed.report.CribSheet;

/**
 * Places the sheet of what can be said: a heading, then the groups in columns, read down and then to the right.
 *
 * <p>The letters are as large as one page allows. ISO 9241-3 as quoted in ergonomics guides: 20 arc-minutes are
 * comfortable, 16 the least; at 0.7 m, where somebody stands who reads a line, that is 4.07 and 3.26 mm. The titles of
 * the groups are found from twice as far. Where even the least size needs more room, there is a second page.
 */
final class CribLayout {
    private static final double MARGIN = 8;
    private static final double TITLE = 8.5;
    private static final double TITLE_SHARE = 0.62;
    private static final double HOW_TO = 3.3;
    private static final double FOOT = Measures.NOTE;
    private static final double HEAD_GAP = 3;
    private static final double FOOT_GAP = 3;
    private static final double HEAD_RULE = 1.2;

    /** Capitals of the lines, in tenths of a millimetre. */
    private static final int LINE_MOST = 48;

    private static final int LINE_LEAST = 33;

    /** Capitals of a group's title, to those of its lines. */
    private static final double GROUP_TITLE = 1.3;

    private static final double GROUP_TITLE_GAP = 0.25;
    private static final double COLUMN_GAP = 5;
    private static final double LINE_GAP = 0.2;
    private static final double INDENT = 1.2;
    private static final int GROUP_GAP_LEAST = 4;
    private static final int GROUP_GAP_MOST = 12;

    /** The most lines of one example; a longer one ends in "…". */
    private static final int MOST_LINES = 8;

    private static final int MOST_TITLE_LINES = 2;
    private static final List<Integer> COLUMNS = List.of(2, 3);

    private final Type type;
    private final CribSheet sheet;
    private final double width;
    private final double height;

    private CribLayout(Type type, CribSheet sheet, SheetPaper paper) {
        this.type = type;
        this.sheet = sheet;
        width = paper.width() - 2 * MARGIN;
        height = paper.height() - 2 * MARGIN;
    }

    /** What is on each page, in the order of reading. */
    static List<List<Drawn>> of(Type type, CribSheet sheet, SheetPaper paper) {
        return new CribLayout(type, sheet, paper).lay();
    }

    private List<List<Drawn>> lay() {
        Block head = head();
        double room = height - head.height() - FOOT_GAP - FOOT * Typeface.LINE;
        for (int tenths = LINE_MOST; tenths >= LINE_LEAST; tenths--) {
            for (int columns : COLUMNS) {
                List<Block> groups = groups(tenths / 10.0, columns, room);
                if (Columns.fill(groups, room, GROUP_GAP_LEAST).size() <= columns) {
                    return List.of(page(head, airy(groups, columns, room), columns, 1, 1));
                }
            }
        }
        return pages(head, room);
    }

    /** As much white between the groups as the page has, the columns as even as they can be. */
    private static List<Block> airy(List<Block> groups, int columns, double room) {
        int gap = GROUP_GAP_LEAST;
        while (gap < GROUP_GAP_MOST && Columns.fill(groups, room, gap + 1).size() <= columns) {
            gap++;
        }
        return Columns.even(groups, columns, room, gap);
    }

    private List<List<Drawn>> pages(Block head, double room) {
        int columns = COLUMNS.get(COLUMNS.size() - 1);
        List<Block> all = Columns.fill(groups(LINE_LEAST / 10.0, columns, room), room, GROUP_GAP_LEAST);
        int pages = (all.size() + columns - 1) / columns;
        List<List<Drawn>> drawn = new ArrayList<>();
        for (int page = 0; page < pages; page++) {
            List<Block> own = all.subList(page * columns, Math.min(all.size(), (page + 1) * columns));
            drawn.add(page(head, own, columns, page + 1, pages));
        }
        return drawn;
    }

    private List<Drawn> page(Block head, List<Block> filled, int columns, int number, int pages) {
        List<Drawn> drawn = new ArrayList<>(head.drawn());
        double step = columnWidth(columns) + COLUMN_GAP;
        for (int column = 0; column < filled.size(); column++) {
            filled.get(column).at(column * step, head.height()).forEach(drawn::add);
        }
        foot(number, pages).at(0, height - FOOT * Typeface.LINE).forEach(drawn::add);
        return drawn.stream().map(thing -> thing.moved(MARGIN, MARGIN)).toList();
    }

    private double columnWidth(int columns) {
        return (width - (columns - 1) * COLUMN_GAP) / columns;
    }

    /** The title on the left, how to read the sheet beside it, both standing on the rule below. */
    private Block head() {
        String words = type.bold().printable(sheet.title());
        double titleRoom = width * TITLE_SHARE - COLUMN_GAP;
        Drawn title = type.tight(type.shortened(words, Weight.BOLD, TITLE, titleRoom), Weight.BOLD, TITLE);
        List<Drawn> howTo = new ArrayList<>();
        double y = 0;
        for (String line : sheet.howTo()) {
            double room = width * (1 - TITLE_SHARE);
            Block block = Paragraph.ofLines(type, regular(line), HOW_TO, room, MOST_TITLE_LINES);
            block.at(width * TITLE_SHARE, y).forEach(howTo::add);
            y += block.height();
        }
        double bottom = Math.max(title.box().height(), y);
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(title.moved(0, bottom - title.box().height()).as(Role.TITLE));
        for (Drawn line : howTo) {
            drawn.add(line.moved(0, bottom - y));
        }
        double rule = bottom + HEAD_GAP / 2;
        drawn.add(new Drawn.Bar(new Box(0, rule, width, HEAD_RULE)));
        return new Block(rule + HEAD_RULE + HEAD_GAP, drawn);
    }

    private Block foot(int number, int pages) {
        List<Drawn> drawn = new ArrayList<>();
        double room = width;
        if (pages > 1) {
            String words = new MessageFormat(sheet.page(), Locale.ROOT).format(new Object[] {number, pages});
            Drawn page = type.line(type.bold().printable(words), Weight.BOLD, FOOT);
            double left = width - page.box().width();
            drawn.add(page.moved(left, 0));
            room = left - COLUMN_GAP;
        }
        String source = type.regular().printable(sheet.source());
        drawn.add(type.line(type.shortened(source, Weight.REGULAR, FOOT, room), Weight.REGULAR, FOOT));
        return new Block(FOOT * Typeface.LINE, drawn);
    }

    private List<Block> groups(double size, int columns, double room) {
        List<Block> blocks = new ArrayList<>();
        for (CribSheet.Group group : sheet.groups()) {
            blocks.addAll(new CribGroup(type, group.title(), size, columnWidth(columns)).lay(group.lines(), room));
        }
        return blocks;
    }

    private static List<Run> regular(String text) {
        return List.of(new Run(text, Weight.REGULAR));
    }

    /** One group in letters of one size. */
    private record CribGroup(Type type, String title, double size, double width) {
        /** One block; where that is higher than the room, several, each under the title. */
        List<Block> lay(List<String> lines, double room) {
            List<Block> blocks = new ArrayList<>();
            List<String> part = new ArrayList<>();
            for (String line : lines) {
                part.add(line);
                if (part.size() > 1 && block(part).height() > room) {
                    part.remove(part.size() - 1);
                    blocks.add(block(part));
                    part = new ArrayList<>(List.of(line));
                }
            }
            blocks.add(block(part));
            return blocks;
        }

        private Block block(List<String> lines) {
            List<Drawn> drawn = new ArrayList<>();
            Block heading = Paragraph.ofLines(type, Run.bold(title), size * GROUP_TITLE, width, MOST_TITLE_LINES);
            heading.at(0, 0).map(words -> words.as(Role.HEADING)).forEach(drawn::add);
            double y = heading.height();
            drawn.add(new Drawn.Bar(new Box(0, y, width, Measures.RULE)));
            y += Measures.RULE + GROUP_TITLE_GAP * size;
            for (String line : lines) {
                Block block = hanging(line);
                block.at(0, y).forEach(drawn::add);
                y += block.height() + LINE_GAP * size;
            }
            return new Block(y - LINE_GAP * size, drawn);
        }

        /** What goes on in another line stands further in, so that each example begins at the edge. */
        private Block hanging(String line) {
            String words = type.regular().printable(line);
            Block whole = Paragraph.ofLines(type, regular(words), size, width, MOST_LINES);
            String first = whole.drawn().get(0) instanceof Drawn.Words begun ? begun.text() : words;
            if (whole.drawn().size() == 1 || !words.startsWith(first)) {
                return whole;
            }
            double indent = INDENT * size;
            String rest = words.substring(first.length()).strip();
            Block further = Paragraph.ofLines(type, regular(rest), size, width - indent, MOST_LINES - 1);
            List<Drawn> drawn = new ArrayList<>(whole.drawn().subList(0, 1));
            further.at(indent, size * Typeface.LINE).forEach(drawn::add);
            return new Block(size * Typeface.LINE + further.height(), drawn);
        }
    }
}
