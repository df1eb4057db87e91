package strawbed.window;

/**
 * How many dots one unit has.
 *
 * @param dots more than 0
 * @param dotsPerMillimetre of the screen
 */
public record Units(double dots, double dotsPerMillimetre) {
    private static final double MILLIMETRES_PER_INCH = 25.4;

    public Units {
        if (!(dots > 0) || !(dotsPerMillimetre > 0)) {
            throw new IllegalArgumentException("a screen has dots, not " + dots + " and " + dotsPerMillimetre);
        }
    }

    /**
     * Units for a window: a millimetre where the screen is as small as is meant; more on a larger one, so that it is
     * filled; less on a smaller one, so that nothing is cut off.
     *
     * @param dotsPerInch as measured with a ruler, or as the system says
     */
    public static Units of(int width, int height, double dotsPerInch) {
        double across = Math.max(width, height) / Measures.LONG_SIDE;
        double down = Math.min(width, height) / Measures.SHORT_SIDE;
        return new Units(Math.min(across, down), dotsPerInch / MILLIMETRES_PER_INCH);
    }

    /** Whether keys are smaller than gloved hands need. */
    public boolean isTooSmall() {
        return dots < dotsPerMillimetre * 0.999;
    }

    /** A length in whole dots, never shorter. */
    int px(double units) {
        return (int) Math.ceil(units * dots - 1e-9);
    }

    /** How long so many dots are, in millimetres. */
    public double millimetres(double px) {
        return px / dotsPerMillimetre;
    }
}
