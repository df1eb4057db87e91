package strawbed.window;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import strawbed.station.Rank;

/** Where keys go. All in dots. */
final class KeyGrid {
    /** As wide as two short words want. */
    private static final double COMFORTABLE = 46;

    private KeyGrid() {}

    /**
     * Equal places for so many keys, as wide as they can be with at least the height that hands need.
     *
     * @param area within which
     */
    static List<Rectangle> places(int count, Rectangle area, Units units) {
        if (count == 0) {
            return List.of();
        }
        int gap = units.px(Measures.GAP);
        int rows = Math.max(1, (area.height + gap) / (units.px(Measures.KEY) + gap));
        int columns = Math.max((area.width + gap) / (units.px(COMFORTABLE) + gap), (count + rows - 1) / rows);
        int used = Math.max(1, Math.min(rows, Math.max((count + columns - 1) / columns, Math.min(rows, 3))));
        int width = (area.width - (columns - 1) * gap) / columns;
        int height = (area.height - (used - 1) * gap) / used;
        List<Rectangle> places = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int column = i % columns;
            int row = i / columns;
            places.add(new Rectangle(area.x + column * (width + gap), area.y + row * (height + gap), width, height));
        }
        return places;
    }

    /** Keys of one row after the other; each as wide as it wants, and what is left is shared out. */
    static List<Rectangle> row(List<BigKey> keys, Rectangle area, Units units) {
        double gaps = 0;
        double wanted = 0;
        double weights = 0;
        for (int i = 0; i < keys.size(); i++) {
            gaps += i == 0 ? 0 : gap(keys.get(i - 1), keys.get(i), units);
            wanted += wanted(keys.get(i), units);
            weights += weight(keys.get(i));
        }
        double left = area.width - gaps - wanted;
        double equal = (area.width - gaps) / keys.size();
        // Keys of one kind are equal where that is wide enough for each, so that they stay where they are.
        boolean areEqual = keys.stream().allMatch(key -> weight(key) == 1 && wanted(key, units) <= equal);
        List<Rectangle> places = new ArrayList<>();
        double x = area.x;
        for (int i = 0; i < keys.size(); i++) {
            BigKey key = keys.get(i);
            x += i == 0 ? 0 : gap(keys.get(i - 1), key, units);
            double width = areEqual
                    ? equal
                    : left >= 0
                            ? wanted(key, units) + left * weight(key) / weights
                            : wanted(key, units) * (area.width - gaps) / wanted;
            int from = (int) Math.ceil(x);
            places.add(new Rectangle(from, area.y, (int) Math.floor(x + width) - from, area.height));
            x += width;
        }
        return places;
    }

    /** How wide keys want to be together. */
    static double wanted(List<BigKey> keys, Units units) {
        double wanted = 0;
        for (int i = 0; i < keys.size(); i++) {
            wanted += wanted(keys.get(i), units) + (i == 0 ? 0 : gap(keys.get(i - 1), keys.get(i), units));
        }
        return wanted;
    }

    private static double wanted(BigKey key, Units units) {
        return Math.max(units.px(Measures.KEY), key.wantedWidth());
    }

    private static double weight(BigKey key) {
        return switch (key.key().rank()) {
            case YES -> 3;
            case NO, PRESSING, USUAL, CHOSEN -> 1;
        };
    }

    /** Yes and no are further apart than others. */
    private static int gap(BigKey left, BigKey right, Units units) {
        boolean isAnswer = left.key().rank() == Rank.YES && right.key().rank() == Rank.NO;
        return units.px(isAnswer ? Measures.WIDE_GAP : Measures.GAP);
    }
}
