package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.HandoverSheet;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;

/**
 * Places a sheet's words on as many pages as they need: on each the head, then the sections, their titles in a column to
 * the left; on the last the lines to sign at its foot.
 *
 * <p>An entry stays together where it fits a page. Nothing is shortened or left out.
 */
final class SheetLayout {
    private final Type type;
    private final HandoverSheet sheet;
    private final double width;
    private final double height;
    private final SheetHead head;
    private final EntryPart entryPart;
    private final double top;

    private final List<List<Drawn>> pages = new ArrayList<>();
    private List<Drawn> page = new ArrayList<>();
    private double y;

    private SheetLayout(Type type, HandoverSheet sheet, SheetPaper paper) {
        this.type = type;
        this.sheet = sheet;
        width = paper.width() - 2 * SheetMeasures.MARGIN;
        height = paper.height() - 2 * SheetMeasures.MARGIN;
        head = new SheetHead(
                type, new Heading(sheet.title(), sheet.farm(), sheet.period(), sheet.printedAt(), sheet.page()), width);
        entryPart = new EntryPart(type, width - SheetMeasures.ENTRIES, lead(type, sheet));
        top = head.lay(1, 1).height();
        turnPage();
    }

    private static double lead(Type type, HandoverSheet sheet) {
        double widest = sheet.sections().stream()
                .flatMap(section -> section.entries().stream())
                .mapToDouble(entry -> type.width(type.bold().printable(entry.lead()), Weight.BOLD, Measures.NOTE))
                .max()
                .orElse(0);
        return Math.min(widest, SheetMeasures.LEAD);
    }

    /** Everything on each page, in the order of reading. */
    static List<List<Drawn>> of(Type type, HandoverSheet sheet, SheetPaper paper) {
        return new SheetLayout(type, sheet, paper).lay();
    }

    private List<List<Drawn>> lay() {
        sheet.about()
                .forEach(fact ->
                        section(fact.label(), fact.label(), List.of(SheetEntry.plain(fact.value())), Weight.REGULAR));
        for (SheetSection section : sheet.sections()) {
            List<SheetEntry> entries =
                    section.entries().isEmpty() ? List.of(SheetEntry.plain(section.none())) : section.entries();
            section(section.title(), section.continued(), entries, Weight.BOLD);
        }
        if (!sheet.signatures().isEmpty()) {
            sign(SignaturePart.of(type, sheet.signatures(), width));
        }
        return head.on(pages);
    }

    private void section(String title, String continued, List<SheetEntry> entries, Weight weight) {
        Block first = title(title, weight);
        Block again = title(continued, weight);
        double end = y;
        for (int i = 0; i < entries.size(); i++) {
            List<Block> lines = entryPart.lines(entries.get(i));
            double all = lines.stream().mapToDouble(Block::height).sum();
            double before = i == 0 ? ruleRoom() : SheetMeasures.ENTRY_GAP;
            double needed = i == 0 ? Math.max(first.height(), all) : all;
            if (y + before + needed > height && y > top) {
                turnPage();
                end = put(i == 0 ? first : again, lines.get(0));
            } else if (i == 0) {
                rule();
                end = put(first, lines.get(0));
            } else {
                y += before;
            }
            for (Block line : lines) {
                if (y + line.height() > height && y > top) {
                    turnPage();
                    end = put(again, line);
                }
                line.at(SheetMeasures.ENTRIES, y).forEach(page::add);
                y += line.height();
            }
        }
        y = Math.max(y, end);
    }

    /** Puts a section's title beside the line that follows, on one height with its words, and tells where it ends. */
    private double put(Block title, Block beside) {
        double down = Math.max(0, (beside.height() - Measures.NOTE * Typeface.LINE) / 2);
        title.at(0, y + down).map(words -> words.as(Role.HEADING)).forEach(page::add);
        return y + down + title.height();
    }

    private Block title(String words, Weight weight) {
        return Paragraph.ofLines(
                type,
                List.of(new Run(words, weight)),
                Measures.NOTE,
                SheetMeasures.ENTRIES - SheetMeasures.COLUMN_GAP,
                Integer.MAX_VALUE);
    }

    /** The rule above a section; under the head there is one already. */
    private void rule() {
        if (y > top) {
            page.add(new Drawn.Bar(new Box(0, y + SheetMeasures.SECTION_GAP, width, Measures.THIN_LINE)));
            y += ruleRoom();
        }
    }

    private double ruleRoom() {
        return y > top ? 2 * SheetMeasures.SECTION_GAP + Measures.THIN_LINE : 0;
    }

    private void sign(Block signatures) {
        if (y + signatures.height() > height) {
            turnPage();
        }
        signatures.at(0, height - signatures.height()).forEach(page::add);
    }

    private void turnPage() {
        page = new ArrayList<>();
        pages.add(page);
        y = top;
    }
}
