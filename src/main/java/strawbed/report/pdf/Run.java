package strawbed.report.pdf;

import java.util.List;

/** Words of one weight within a paragraph. */
record Run(String text, Weight weight) {
    /** A plain label and what it says in bold: the one way facts are written on the card. */
    static List<Run> labelled(String label, String value) {
        return List.of(new Run(label, Weight.REGULAR), new Run(value, Weight.BOLD));
    }

    static List<Run> bold(String text) {
        return List.of(new Run(text, Weight.BOLD));
    }

    Run with(String word) {
        return new Run(text + " " + word, weight);
    }
}
