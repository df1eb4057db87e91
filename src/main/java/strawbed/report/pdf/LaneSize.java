package strawbed.report.pdf;

/** How high the timeline's lanes are. */
enum LaneSize {
    ROOMY(5.8, Measures.READ),
    CLOSE(4.4, Measures.NOTE_LEAST);

    private final double height;
    private final double text;

    LaneSize(double height, double text) {
        this.height = height;
        this.text = text;
    }

    /** From lane to lane, in millimetres. */
    double height() {
        return height;
    }

    /** The capitals of the words beside a mark, in millimetres. */
    double text() {
        return text;
    }
}
