package strawbed.window;

/**
 * Lengths in units. F-01 to F-06 stand for: touch targets of 20 mm and more (Duff 2010), 13 mm between push buttons and
 * more for gloves (MIL-STD-1472E), text of 30 arc minutes at its distance (ISO 9241-3 asks for 20 to 22; more for dirt
 * and glare is common practice, no published source).
 */
final class Measures {
    /** The smallest screen that is meant: 1280 by 800 at 149 dots per inch. */
    static final double LONG_SIDE = 218;

    static final double SHORT_SIDE = 136;

    /** Height of capitals that are read from two metres: 30 arc minutes are 17.45 mm. */
    static final double FAR_CAPITALS = 17.5;

    /** Height of capitals that are read from 0.7 m: 30 arc minutes are 6.11 mm. */
    static final double NEAR_CAPITALS = 6.2;

    /** 22 arc minutes at 0.7 m: text that would not fit otherwise, never smaller. */
    static final double LEAST_CAPITALS = 4.5;

    /** 17 arc minutes at 0.7 m, over the minimum of 16: the second line of a key. */
    static final double DETAIL_CAPITALS = 3.5;

    static final double KEY = 25;
    static final double MAIN_KEY = 40;
    static final double GAP = 6;

    /** Between yes and no. */
    static final double WIDE_GAP = 13;

    static final double EDGE = 2;
    static final double BETWEEN = 3;
    static final double FAR_STRIP = 22;
    static final double NEAR_STRIP = 13;

    private Measures() {}
}
