package strawbed.app;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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
    private static final PdfTestPageWriter WRITER = new PdfTestPageWriter();

    /** The papers by the words that are typed, the usual one of each use first. */
    private static final Map<PrintUse, List<String>> PAPERS =
            Map.of(PrintUse.CARDS, List.of("4x6", "a6"), PrintUse.SHEETS, List.of("letter", "a4"));

    private TestPages() {}

    /**
     * What a printer for this paper is for.
     *
     * @throws BadInputException if there is none of that name
     */
    static PrintUse use(String paper) {
        return Arrays.stream(PrintUse.values())
                .filter(use -> papers(use).contains(paper.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        "There is no paper \"" + paper + "\". Give --paper 4x6, a6, letter or a4."));
    }

    /**
     * The page.
     *
     * @param paper one of this use; null for the usual one
     */
    static byte[] of(PrintUse use, @Nullable String paper, Messages messages) {
        String wanted = paper == null ? papers(use).get(0) : paper.toLowerCase(Locale.ROOT);
        return switch (wanted) {
            case "a6" -> WRITER.write(page(CARD_BAR, messages), CardPaper.A6);
            case "letter" -> WRITER.write(page(SHEET_BAR, messages), SheetPaper.LETTER);
            case "a4" -> WRITER.write(page(SHEET_BAR, messages), SheetPaper.A4);
            default -> WRITER.write(page(CARD_BAR, messages), CardPaper.FOUR_BY_SIX_INCH);
        };
    }

    private static List<String> papers(PrintUse use) {
        return Objects.requireNonNull(PAPERS.get(use));
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
                phrases.testSample(),
                messages.locale().toLanguageTag());
    }

    private static List<TestPage.Sample> samples(PrintPhrases phrases, String... millimetres) {
        return Stream.of(millimetres)
                .map(BigDecimal::new)
                .map(size -> new TestPage.Sample(phrases.testSize(size), size.doubleValue()))
                .toList();
    }
}
