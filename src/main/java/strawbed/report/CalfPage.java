package strawbed.report;

/** What is printed of one calf. */
public sealed interface CalfPage permits CalfCard, RecordSheet {
    /** What the file is called in a viewer. */
    String title();

    CalfHead head();

    CardFoot foot();

    CardWords words();
}
