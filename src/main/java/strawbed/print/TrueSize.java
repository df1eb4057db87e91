package strawbed.print;

import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Paper;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.printing.PDFPrintable;
import org.apache.pdfbox.printing.Scaling;

/**
 * A document's pages for a printer, each on paper of exactly its size and all of it printable: nothing is fitted, turned
 * or moved. Our pages keep their own margin.
 */
final class TrueSize {
    private static final float AS_VECTORS = 0;

    private TrueSize() {}

    static Pageable pages(PDDocument document) {
        PDFPrintable drawing = new PDFPrintable(document, Scaling.ACTUAL_SIZE, false, AS_VECTORS, false);
        Book book = new Book();
        for (PDPage page : document.getPages()) {
            Paper paper = new Paper();
            paper.setSize(page.getCropBox().getWidth(), page.getCropBox().getHeight());
            paper.setImageableArea(0, 0, paper.getWidth(), paper.getHeight());
            PageFormat format = new PageFormat();
            format.setPaper(paper);
            book.append(drawing, format);
        }
        return book;
    }
}
