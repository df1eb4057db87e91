package strawbed.window;

/**
 * What every part of the window is painted with.
 *
 * @param face the letters
 * @param colours the colours
 * @param units the lengths
 * @param isUpright whether the screen is higher than wide
 */
record Paint(Typeface face, Palette colours, Units units, boolean isUpright) {
    int px(double length) {
        return units.px(length);
    }

    /** A text in bold capitals of this height at most, within a box in dots. */
    Fitted bold(String text, double width, double height, double largest, double least) {
        return Fitted.of(face.known(text), face::bold, width, height, units.px(largest), units.px(least));
    }

    Fitted regular(String text, double width, double height, double largest, double least) {
        return Fitted.of(face.known(text), face::regular, width, height, units.px(largest), units.px(least));
    }
}
