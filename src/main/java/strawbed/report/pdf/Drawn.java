package strawbed.report.pdf;

/** One thing on the card, in its place. No ink of it lies outside its box, but half the thickness of a line. */
sealed interface Drawn {
    Box box();

    /** What it is for a reader who hears the page. */
    Role role();

    Drawn moved(double dx, double dy);

    Drawn as(Role other);

    /**
     * Words on one line.
     *
     * @param ascent from the box's upper edge down to the line the letters stand on, in millimetres
     */
    record Words(Box box, String text, Weight weight, double capHeight, double ascent, Role role) implements Drawn {
        Words(Box box, String text, Weight weight, double capHeight, double ascent) {
            this(box, text, weight, capHeight, ascent, Role.TEXT);
        }

        @Override
        public Words as(Role other) {
            return new Words(box, text, weight, capHeight, ascent, other);
        }

        @Override
        public Words moved(double dx, double dy) {
            return new Words(box.moved(dx, dy), text, weight, capHeight, ascent, role);
        }
    }

    /** A black bar: rules, ticks and axes. */
    record Bar(Box box, Role role) implements Drawn {
        Bar(Box box) {
            this(box, Role.DECORATION);
        }

        @Override
        public Bar as(Role other) {
            return new Bar(box, other);
        }

        @Override
        public Bar moved(double dx, double dy) {
            return new Bar(box.moved(dx, dy), role);
        }
    }

    /** A sign that fills its box, as a black face or as an outline. */
    record Sign(Box box, Form form, boolean filled, Role role) implements Drawn {
        Sign(Box box, Form form, boolean filled) {
            this(box, form, filled, Role.DECORATION);
        }

        @Override
        public Sign as(Role other) {
            return new Sign(box, form, filled, other);
        }

        @Override
        public Sign moved(double dx, double dy) {
            return new Sign(box.moved(dx, dy), form, filled, role);
        }
    }

    /** A square code without its white border; its role tells what it says. */
    record Code(Box box, SquareCode code, Role role) implements Drawn {
        @Override
        public Code as(Role other) {
            return new Code(box, code, other);
        }

        @Override
        public Code moved(double dx, double dy) {
            return new Code(box.moved(dx, dy), code, role);
        }
    }

    /**
     * A black line between two corners of its box.
     *
     * @param isFalling whether from the upper left to the lower right one; else from the lower left to the upper right
     * @param isBroken whether in dashes
     */
    record Line(Box box, boolean isFalling, boolean isBroken, Role role) implements Drawn {
        Line(Box box, boolean isFalling, boolean isBroken) {
            this(box, isFalling, isBroken, Role.DECORATION);
        }

        @Override
        public Line as(Role other) {
            return new Line(box, isFalling, isBroken, other);
        }

        @Override
        public Line moved(double dx, double dy) {
            return new Line(box.moved(dx, dy), isFalling, isBroken, role);
        }
    }
}
