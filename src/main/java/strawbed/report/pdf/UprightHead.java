package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CalfHead;

/** The head of a standing card: the number over the whole width, under it who the calf is and the square code. */
final class UprightHead implements Head {
    private static final double GAP = 3;
    /** Read from three metres: capitals of 30 arc-minutes. Our own choice; ISO 9241-3 as quoted calls 20 comfortable. */
    private static final double NUMBER_FROM_AFAR = 26.01;

    private final Type type;
    private final CalfHead head;
    private final SquareCode code;
    private final IdentityPart identity;
    private final double width;

    UprightHead(Type type, CalfHead head, double width) {
        this.type = type;
        this.head = head;
        this.code = SquareCode.of(head.code());
        this.width = width;
        this.identity = new IdentityPart(type, head, width - code.side() - SquareCode.GAP);
    }

    @Override
    public double least(double whiteBelow) {
        return number(NUMBER_FROM_AFAR).box().height() + GAP + Math.max(identity.least(), codeAndWhite(whiteBelow));
    }

    @Override
    public double wanted() {
        return number(Measures.NUMBER).box().height() + GAP + words(Double.MAX_VALUE);
    }

    private double codeAndWhite(double whiteBelow) {
        return code.side() + Math.max(0, SquareCode.QUIET_ZONE - whiteBelow);
    }

    /** What the words take of this height, or the code if it takes more. */
    private double words(double height) {
        return Math.max(identity.lay(height).height(), codeAndWhite(CardLayout.RULE_GAP));
    }

    /** With capitals no higher than that, and no wider than the card. */
    private Drawn.Words number(double capHeight) {
        String text = type.bold().printable(head.number());
        double height = type.tight(text, Weight.BOLD, capHeight).box().height();
        return NumberPart.of(type, head.number(), width, height);
    }

    /** The words have what they want before the number grows over what is read from afar. */
    @Override
    public Block lay(double height) {
        double forNumber = height - GAP - words(Double.MAX_VALUE);
        double ofCapital = type.tight(type.bold().printable(head.number()), Weight.BOLD, 1)
                .box()
                .height();
        Drawn.Words number = number(Math.max(NUMBER_FROM_AFAR, Math.min(Measures.NUMBER, forNumber / ofCapital)));
        double top = number.box().height() + GAP;
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(number.as(Role.TITLE));
        drawn.add(new Drawn.Code(
                new Box(width - code.side(), top, code.side(), code.side()), code, Role.figure(head.code())));
        Block words = identity.lay(height - top);
        words.at(0, top).forEach(drawn::add);
        return new Block(top + Math.max(words.height(), codeAndWhite(CardLayout.RULE_GAP)), drawn);
    }
}
