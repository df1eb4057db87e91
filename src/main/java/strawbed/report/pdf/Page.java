package strawbed.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Draws what a layout placed, in order, black on a page. */
final class Page {
    private final Type type;
    private final Map<Weight, PDFont> fonts;
    private final PDPageContentStream page;
    private final Pen pen;
    private final SignPen signPen;

    private final Structure.OfPage structure;

    private Page(
            PDPageContentStream page, Type type, Map<Weight, PDFont> fonts, double height, Structure.OfPage structure) {
        this.type = type;
        this.page = page;
        this.fonts = fonts;
        this.structure = structure;
        this.pen = new Pen(page, height);
        this.signPen = new SignPen(pen);
    }

    /**
     * Adds a page of this size, in millimetres.
     *
     * @param fonts those of the document, one for each weight
     */
    static void add(
            PDDocument document,
            List<Drawn> things,
            Type type,
            Map<Weight, PDFont> fonts,
            double width,
            double height,
            Structure structure)
            throws IOException {
        PDPage sheet = new PDPage(new PDRectangle(Pen.points(width), Pen.points(height)));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            Page page = new Page(stream, type, fonts, height, structure.page(sheet));
            for (Drawn thing : things) {
                page.mark(thing);
            }
        }
    }

    private void mark(Drawn thing) throws IOException {
        if (thing.role().equals(Role.DECORATION)) {
            structure.interrupt();
            page.beginMarkedContent(Structure.name(thing.role()));
        } else {
            page.beginMarkedContent(Structure.name(thing.role()), structure.next(thing));
        }
        draw(thing);
        page.endMarkedContent();
    }

    private void draw(Drawn thing) throws IOException {
        if (thing instanceof Drawn.Words words) {
            draw(words);
        } else if (thing instanceof Drawn.Bar bar) {
            pen.rectangle(bar.box());
            pen.fill();
        } else if (thing instanceof Drawn.Sign sign) {
            signPen.draw(sign);
        } else if (thing instanceof Drawn.Code code) {
            draw(code);
        } else if (thing instanceof Drawn.Line line) {
            pen.line(line);
        }
    }

    private void draw(Drawn.Words words) throws IOException {
        double size = words.capHeight() * type.face(words.weight()).sizeOfCapital();
        page.beginText();
        page.setFont(fonts.get(words.weight()), Pen.points(size));
        page.newLineAtOffset(pen.x(words.box().x()), pen.y(words.box().y() + words.ascent()));
        page.showText(words.text());
        page.endText();
    }

    private void draw(Drawn.Code code) throws IOException {
        for (Box run : code.code().runs()) {
            pen.rectangle(new Box(
                    code.box().x() + run.x() * SquareCode.MODULE,
                    code.box().y() + run.y() * SquareCode.MODULE,
                    run.width() * SquareCode.MODULE,
                    run.height() * SquareCode.MODULE));
        }
        pen.fill();
    }
}
