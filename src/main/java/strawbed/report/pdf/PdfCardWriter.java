package strawbed.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.UUID;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import strawbed.report.CalfCard;

/**
 * Writes a calf's card as a PDF file of one page.
 *
 * <p>The same card, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfCardWriter {
    private static final String LANGUAGE = "en-US";

    /**
     * The card as the bytes of a PDF file.
     *
     * @param printedAt when the card is printed; the timeline is black up to that moment
     * @throws CardPdfException if the fonts are missing from the program or the file cannot be put together
     */
    public byte[] write(CalfCard card, CardPaper paper, Instant printedAt) {
        try (Type type = Type.open();
                PDDocument document = new PDDocument()) {
            CardPage.add(document, CardLayout.of(type, card, paper, printedAt), type, paper);
            describe(document, card, printedAt);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new CardPdfException(
                    "The card of " + card.number() + " could not be made: " + e.getMessage()
                            + " The records are safe; read the calf's times on the screen.",
                    e);
        }
    }

    private static void describe(PDDocument document, CalfCard card, Instant printedAt) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setCreationDate(GregorianCalendar.from(ZonedDateTime.ofInstant(printedAt, ZoneOffset.UTC)));
        Description.of("Calf card " + card.number(), LANGUAGE, identity(card.id(), printedAt))
                .writeTo(document);
    }

    /** A file identity made of calf and time: PDFBox would take one from the clock. */
    private static byte[] identity(UUID calf, Instant printedAt) {
        ByteBuffer bytes = ByteBuffer.allocate(3 * Long.BYTES);
        bytes.putLong(calf.getMostSignificantBits());
        bytes.putLong(calf.getLeastSignificantBits());
        bytes.putLong(printedAt.toEpochMilli());
        return bytes.array();
    }
}
