package strawbed.report.pdf;

/**
 * The handover sheet's sizes in millimetres, beside those of {@link Measures}. The titles stand in a column of their own,
 * so that the eye finds a section without a frame around it. Our own choice, judged on printed pictures.
 */
final class SheetMeasures {
    static final double MARGIN = 16;
    static final double TITLE = 7.5;
    static final double PERIOD = 4.1;

    /** Where the entries begin, right of the section titles. */
    static final double ENTRIES = 34;

    /** What an entry is found by takes as much room as the widest of them needs, to this at most. */
    static final double LEAD = 30;

    static final double COLUMN_GAP = 3;

    static final double ENTRY_GAP = 1.2;
    static final double SECTION_GAP = 2.6;
    static final double HEAD_RULE = 0.8;
    static final double SIGNATURE_ROOM = 11;

    private SheetMeasures() {}
}
