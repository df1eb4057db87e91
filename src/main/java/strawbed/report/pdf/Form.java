package strawbed.report.pdf;

/** The drawn signs; the fonts have none of them as letters. */
enum Form {
    CIRCLE,
    SQUARE,
    TRIANGLE,
    TICK_BOX,
    WARNING,
    ARROW_LEFT,
    ARROW_RIGHT
}
