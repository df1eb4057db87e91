package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.Chapter;
import strawbed.report.HerdPaper;

/**
 * Places the herd's report on as many pages as it needs, on each the head. A chapter's title stays with what follows it,
 * and no strip is torn.
 */
final class HerdLayout {
    private static final double CHAPTER_GAP = 4;
    private static final double TITLE_GAP = 1.2;

    private final Type type;
    private final HerdPaper paper;
    private final double width;
    private final double height;
    private final SheetHead head;
    private final double top;

    private final List<List<Drawn>> pages = new ArrayList<>();
    private List<Drawn> page = new ArrayList<>();
    private double y;

    private HerdLayout(Type type, HerdPaper paper, SheetPaper sheet) {
        this.type = type;
        this.paper = paper;
        width = sheet.width() - 2 * SheetMeasures.MARGIN;
        height = sheet.height() - 2 * SheetMeasures.MARGIN;
        head = new SheetHead(
                type, new Heading(paper.title(), paper.farm(), paper.period(), paper.printedAt(), paper.page()), width);
        top = head.lay(1, 1).height();
        turnPage();
    }

    /** Everything on each page, in the order of reading. */
    static List<List<Drawn>> of(Type type, HerdPaper paper, SheetPaper sheet) {
        return new HerdLayout(type, paper, sheet).lay();
    }

    private List<List<Drawn>> lay() {
        ExhibitPart exhibits = new ExhibitPart(type, width);
        for (Chapter chapter : paper.chapters()) {
            List<Block> strips = exhibits.strips(chapter.exhibits());
            Block title = title(chapter.title());
            // A legend alone would stand at the foot of a page with its pictures on the next.
            double first = strips.stream().limit(2).mapToDouble(Block::height).sum();
            if (y > top && y + CHAPTER_GAP + title.height() + first > height) {
                turnPage();
            }
            if (y > top) {
                y += CHAPTER_GAP;
                page.add(new Drawn.Bar(new Box(0, y, width, Measures.THIN_LINE)));
                y += CHAPTER_GAP / 2;
            }
            put(title);
            strips.forEach(this::put);
        }
        return head.on(pages);
    }

    private Block title(String words) {
        Block title = Paragraph.ofLines(type, Run.bold(words), ChartMeasures.CHAPTER, width, Integer.MAX_VALUE);
        return new Block(title.height() + TITLE_GAP, title.drawn()).as(Role.HEADING);
    }

    private void put(Block block) {
        if (y > top && y + block.height() > height) {
            turnPage();
        }
        block.at(0, y).forEach(page::add);
        y += block.height();
    }

    private void turnPage() {
        page = new ArrayList<>();
        pages.add(page);
        y = top;
    }
}
