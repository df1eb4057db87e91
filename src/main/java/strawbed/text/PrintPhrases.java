package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;

/** What is told of paper on its way to the printer. Immutable, safe for any thread. */
public final class PrintPhrases {
    private final Wording wording;
    private final CalfNames names;

    private PrintPhrases(Wording wording) {
        this.wording = wording;
        this.names = new CalfNames(wording);
    }

    /** For the screen. */
    public static PrintPhrases shown(Messages messages) {
        return new PrintPhrases(new Written(messages));
    }

    /** For the voice. */
    public static PrintPhrases spoken(Messages messages) {
        return new PrintPhrases(new Spoken(messages));
    }

    public String sent() {
        return wording.text(PROMPT_CARD_SENT);
    }

    /** A sheet that is a file so far. */
    public String sheetWritten(String file) {
        return wording.text(PRINT_SHEET_WRITTEN, file);
    }

    /** A sheet on its way to the printer. */
    public String sheetSent() {
        return wording.text(PRINT_SHEET_SENT);
    }

    /** The printer has not answered so far. */
    public String silent(CalfRecord calf, Herd herd) {
        return wording.text(PROMPT_CARD_SILENT, names.of(calf, herd));
    }

    /** The printer could not take it. */
    public String held(CalfRecord calf, Herd herd) {
        return wording.text(PROMPT_CARD_HELD, names.of(calf, herd));
    }

    /** The heading of the test page. */
    public String testTitle() {
        return wording.text(PRINT_TEST_TITLE);
    }

    /** What to look at on the test page, and what to do about it. */
    public List<String> testHowTo(int millimetres) {
        return List.of(
                wording.text(PRINT_TEST_RULER, wording.number(BigDecimal.valueOf(millimetres))),
                wording.text(PRINT_TEST_FRAME),
                wording.text(PRINT_TEST_FIT),
                wording.text(PRINT_TEST_FAINT));
    }

    public String testLines() {
        return wording.text(PRINT_TEST_LINES);
    }

    public String testLetters() {
        return wording.text(PRINT_TEST_LETTERS);
    }

    /** Words with letters and digits that look alike. */
    public String testSample() {
        return wording.text(PRINT_TEST_SAMPLE);
    }

    /** "0.3 mm". */
    public String testSize(BigDecimal millimetres) {
        return wording.text(PRINT_TEST_SIZE, wording.number(millimetres));
    }
}
