package strawbed.report.pdf;

/** Whether two things are printed on each other. */
final class Ink {
    /** A thousandth of a millimetre: rounding, not ink. */
    static final double ROUNDING = 0.001;

    private Ink() {}

    static boolean overlap(Box a, Box b) {
        return Math.min(a.right(), b.right()) - Math.max(a.x(), b.x()) > ROUNDING
                && Math.min(a.bottom(), b.bottom()) - Math.max(a.y(), b.y()) > ROUNDING;
    }
}
