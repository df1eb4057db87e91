package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CalfHead;

/** The head of a lying card: the number as large as it goes, beside it who the calf is, and the square code in the corner. */
final class LyingHead implements Head {
    /** The part of the width the number may take. */
    private static final double NUMBER_SHARE = 0.45;

    private static final double GAP = 6;
    private static final double WANTED = 30;

    private final Type type;
    private final CalfHead head;
    private final SquareCode code;
    private final double width;

    LyingHead(Type type, CalfHead head, double width) {
        this.type = type;
        this.head = head;
        this.code = SquareCode.of(head.code());
        this.width = width;
    }

    @Override
    public double least(double whiteBelow) {
        return code.side() + Math.max(0, SquareCode.QUIET_ZONE - whiteBelow);
    }

    @Override
    public double wanted() {
        return WANTED;
    }

    @Override
    public Block lay(double height) {
        Drawn.Words number = NumberPart.of(type, head.number(), width * NUMBER_SHARE, height);
        double identityLeft = number.box().right() + GAP;
        double codeLeft = width - code.side();
        Block identity = new IdentityPart(type, head, codeLeft - SquareCode.GAP - identityLeft).lay(height);
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(number);
        identity.at(identityLeft, 0).forEach(drawn::add);
        drawn.add(new Drawn.Code(new Box(codeLeft, 0, code.side(), code.side()), code));
        double used = Math.max(number.box().height(), identity.height());
        return new Block(Math.max(used, code.side()), drawn);
    }
}
