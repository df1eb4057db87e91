package strawbed.report.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import strawbed.report.TestPage;

/** Writes a printer's test page as a PDF file. The same page and paper give the same bytes. Safe for any thread. */
public final class PdfTestPageWriter {
    /** The page on a card's paper. */
    public byte[] write(TestPage page, CardPaper paper) {
        return write(page, paper.width(), paper.height());
    }

    /** The page on a sheet. */
    public byte[] write(TestPage page, SheetPaper paper) {
        return write(page, paper.width(), paper.height());
    }

    /** @throws CardPdfException if the fonts are missing from the program or the file cannot be put together */
    private static byte[] write(TestPage page, double width, double height) {
        String content = page + " on " + width + " by " + height;
        UUID identity = UUID.nameUUIDFromBytes(content.getBytes(StandardCharsets.UTF_8));
        try (Type type = Type.open()) {
            return PdfFile.of(
                    type,
                    List.of(TestPageLayout.of(type, page, width, height)),
                    width,
                    height,
                    Description.of(
                            page.title(), page.language(), identity.toString().getBytes(StandardCharsets.US_ASCII)));
        } catch (IOException e) {
            throw new CardPdfException(
                    "The test page could not be made: " + e.getMessage() + " Install the program anew.", e);
        }
    }
}
