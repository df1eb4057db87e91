package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CalfHead;

/** The head of a standing card: number and square code side by side, under them who the calf is. */
final class UprightHead implements Head {
    private static final double GAP = 3;

    private final SquareCode code;
    private final Drawn.Words number;
    private final IdentityPart identity;
    private final double width;

    UprightHead(Type type, CalfHead head, double width) {
        this.code = SquareCode.of(head.code());
        this.width = width;
        this.number = NumberPart.of(type, head.number(), width - code.side() - SquareCode.GAP, Measures.NUMBER);
        this.identity = new IdentityPart(type, head, width);
    }

    @Override
    public double least(double whiteBelow) {
        return top() + identity.least();
    }

    @Override
    public double wanted() {
        return top() + identity.lay(Double.MAX_VALUE).height();
    }

    /** The height of number and code with the white below. */
    private double top() {
        return Math.max(number.box().height(), code.side()) + GAP;
    }

    @Override
    public Block lay(double height) {
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(number);
        drawn.add(new Drawn.Code(new Box(width - code.side(), 0, code.side(), code.side()), code));
        Block words = identity.lay(height - top());
        words.at(0, top()).forEach(drawn::add);
        return new Block(top() + words.height(), drawn);
    }
}
