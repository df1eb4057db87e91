package strawbed.exchange;

/**
 * Text as a cell of a spreadsheet.
 *
 * <p>A spreadsheet runs a cell that begins with one of {@code = + - @}, also in their full-width forms, as a formula;
 * what people said or a file brought must never do so. Such a cell gets an apostrophe in front, as the Open Worldwide
 * Application Security Project advises against CSV injection (from memory). A cell that begins with tab or carriage
 * return cannot come about, since control characters are taken out.
 */
final class CellText {
    private static final String TRIGGERS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

    private CellText() {}

    /** The text without control characters and safe from being run. */
    static String of(String text) {
        String plain = withoutControls(text);
        return isRun(plain) ? "'" + plain : plain;
    }

    /**
     * The text on one line: an end of line or a tab becomes a blank, every other control character, every sign that turns
     * the direction of what follows and every broken half of a letter is left out. Letters of all scripts stay.
     */
    static String withoutControls(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            if (letter == '\t' || letter == '\n' || letter == '\r' || isSeparator(letter)) {
                kept.append(' ');
            } else if (!isLeftOut(letter)) {
                kept.appendCodePoint(letter);
            }
        });
        return kept.toString();
    }

    /** What is not seen in front of a sign does not make it harmless. */
    private static boolean isRun(String plain) {
        return plain.codePoints()
                .filter(letter -> !Character.isWhitespace(letter)
                        && !Character.isSpaceChar(letter)
                        && Character.getType(letter) != Character.FORMAT)
                .limit(1)
                .anyMatch(letter -> TRIGGERS.indexOf(letter) >= 0);
    }

    private static boolean isSeparator(int letter) {
        int type = Character.getType(letter);
        return type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    }

    private static boolean isLeftOut(int letter) {
        return Character.isISOControl(letter)
                || Character.getType(letter) == Character.SURROGATE
                || (letter >= 0x202A && letter <= 0x202E)
                || (letter >= 0x2066 && letter <= 0x2069)
                || letter == 0xFEFF;
    }
}
