package strawbed.report.pdf;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * What a file says of itself: title, language, and an identity made of its content, as PDFBox would take one from the
 * clock.
 */
final class Description {
    private static final String PROGRAM = "Strawbed";

    private final String title;
    private final String language;
    private final COSString identity;

    private Description(String title, String language, COSString identity) {
        this.title = title;
        this.language = language;
        this.identity = identity;
    }

    /** @param language such as {@code en-US} */
    static Description of(String title, String language, byte[] identity) {
        return new Description(title, language, new COSString(identity));
    }

    void writeTo(PDDocument document) {
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer(PROGRAM);
        document.getDocumentCatalog().setLanguage(language);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        COSArray both = new COSArray();
        both.add(identity);
        both.add(identity);
        document.getDocument().setDocumentID(both);
    }
}
