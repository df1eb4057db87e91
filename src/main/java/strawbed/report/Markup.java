package strawbed.report;

/** Text among the marks of HTML and SVG. */
public final class Markup {
    private Markup() {}

    /** The text in a form in which none of it is a mark, as content or between double quotes. */
    public static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
