package strawbed.report.pdf;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import strawbed.report.HerdPaper;

/**
 * Writes the herd's report as a PDF file.
 *
 * <p>The same report, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfHerdWriter {
    /**
     * The report as the bytes of a PDF file.
     *
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(HerdPaper report, SheetPaper paper, Instant printedAt) {
        try (Type type = Type.open()) {
            List<List<Drawn>> pages = HerdLayout.of(type, report, paper);
            return PdfFile.of(
                    type,
                    pages,
                    paper.width(),
                    paper.height(),
                    Description.of(
                            report.title() + ", " + report.period(),
                            report.language(),
                            Identity.of(pages, printedAt),
                            printedAt));
        } catch (IOException e) {
            throw new CardPdfException(
                    "The herd's report could not be made: " + e.getMessage()
                            + " The records are safe; \"strawbed herd\" shows its figures on the screen.",
                    e);
        }
    }
}
