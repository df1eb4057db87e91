package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CalfHead;

/** The head of a lying card: the number as large as it goes, beside it who the calf is, and the square code in the corner. */
final class LyingHead implements Head {
    /** The part of the width that the number of a living calf may take. */
    static final double READ_FROM_AFAR = 0.45;

    /** Of a dead one nobody looks for it from afar, and the words need the room. */
    static final double READ_IN_HAND = 0.35;

    private static final double GAP = 6;
    private static final double WANTED = 30;

    private final Type type;
    private final CalfHead head;
    private final SquareCode code;
    private final double width;
    private final double numberShare;

    /** @param numberShare the part of the width that the number may take */
    LyingHead(Type type, CalfHead head, double width, double numberShare) {
        this.numberShare = numberShare;
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
        return numberShare == READ_IN_HAND ? lay(Double.MAX_VALUE).height() : WANTED;
    }

    @Override
    public Block lay(double height) {
        Drawn.Words number = NumberPart.of(type, head.number(), width * numberShare, height);
        double identityLeft = number.box().right() + GAP;
        double codeLeft = width - code.side();
        Block identity = new IdentityPart(type, head, codeLeft - SquareCode.GAP - identityLeft).lay(height);
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(number.as(Role.TITLE));
        identity.at(identityLeft, 0).forEach(drawn::add);
        drawn.add(new Drawn.Code(new Box(codeLeft, 0, code.side(), code.side()), code, Role.figure(head.code())));
        double used = Math.max(number.box().height(), identity.height());
        return new Block(Math.max(used, code.side()), drawn);
    }
}
