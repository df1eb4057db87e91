package strawbed.report;

/** The words that stand in for missing ones. */
final class Words {
    static final String NOT_RECORDED = "not recorded";

    private Words() {}

    static String orNotRecorded(String text) {
        return text.isBlank() ? NOT_RECORDED : text;
    }
}
