package strawbed.report.pdf;

import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Draws what the layout placed, in order, black on a page of the paper's size. */
final class CardPage {
    private final Type type;
    private final Map<Weight, PDFont> fonts = new EnumMap<>(Weight.class);
    private final PDPageContentStream page;
    private final Pen pen;
    private final SignPen signPen;

    private CardPage(PDDocument document, PDPageContentStream page, Type type, double paperHeight) throws IOException {
        this.type = type;
        this.page = page;
        this.pen = new Pen(page, paperHeight);
        this.signPen = new SignPen(pen);
        for (Weight weight : Weight.values()) {
            fonts.put(weight, PDType0Font.load(document, type.face(weight).font(), true));
        }
    }

    static void add(PDDocument document, List<Drawn> things, Type type, CardPaper paper) throws IOException {
        add(document, things, type, paper.width(), paper.height());
    }

    /** A page of any size, in millimetres. */
    static void add(PDDocument document, List<Drawn> things, Type type, double width, double height)
            throws IOException {
        PDPage sheet = new PDPage(new PDRectangle(Pen.points(width), Pen.points(height)));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            CardPage page = new CardPage(document, stream, type, height);
            for (Drawn thing : things) {
                page.draw(thing);
            }
        }
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
