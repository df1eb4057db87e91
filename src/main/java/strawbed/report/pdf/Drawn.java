package strawbed.report.pdf;

/** One thing on the card, in its place. No ink of it lies outside its box, but half the thickness of a line. */
sealed interface Drawn {
    Box box();

    Drawn moved(double dx, double dy);

    /**
     * Words on one line.
     *
     * @param ascent from the box's upper edge down to the line the letters stand on, in millimetres
     */
    record Words(Box box, String text, Weight weight, double capHeight, double ascent) implements Drawn {
        @Override
        public Words moved(double dx, double dy) {
            return new Words(box.moved(dx, dy), text, weight, capHeight, ascent);
        }
    }

    /** A black bar: rules, ticks and axes. */
    record Bar(Box box) implements Drawn {
        @Override
        public Bar moved(double dx, double dy) {
            return new Bar(box.moved(dx, dy));
        }
    }

    /** A sign that fills its box, as a black face or as an outline. */
    record Sign(Box box, Form form, boolean filled) implements Drawn {
        @Override
        public Sign moved(double dx, double dy) {
            return new Sign(box.moved(dx, dy), form, filled);
        }
    }

    /** A square code without its white border. */
    record Code(Box box, SquareCode code) implements Drawn {
        @Override
        public Code moved(double dx, double dy) {
            return new Code(box.moved(dx, dy), code);
        }
    }

    /**
     * A black line between two corners of its box.
     *
     * @param isFalling whether from the upper left to the lower right one; else from the lower left to the upper right
     * @param isBroken whether in dashes
     */
    record Line(Box box, boolean isFalling, boolean isBroken) implements Drawn {
        @Override
        public Line moved(double dx, double dy) {
            return new Line(box.moved(dx, dy), isFalling, isBroken);
        }
    }
}
