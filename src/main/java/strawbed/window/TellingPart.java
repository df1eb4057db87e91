package strawbed.window;

import java.awt.Graphics2D;
import java.util.List;
import strawbed.station.Body;

/** The calf's number for two metres, and beside it (upright: below it) what was understood. */
final class TellingPart extends Part {
    private static final long serialVersionUID = 1;
    private static final double NUMBER_SHARE = 0.36;

    private final transient Body.Telling telling;

    TellingPart(Body.Telling telling, Paint paint) {
        super(paint, (telling.number() + ". " + telling.text()).replaceFirst("^\\. ", ""));
        this.telling = telling;
    }

    private double numberWidth() {
        if (telling.number().isEmpty()) {
            return 0;
        }
        return paint.isUpright() ? getWidth() : getWidth() * NUMBER_SHARE;
    }

    private Fitted number() {
        double height = paint.isUpright() ? getHeight() * 0.3 : getHeight();
        return paint.bold(
                telling.number(), numberWidth(), height, Math.max(Measures.FAR_CAPITALS, 32), Measures.FAR_CAPITALS);
    }

    private double textTop() {
        return paint.isUpright() && !telling.number().isEmpty() ? number().height() + paint.px(Measures.GAP) : 0;
    }

    private double textLeft() {
        return paint.isUpright() || telling.number().isEmpty() ? 0 : numberWidth() + paint.px(Measures.GAP);
    }

    private Fitted text() {
        return paint.regular(
                telling.text(),
                getWidth() - textLeft(),
                getHeight() - textTop(),
                Measures.NEAR_CAPITALS * 1.25,
                Measures.LEAST_CAPITALS * 0.8);
    }

    @Override
    List<Double> farCapitals() {
        return telling.number().isEmpty() ? List.of() : List.of(number().capitals());
    }

    @Override
    boolean fits() {
        return text().fits() && (telling.number().isEmpty() || number().fits());
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().ink());
        if (!telling.number().isEmpty()) {
            Fitted number = number();
            double top = paint.isUpright() ? 0 : (getHeight() - number.capitals()) / 2;
            Brush.write(g, number, 0, top);
        }
        Fitted text = text();
        double room = getHeight() - textTop() - text.height();
        Brush.write(g, text, textLeft(), textTop() + Math.max(0, room / 2));
    }
}
