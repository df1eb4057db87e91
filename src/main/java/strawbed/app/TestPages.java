package strawbed.app;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import strawbed.print.PrintUse;
import strawbed.report.TestPage;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfTestPageWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;
import strawbed.text.PrintPhrases;

/** A printer's test page on the paper that it is chosen for. */
final class TestPages {
    private static final int CARD_BAR = 80;
    private static final int SHEET_BAR = 100;

    private TestPages() {}

    static byte[] of(PrintUse use, Messages messages) {
        PdfTestPageWriter writer = new PdfTestPageWriter();
        return switch (use) {
            case CARDS -> writer.write(page(CARD_BAR, messages), CardPaper.FOUR_BY_SIX_INCH);
            case SHEETS -> writer.write(page(SHEET_BAR, messages), SheetPaper.LETTER);
        };
    }

    private static TestPage page(int bar, Messages messages) {
        PrintPhrases phrases = PrintPhrases.shown(messages);
        return new TestPage(
                phrases.testTitle(),
                phrases.testHowTo(bar),
                bar,
                phrases.testLines(),
                samples(phrases, "0.3", "0.4", "0.6", "1.0"),
                phrases.testLetters(),
                samples(phrases, "2.0", "2.6", "2.8", "3.3"),
                phrases.testSample());
    }

    private static List<TestPage.Sample> samples(PrintPhrases phrases, String... millimetres) {
        return Stream.of(millimetres)
                .map(BigDecimal::new)
                .map(size -> new TestPage.Sample(phrases.testSize(size), size.doubleValue()))
                .toList();
    }
}
