package strawbed.window;

import java.awt.Font;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * A text laid into a box, as large as it goes.
 *
 * @param lines of it
 * @param font theirs
 * @param capitals their height in dots
 * @param fits whether all of it is within the box, at the smallest height that is allowed
 */
record Fitted(List<String> lines, Font font, double capitals, boolean fits) {
    private static final double STEP = 0.96;

    /**
     * Lays a text out.
     *
     * @param fonts gives the font for a height of capitals
     * @param largest height of capitals in dots
     * @param least height of capitals in dots that people can still read
     */
    static Fitted of(
            String text, DoubleFunction<Font> fonts, double width, double height, double largest, double least) {
        double capitals = largest;
        while (true) {
            Font font = fonts.apply(capitals);
            List<String> lines = Typeface.lines(text, font, width);
            boolean fits = height(lines.size(), capitals) <= height
                    && lines.stream().allMatch(line -> Typeface.width(line, font) <= width);
            if (fits || capitals <= least) {
                return new Fitted(lines, font, capitals, fits);
            }
            capitals = Math.max(least, capitals * STEP);
        }
    }

    /** Of so many lines, from the top of the first capitals to what hangs below the last line. */
    static double height(int lines, double capitals) {
        return capitals * (1 + Typeface.BELOW + (lines - 1) * Typeface.LINE);
    }

    double height() {
        return height(lines.size(), capitals);
    }
}
