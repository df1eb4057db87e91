package strawbed.report.pdf;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import strawbed.report.CalfCard;
import strawbed.report.CalfPage;
import strawbed.report.RecordSheet;

/**
 * Writes what is printed of a calf as a PDF file: one card on a page of its size, or several on sheets.
 *
 * <p>The same content, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfCardWriter {
    /**
     * One calf's page as the bytes of a PDF file.
     *
     * @param printedAt when it is printed; a card's timeline is black up to that moment
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(CalfPage page, CardPaper paper, Instant printedAt) {
        try (Type type = Type.open()) {
            List<List<Drawn>> pages = List.of(lay(type, page, paper, printedAt));
            return PdfFile.of(type, pages, paper.width(), paper.height(), description(List.of(page), pages, printedAt));
        } catch (IOException e) {
            throw failed(page.head().number(), e);
        }
    }

    /**
     * Several calves' pages, two on a standing sheet with marks to cut along, in true size.
     *
     * @param card a lying one
     * @throws CardPdfException as {@link #write}
     */
    public byte[] writeSheets(List<? extends CalfPage> pages, CardPaper card, SheetPaper sheet, Instant printedAt) {
        if (pages.isEmpty() || card.isUpright()) {
            throw new IllegalArgumentException("a sheet needs cards that lie, not " + pages.size() + " of " + card);
        }
        try (Type type = Type.open()) {
            List<List<Drawn>> cards = new ArrayList<>();
            for (CalfPage page : pages) {
                cards.add(lay(type, page, card, printedAt));
            }
            List<List<Drawn>> sheets = TwoUpLayout.of(cards, card, sheet);
            return PdfFile.of(type, sheets, sheet.width(), sheet.height(), description(pages, sheets, printedAt));
        } catch (IOException e) {
            throw failed(pages.stream().map(page -> page.head().number()).collect(Collectors.joining(", ")), e);
        }
    }

    static List<Drawn> lay(Type type, CalfPage page, CardPaper paper, Instant printedAt) {
        if (page instanceof CalfCard card) {
            return CardLayout.of(type, card, paper, printedAt);
        }
        if (page instanceof RecordSheet sheet) {
            return RecordLayout.of(type, sheet, paper);
        }
        throw new AssertionError(page);
    }

    private static Description description(List<? extends CalfPage> pages, List<List<Drawn>> drawn, Instant printedAt) {
        String title = pages.stream().map(CalfPage::title).collect(Collectors.joining(", "));
        String calves = pages.stream().map(page -> page.head().code()).collect(Collectors.joining("\n"));
        return Description.of(title, pages.get(0).words().language(), Identity.of(calves, drawn, printedAt), printedAt);
    }

    private static CardPdfException failed(String calves, IOException e) {
        return new CardPdfException(
                "The card of " + calves + " could not be made: " + e.getMessage()
                        + " The records are safe; read the calf's times on the screen.",
                e);
    }
}
