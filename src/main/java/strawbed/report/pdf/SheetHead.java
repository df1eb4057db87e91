package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** The head that every page of a sheet bears: what it is, of which farm and shift, when printed, and which page it is. */
final class SheetHead {
    private static final double GAP = 2.2;
    private static final double BESIDE = 6;

    private final Type type;
    private final Heading heading;
    private final double width;

    SheetHead(Type type, Heading heading, double width) {
        this.type = type;
        this.heading = heading;
        this.width = width;
    }

    /** Of the same height on every page. */
    Block lay(int page, int pages) {
        List<Drawn> drawn = new ArrayList<>();
        Drawn.Words title = tight(heading.title(), Weight.BOLD, SheetMeasures.TITLE, width);
        drawn.add(page == 1 ? title.as(Role.TITLE) : title);
        double base = title.ascent();
        double room = width - title.box().width() - BESIDE;
        if (!heading.farm().isBlank()) {
            Drawn.Words farm = tight(heading.farm(), Weight.REGULAR, Measures.READ, room);
            drawn.add(farm.moved(width - farm.box().width(), base - farm.ascent()));
        }
        double y = title.box().bottom() + GAP;
        drawn.add(
                line(heading.period(), Weight.BOLD, SheetMeasures.PERIOD, width).moved(0, y));
        y += SheetMeasures.PERIOD * Typeface.LINE + GAP / 2;
        Drawn.Words place = line(heading.page().of(page, pages), Weight.REGULAR, Measures.NOTE, width);
        drawn.add(line(
                        heading.printedAt(),
                        Weight.REGULAR,
                        Measures.NOTE,
                        width - place.box().width() - BESIDE)
                .moved(0, y));
        drawn.add(place.moved(width - place.box().width(), y));
        y += Measures.NOTE * Typeface.LINE + GAP;
        drawn.add(new Drawn.Bar(new Box(0, y, width, SheetMeasures.HEAD_RULE)));
        return new Block(y + SheetMeasures.HEAD_RULE + SheetMeasures.SECTION_GAP, drawn);
    }

    /** The pages with their heads, inside the margins. */
    List<List<Drawn>> on(List<List<Drawn>> pages) {
        List<List<Drawn>> all = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Drawn> drawn = new ArrayList<>(lay(i + 1, pages.size()).drawn());
            drawn.addAll(pages.get(i));
            all.add(drawn.stream()
                    .map(thing -> thing.moved(SheetMeasures.MARGIN, SheetMeasures.MARGIN))
                    .toList());
        }
        return all;
    }

    private Drawn.Words tight(String words, Weight weight, double capHeight, double room) {
        return type.tight(fitting(words, weight, capHeight, room), weight, capHeight);
    }

    private Drawn.Words line(String words, Weight weight, double capHeight, double room) {
        return type.line(fitting(words, weight, capHeight, room), weight, capHeight);
    }

    private String fitting(String words, Weight weight, double capHeight, double room) {
        return type.shortened(type.face(weight).printable(words), weight, capHeight, room);
    }
}
