package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One lane of the timeline: the signs of one kind, each with as many of its words as there is room for. */
final class LanePart {
    static final double ARROW = 2;
    static final double ARROW_GAP = 0.4;

    private static final double TEXT_GAP = 0.9;
    private static final double NEIGHBOUR_GAP = 1.4;

    private final Type type;
    private final LaneSize size;
    private final Form form;
    private final List<Cluster> clusters;
    private final double axisLeft;
    private final double right;

    /**
     * @param axisLeft where the axis begins
     * @param right the right edge of the lane, behind the slot for an arrow
     */
    LanePart(Type type, LaneSize size, Form form, List<Cluster> clusters, double axisLeft, double right) {
        this.type = type;
        this.size = size;
        this.form = form;
        this.clusters = clusters;
        this.axisLeft = axisLeft;
        this.right = right;
    }

    Block lay() {
        List<Drawn> drawn = new ArrayList<>();
        double occupied = axisLeft - Measures.MARK / 2;
        for (int i = 0; i < clusters.size(); i++) {
            Cluster cluster = clusters.get(i);
            double left = signLeft(cluster);
            drawn.add(sign(left, form, Measures.MARK, cluster.done()));
            if (i == 0 && cluster.early()) {
                drawn.add(sign(left - ARROW_GAP - ARROW, Form.ARROW_LEFT, ARROW, true));
            }
            double end = left + Measures.MARK;
            double limit = i + 1 < clusters.size() ? signLeft(clusters.get(i + 1)) - NEIGHBOUR_GAP : right;
            if (i == clusters.size() - 1 && cluster.late()) {
                drawn.add(sign(end + ARROW_GAP, Form.ARROW_RIGHT, ARROW, true));
                limit = end;
            }
            Optional<Drawn.Words> words = words(cluster, occupied, left, end, limit);
            words.ifPresent(drawn::add);
            occupied = Math.max(end, words.map(w -> w.box().right()).orElse(end)) + NEIGHBOUR_GAP;
        }
        return new Block(size.height(), drawn);
    }

    private double signLeft(Cluster cluster) {
        return axisLeft + cluster.centre() - Measures.MARK / 2;
    }

    private Drawn sign(double left, Form form, double side, boolean filled) {
        return new Drawn.Sign(new Box(left, (size.height() - side) / 2, side, side), form, filled);
    }

    /** The fullest words that fit behind the sign, else before it. */
    private Optional<Drawn.Words> words(Cluster cluster, double occupied, double left, double end, double limit) {
        for (String caption : cluster.captions()) {
            String text = type.bold().printable(caption);
            if (text.isEmpty()) {
                continue;
            }
            double width = type.width(text, Weight.BOLD, size.text());
            if (end + TEXT_GAP + width <= limit) {
                return Optional.of(words(text, end + TEXT_GAP));
            }
            if (left - TEXT_GAP - width >= occupied) {
                return Optional.of(words(text, left - TEXT_GAP - width));
            }
        }
        return Optional.empty();
    }

    private Drawn.Words words(String text, double left) {
        Drawn.Words words = type.line(text, Weight.BOLD, size.text());
        return words.moved(left, size.height() / 2 + size.text() / 2 - words.ascent());
    }
}
