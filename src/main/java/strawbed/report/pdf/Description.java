package strawbed.report.pdf;

import java.io.IOException;
import java.time.Instant;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.jspecify.annotations.Nullable;

/**
 * What a file says of itself: title, language, when it was made, and an identity made of its content, as PDFBox would
 * take one from the clock.
 */
final class Description {
    private static final String PROGRAM = "Strawbed";

    private final String title;
    private final String language;
    private final COSString identity;
    private final @Nullable Instant made;

    private Description(String title, String language, COSString identity, @Nullable Instant made) {
        this.title = title;
        this.language = language;
        this.identity = identity;
        this.made = made;
    }

    /** Of what has no date. */
    static Description of(String title, String language, byte[] identity) {
        return new Description(title, language, new COSString(identity), null);
    }

    /** Of what was printed at this time. */
    static Description of(String title, String language, byte[] identity, Instant printedAt) {
        return new Description(title, language, new COSString(identity), printedAt);
    }

    String language() {
        return language;
    }

    void writeTo(PDDocument document) throws IOException {
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer(PROGRAM);
        if (made != null) {
            document.getDocumentInformation().setCreationDate(Archival.calendar(made));
        }
        document.getDocumentCatalog().setLanguage(language);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        COSArray both = new COSArray();
        both.add(identity);
        both.add(identity);
        document.getDocument().setDocumentID(both);
        Archival.declare(document, title, language, PROGRAM, made);
    }
}
