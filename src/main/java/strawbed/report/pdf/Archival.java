package strawbed.report.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;
import org.jspecify.annotations.Nullable;

/**
 * What makes a file PDF/A-1b (ISO 19005-1), so that it still looks the same in many years: a colour space for its black,
 * and metadata that say the same as the file's own description.
 */
final class Archival {
    private static final String COLOURS = "sRGB IEC61966-2.1";
    private static final String REGISTRY = "http://www.color.org";
    private static final float VERSION = 1.4f;

    private Archival() {}

    static void declare(PDDocument document, String title, String language, String program, @Nullable Instant made)
            throws IOException {
        document.setVersion(VERSION);
        document.getDocumentCatalog().addOutputIntent(colours(document));
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(metadata(title, language, program, made));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    private static PDOutputIntent colours(PDDocument document) throws IOException {
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(COLOURS);
        intent.setOutputCondition(COLOURS);
        intent.setOutputConditionIdentifier(COLOURS);
        intent.setRegistryName(REGISTRY);
        return intent;
    }

    private static byte[] metadata(String title, String language, String program, @Nullable Instant made)
            throws IOException {
        XMPMetadata metadata = XMPMetadata.createXMPMetadata();
        metadata.createAndAddDublinCoreSchema().setTitle(title);
        metadata.getDublinCoreSchema().addLanguage(language);
        metadata.createAndAddAdobePDFSchema().setProducer(program);
        if (made != null) {
            metadata.createAndAddXMPBasicSchema().setCreateDate(calendar(made));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            metadata.createAndAddPDFAIdentificationSchema().setPart(1);
            metadata.getPDFAIdentificationSchema().setConformance("B");
            new XmpSerializer().serialize(metadata, bytes, true);
        } catch (BadFieldValueException | TransformerException e) {
            throw new IOException("its metadata cannot be written: " + e.getMessage(), e);
        }
        return bytes.toByteArray();
    }

    static GregorianCalendar calendar(Instant time) {
        return GregorianCalendar.from(ZonedDateTime.ofInstant(time, ZoneOffset.UTC));
    }
}
