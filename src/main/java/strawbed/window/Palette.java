package strawbed.window;

import java.awt.Color;
import strawbed.station.Rank;

/**
 * Colours, each pair with a contrast of 7 to 1 at least (WCAG 2.2, success criterion 1.4.6). A colour never says
 * anything alone: place, word and size do.
 *
 * @param paper behind all
 * @param ink what is written on it
 * @param line between parts
 * @param strip behind the sign, while it listens
 * @param onStrip what is written on it
 */
record Palette(
        Color paper,
        Color ink,
        Color line,
        Color strip,
        Color onStrip,
        Pair yes,
        Pair no,
        Pair pressing,
        Pair usual,
        Pair chosen,
        Pair deaf) {
    /** What is written, on what. */
    record Pair(Color on, Color ink) {}

    static final Palette LIGHT = new Palette(
            new Color(0xF7F7F2),
            new Color(0x15191D),
            new Color(0x8A8F93),
            new Color(0x143D59),
            new Color(0xFFFFFF),
            new Pair(new Color(0x143D59), new Color(0xFFFFFF)),
            new Pair(new Color(0x7A1F2B), new Color(0xFFFFFF)),
            new Pair(new Color(0xF2C14E), new Color(0x15191D)),
            new Pair(new Color(0xDFE3DC), new Color(0x15191D)),
            new Pair(new Color(0x15191D), new Color(0xF7F7F2)),
            new Pair(new Color(0xF2C14E), new Color(0x15191D)));

    static final Palette DARK = new Palette(
            new Color(0x14181B),
            new Color(0xF1EFE7),
            new Color(0x767C80),
            new Color(0xA9D3EC),
            new Color(0x14181B),
            new Pair(new Color(0xA9D3EC), new Color(0x14181B)),
            new Pair(new Color(0xF3B8BC), new Color(0x14181B)),
            new Pair(new Color(0xF2C14E), new Color(0x14181B)),
            new Pair(new Color(0x2B3237), new Color(0xF1EFE7)),
            new Pair(new Color(0xF1EFE7), new Color(0x14181B)),
            new Pair(new Color(0xF2C14E), new Color(0x14181B)));

    Pair of(Rank rank) {
        return switch (rank) {
            case YES -> yes;
            case NO -> no;
            case PRESSING -> pressing;
            case USUAL -> usual;
            case CHOSEN -> chosen;
        };
    }
}
