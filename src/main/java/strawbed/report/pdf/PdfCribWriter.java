package strawbed.report.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import strawbed.report.CribSheet;

/**
 * Writes the sheet of what can be said as a PDF file, of one page where all fits.
 *
 * <p>The same sheet and paper give the same bytes; there is no date in them. One writer may be used by any number of
 * threads.
 */
public final class PdfCribWriter {
    /**
     * The sheet as the bytes of a PDF file.
     *
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(CribSheet sheet, SheetPaper paper) {
        try (Type type = Type.open()) {
            return PdfFile.of(
                    type,
                    CribLayout.of(type, sheet, paper),
                    paper.width(),
                    paper.height(),
                    Description.of(sheet.title(), sheet.language(), identity(sheet, paper)));
        } catch (IOException e) {
            throw new CardPdfException(
                    "The sheet \"" + sheet.title() + "\" could not be made: " + e.getMessage()
                            + " What can be said also stands in the grammar's files.",
                    e);
        }
    }

    private static byte[] identity(CribSheet sheet, SheetPaper paper) {
        try {
            String content = sheet + " on " + paper;
            return MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java has SHA-256", e);
        }
    }
}
