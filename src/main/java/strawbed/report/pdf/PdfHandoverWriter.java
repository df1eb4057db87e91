package strawbed.report.pdf;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import strawbed.report.HandoverSheet;

/**
 * Writes a shift's handover sheet as a PDF file, on one page if it fits, else on as many as it needs.
 *
 * <p>The same sheet, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfHandoverWriter {
    /**
     * The sheet as the bytes of a PDF file.
     *
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(HandoverSheet sheet, SheetPaper paper, Instant printedAt) {
        try (Type type = Type.open()) {
            List<List<Drawn>> pages = SheetLayout.of(type, sheet, paper);
            return PdfFile.of(
                    type,
                    pages,
                    paper.width(),
                    paper.height(),
                    Description.of(
                            sheet.title() + ", " + sheet.period(),
                            sheet.language(),
                            Identity.of(pages, printedAt),
                            printedAt));
        } catch (IOException e) {
            throw new CardPdfException(
                    "The handover sheet could not be made: " + e.getMessage()
                            + " The records are safe; \"strawbed due\" shows what is due on the screen.",
                    e);
        }
    }
}
