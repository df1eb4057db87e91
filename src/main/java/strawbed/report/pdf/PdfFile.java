package strawbed.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** Puts laid out pages into a file. The same pages, title, identity and time give the same bytes. */
final class PdfFile {
    private static final String LANGUAGE = "en-US";
    private static final String PROGRAM = "Strawbed";

    private PdfFile() {}

    /**
     * The pages as the bytes of a PDF file.
     *
     * @param width of every page, in millimetres
     * @param identity made of what is in the file: PDFBox would take one from the clock
     */
    static byte[] of(
            Type type,
            List<List<Drawn>> pages,
            double width,
            double height,
            String title,
            byte[] identity,
            Instant printedAt)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
            for (Weight weight : Weight.values()) {
                fonts.put(weight, PDType0Font.load(document, type.face(weight).font(), true));
            }
            for (List<Drawn> page : pages) {
                Page.add(document, page, type, fonts, width, height);
            }
            describe(document, title, printedAt);
            document.getDocument().setDocumentID(twice(identity));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        }
    }

    private static void describe(PDDocument document, String title, Instant printedAt) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title);
        about.setProducer(PROGRAM);
        about.setCreationDate(GregorianCalendar.from(ZonedDateTime.ofInstant(printedAt, ZoneOffset.UTC)));
        document.getDocumentCatalog().setLanguage(LANGUAGE);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    private static COSArray twice(byte[] bytes) {
        COSString identity = new COSString(bytes);
        COSArray both = new COSArray();
        both.add(identity);
        both.add(identity);
        return both;
    }
}
