package strawbed.window;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The program's own letters, by the height of their capitals. Immutable. */
final class Typeface {
    /** A capital of Atkinson Hyperlegible Next is this much of the font's size. */
    static final double CAPITAL = 0.668;

    /** From one base line to the next, in capitals. */
    static final double LINE = 1.75;

    /** What hangs below the base line, in capitals. */
    static final double BELOW = 0.36;

    static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Font regular;
    private final Font bold;

    private Typeface(Font regular, Font bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /** The letters that come with the program; should they be missing, those of the system, as work must go on. */
    static Typeface load() {
        return new Typeface(
                font("AtkinsonHyperlegibleNext_400Regular.ttf", Font.PLAIN),
                font("AtkinsonHyperlegibleNext_700Bold.ttf", Font.BOLD));
    }

    private static Font font(String name, int style) {
        try (InputStream file = Typeface.class.getResourceAsStream("/fonts/" + name)) {
            if (file != null) {
                return Font.createFont(Font.TRUETYPE_FONT, file);
            }
        } catch (IOException | FontFormatException e) {
            Logger.getLogger(Typeface.class.getName()).log(Level.SEVERE, "The letters " + name + " do not load.", e);
        }
        return new Font(Font.SANS_SERIF, style, 1);
    }

    /** @param capitals their height in dots */
    Font regular(double capitals) {
        return regular.deriveFont((float) (capitals / CAPITAL));
    }

    Font bold(double capitals) {
        return bold.deriveFont((float) (capitals / CAPITAL));
    }

    static double width(String text, Font font) {
        return font.getStringBounds(text, CONTEXT).getWidth();
    }

    /** A text with letters that the font has: an accent that it lacks falls off, any other stranger becomes "?". */
    String known(String text) {
        StringBuilder known = new StringBuilder();
        text.codePoints().forEach(letter -> {
            if (bold.canDisplay(letter)) {
                known.appendCodePoint(letter);
            } else {
                String base = Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFD)
                        .codePoints()
                        .filter(bold::canDisplay)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
                known.append(base.isEmpty() ? "?" : base);
            }
        });
        return known.toString();
    }

    /** Lines no wider than this; a word that is wider alone stands alone. */
    static List<String> lines(String text, Font font, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || width(longer, font) <= width) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return lines;
    }
}
