package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** What holds for every card, whatever stands on it. */
final class Geometry {
    private static final double MARGIN = 5;
    /** The least height of a capital in millimetres, see {@link Measures}. */
    static final double LEAST = 2.6;
    /** From three metres on an upright card; from arm's length and more on the others. Our own choice. */
    private static final double UPRIGHT_NUMBER = 26;

    private static final double LYING_NUMBER = 16;
    private static final double NAME = 8;

    private Geometry() {}

    static void check(String name, List<Drawn> things, CardPaper paper) {
        for (Drawn thing : things) {
            Box box = thing.box();
            boolean isInside = box.x() >= MARGIN - Ink.ROUNDING
                    && box.y() >= MARGIN - Ink.ROUNDING
                    && box.right() <= paper.width() - MARGIN + Ink.ROUNDING
                    && box.bottom() <= paper.height() - MARGIN + Ink.ROUNDING;
            if (!isInside) {
                throw new AssertionError(name + ": " + thing + " leaves the margins");
            }
            if (thing instanceof Drawn.Words words && words.capHeight() < LEAST) {
                throw new AssertionError(name + ": " + thing + " is too small");
            }
        }
        for (int i = 0; i < things.size(); i++) {
            for (int j = i + 1; j < things.size(); j++) {
                if (Ink.overlap(things.get(i).box(), things.get(j).box())) {
                    throw new AssertionError(name + ": " + things.get(i) + " lies on " + things.get(j));
                }
            }
        }
        checkCode(name, things);
        checkNumber(name, things, paper);
    }

    /** ISO/IEC 18004 asks for a white border of four modules on every side. */
    private static void checkCode(String name, List<Drawn> things) {
        List<Drawn.Code> codes = things.stream()
                .filter(Drawn.Code.class::isInstance)
                .map(Drawn.Code.class::cast)
                .toList();
        assertThat(codes).as(name).hasSize(1);
        Box code = codes.get(0).box();
        double border = 4 * code.width() / codes.get(0).code().modules();
        Box white =
                new Box(code.x() - border, code.y() - border, code.width() + 2 * border, code.height() + 2 * border);
        for (Drawn thing : things) {
            if (!(thing instanceof Drawn.Code) && Ink.overlap(white, thing.box())) {
                throw new AssertionError(name + ": " + thing + " lies in the border of the code");
            }
        }
    }

    /** The number is drawn first. */
    private static void checkNumber(String name, List<Drawn> things, CardPaper paper) {
        Drawn.Words number = (Drawn.Words) things.get(0);
        boolean isShort = number.text().matches("[0-9]{1,3}");
        double least = !isShort ? NAME : paper.isUpright() ? UPRIGHT_NUMBER : LYING_NUMBER;
        assertThat(number.capHeight()).as(name + ": " + number.text()).isGreaterThanOrEqualTo(least);
    }
}
