package strawbed.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.UUID;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import strawbed.report.CalfCard;

/**
 * Writes a calf's card as a PDF file of one page.
 *
 * <p>The same card, paper and time give the same bytes. One writer may be used by any number of threads.
 */
public final class PdfCardWriter {
    private static final String LANGUAGE = "en-US";
    private static final String PROGRAM = "Strawbed";

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
        about.setTitle("Calf card " + card.number());
        about.setProducer(PROGRAM);
        about.setCreationDate(GregorianCalendar.from(ZonedDateTime.ofInstant(printedAt, ZoneOffset.UTC)));
        document.getDocumentCatalog().setLanguage(LANGUAGE);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        document.getDocument().setDocumentID(identity(card.id(), printedAt));
    }

    /** A file identity made of calf and time: PDFBox would take one from the clock. */
    private static COSArray identity(UUID calf, Instant printedAt) {
        ByteBuffer bytes = ByteBuffer.allocate(3 * Long.BYTES);
        bytes.putLong(calf.getMostSignificantBits());
        bytes.putLong(calf.getLeastSignificantBits());
        bytes.putLong(printedAt.toEpochMilli());
        COSString identity = new COSString(bytes.array());
        COSArray both = new COSArray();
        both.add(identity);
        both.add(identity);
        return both;
    }
}
