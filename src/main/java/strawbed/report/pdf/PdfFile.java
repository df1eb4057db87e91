package strawbed.report.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Puts laid out pages into a file, tagged and as PDF/A-1b. The same pages and description give the same bytes. */
final class PdfFile {
    private PdfFile() {}

    /**
     * The pages as the bytes of a PDF file.
     *
     * @param width of every page, in millimetres
     */
    static byte[] of(Type type, List<List<Drawn>> pages, double width, double height, Description description)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
            for (Weight weight : Weight.values()) {
                fonts.put(weight, PDType0Font.load(document, type.face(weight).font(), true));
            }
            Structure structure = new Structure(document, description.language());
            for (List<Drawn> page : pages) {
                Page.add(document, page, type, fonts, width, height, structure);
            }
            structure.finish();
            description.writeTo(document);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes, CompressParameters.NO_COMPRESSION);
            return bytes.toByteArray();
        }
    }
}
