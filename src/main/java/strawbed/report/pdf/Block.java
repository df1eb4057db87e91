package strawbed.report.pdf;

import java.util.List;
import java.util.stream.Stream;

/**
 * A part of the card, laid out from its own upper left corner.
 *
 * @param height how much of the card's height it takes, in millimetres
 */
record Block(double height, List<Drawn> drawn) {
    static final Block EMPTY = new Block(0, List.of());

    Block {
        drawn = List.copyOf(drawn);
    }

    Stream<Drawn> at(double x, double y) {
        return drawn.stream().map(thing -> thing.moved(x, y));
    }

    /** How far its ink goes to the right, in millimetres. */
    double width() {
        return drawn.stream().mapToDouble(thing -> thing.box().right()).max().orElse(0);
    }

    /** The same, all of it for this purpose. */
    Block as(Role role) {
        return new Block(height, drawn.stream().map(thing -> thing.as(role)).toList());
    }
}
