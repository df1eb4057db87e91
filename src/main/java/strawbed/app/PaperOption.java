package strawbed.app;

import java.util.Locale;
import strawbed.report.pdf.SheetPaper;

/** The option {@code --paper} of the commands that print on a sheet. */
final class PaperOption {
    private PaperOption() {}

    /**
     * The paper that somebody typed.
     *
     * @throws BadInputException if there is none of that name
     */
    static SheetPaper paper(String typed) {
        for (SheetPaper known : SheetPaper.values()) {
            if (word(known).equals(typed.toLowerCase(Locale.ROOT))) {
                return known;
            }
        }
        throw new BadInputException("There is no paper \"" + typed + "\". Give --paper letter or --paper a4.");
    }

    /** As it is typed. */
    static String word(SheetPaper paper) {
        return paper.name().toLowerCase(Locale.ROOT);
    }
}
