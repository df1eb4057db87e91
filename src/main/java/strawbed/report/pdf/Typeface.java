package strawbed.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** One weight of the card's letters: measures words and knows which letters it has. For one thread and one card. */
final class Typeface implements AutoCloseable {
    /** What a line needs above its base, in heights of a capital: room for the accent of a capital. */
    static final double ABOVE = 1.35;
    /** What a line needs below its base, in heights of a capital. */
    static final double BELOW = 0.31;
    /** The height of a line of text, in heights of a capital. */
    static final double LINE = ABOVE + BELOW;

    private static final int MISSING = 0;
    private static final String UNKNOWN = "?";

    private final TrueTypeFont font;
    private final CmapLookup letters;
    private final double capital;
    private final Map<Integer, Glyph> glyphs = new HashMap<>();

    private Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        this.letters = font.getUnicodeCmapLookup();
        this.capital = font.getOS2Windows().getCapHeight();
        // Joined letters would be other widths than measured here, and read back worse.
        font.setEnableGsub(false);
    }

    static Typeface open(String resource) {
        try (InputStream in = Typeface.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IOException("it is not in the program");
            }
            return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
        } catch (IOException e) {
            throw new CardPdfException("The font " + resource + " cannot be read; install Strawbed again.", e);
        }
    }

    TrueTypeFont font() {
        return font;
    }

    /** The size in which a capital is as high as one unit of length. */
    double sizeOfCapital() throws IOException {
        return font.getUnitsPerEm() / capital;
    }

    /** The width in millimetres of printable words whose capitals are that high. */
    double width(String text, double capHeight) {
        return text.codePoints().mapToDouble(letter -> glyph(letter).advance()).sum() * capHeight;
    }

    /** The highest ink above the base of these letters, in heights of a capital. */
    double above(String text) {
        return text.codePoints()
                .mapToDouble(letter -> glyph(letter).above())
                .max()
                .orElse(0);
    }

    /** The lowest ink below the base of these letters, in heights of a capital; not negative. */
    double below(String text) {
        return Math.max(
                0,
                text.codePoints()
                        .mapToDouble(letter -> glyph(letter).below())
                        .max()
                        .orElse(0));
    }

    /** The text in letters this font has: else without accents, else "?". */
    String printable(String text) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(letter -> append(letter, out));
        String letters = out.toString().strip().replaceAll(" +", " ");
        return letters.isEmpty() && !text.isBlank() ? UNKNOWN : letters;
    }

    private void append(int letter, StringBuilder out) {
        if (Character.isWhitespace(letter) || Character.isSpaceChar(letter) || Character.isISOControl(letter)) {
            out.append(' ');
        } else if (fits(letter)) {
            out.appendCodePoint(letter);
        } else if (!isInvisible(letter)) {
            String base = Normalizer.normalize(Character.toString(letter), Normalizer.Form.NFKD)
                    .codePoints()
                    .filter(this::fits)
                    .filter(part -> !isInvisible(part))
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            out.append(base.isEmpty() ? UNKNOWN : base);
        }
    }

    /** Marks that stand on another letter, and signs that only steer text. */
    private static boolean isInvisible(int letter) {
        int type = Character.getType(letter);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT;
    }

    private boolean fits(int letter) {
        Glyph glyph = glyph(letter);
        return glyph.exists() && !isInvisible(letter) && glyph.above() <= ABOVE && glyph.below() <= BELOW;
    }

    private Glyph glyph(int letter) {
        return glyphs.computeIfAbsent(letter, this::read);
    }

    private Glyph read(int letter) {
        try {
            int id = letters.getGlyphId(letter);
            GlyphData outline = font.getGlyph().getGlyph(id);
            // A space has no outline.
            double top = outline == null ? 0 : outline.getBoundingBox().getUpperRightY();
            double bottom = outline == null ? 0 : outline.getBoundingBox().getLowerLeftY();
            return new Glyph(id != MISSING, font.getAdvanceWidth(id) / capital, top / capital, -bottom / capital);
        } catch (IOException e) {
            throw new CardPdfException("A letter of the card's font cannot be read; install Strawbed again.", e);
        }
    }

    /** A letter's measures in heights of a capital. */
    private record Glyph(boolean exists, double advance, double above, double below) {}

    @Override
    public void close() throws IOException {
        font.close();
    }
}
