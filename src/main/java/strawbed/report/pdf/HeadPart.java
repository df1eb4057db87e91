package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.report.CalfCard;

/** The head of the card: the number as large as it goes, who the calf is, and the square code in the corner. */
final class HeadPart {
    /** The part of the width the number may take. */
    private static final double NUMBER_SHARE = 0.45;

    private static final double GAP = 6;
    private static final double CODE_GAP = SquareCode.QUIET_ZONE + 1;
    private static final double UNDER_SEX = 1;
    private static final double TWIN_GAP = 4;
    private static final List<Double> SIZES = List.of(3.8, 3.5, Measures.READ, 3.0, Measures.NOTE);

    private final Type type;
    private final CalfCard card;
    private final SquareCode code;

    HeadPart(Type type, CalfCard card, SquareCode code) {
        this.type = type;
        this.card = card;
        this.code = code;
    }

    /** The least height that leaves the code its white border above whatever comes under the head. */
    double least(double whiteBelow) {
        return code.side() + Math.max(0, SquareCode.QUIET_ZONE - whiteBelow);
    }

    Block lay(double width, double height) {
        Drawn.Words number = number(width * NUMBER_SHARE, Math.min(height, Measures.NUMBER));
        double identityLeft = number.box().right() + GAP;
        double codeLeft = width - code.side();
        Block identity = identity(codeLeft - CODE_GAP - identityLeft, height);
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(number.as(Role.TITLE));
        identity.at(identityLeft, 0).forEach(drawn::add);
        drawn.add(new Drawn.Code(new Box(codeLeft, 0, code.side(), code.side()), code));
        double used = Math.max(number.box().height(), identity.height());
        return new Block(Math.max(used, code.side()), drawn);
    }

    private Drawn.Words number(double width, double height) {
        String text = type.bold().printable(card.number());
        Drawn.Words one = type.tight(text, Weight.BOLD, 1);
        double capHeight =
                Math.min(width / one.box().width(), height / one.box().height());
        if (capHeight < Measures.NUMBER_LEAST) {
            String shorter = type.shortened(text, Weight.BOLD, Measures.NUMBER_LEAST, width);
            return type.tight(shorter, Weight.BOLD, Measures.NUMBER_LEAST);
        }
        return type.tight(text, Weight.BOLD, capHeight);
    }

    private Block identity(double width, double height) {
        Block large = identity(width, height, Measures.SEX);
        return large.height() <= height ? large : identity(width, height, Measures.READ);
    }

    private Block identity(double width, double height, double sexSize) {
        Drawn.Words sex = sex(width, sexSize);
        Optional<Drawn.Words> twin = card.twin()
                .map(words -> twin(words, sex))
                .filter(words -> words.box().right() <= width);
        List<Drawn> drawn = new ArrayList<>();
        double down = Math.max(0, -twin.map(words -> words.box().y()).orElse(0.0));
        drawn.add(sex.moved(0, down));
        twin.ifPresent(words -> drawn.add(words.moved(0, down)));
        double top = down + sex.box().height() + UNDER_SEX;
        boolean last = sexSize == Measures.READ;
        Block lines = lines(paragraphs(twin.isPresent()), width, height - top, last);
        lines.at(0, top).forEach(drawn::add);
        return new Block(top + lines.height(), drawn);
    }

    /** The twin's words beside the sex, on the same line. */
    private Drawn.Words twin(String words, Drawn.Words sex) {
        String text = type.bold().printable(words);
        Drawn.Words twin = type.tight(text, Weight.BOLD, Measures.READ);
        return twin.moved(sex.box().right() + TWIN_GAP, sex.ascent() - twin.ascent());
    }

    private Drawn.Words sex(double width, double size) {
        String text = type.bold().printable(card.sex());
        double fitting = size * width / type.width(text, Weight.BOLD, size);
        double capHeight = Math.max(Measures.READ, Math.min(size, fitting));
        return type.tight(type.shortened(text, Weight.BOLD, capHeight, width), Weight.BOLD, capHeight);
    }

    /** In the largest size that takes no more lines than the smallest; cut off to the room only if asked. */
    private Block lines(List<List<Run>> paragraphs, double width, double room, boolean cutOff) {
        Block smallest = lines(paragraphs, width, Measures.NOTE_LEAST, Integer.MAX_VALUE);
        double count = smallest.height() / (Measures.NOTE_LEAST * Typeface.LINE);
        for (double capHeight : SIZES) {
            Block block = lines(paragraphs, width, capHeight, Integer.MAX_VALUE);
            if (block.height() <= room && block.height() < (count + 0.5) * capHeight * Typeface.LINE) {
                return block;
            }
        }
        int most = cutOff ? (int) (room / (Measures.NOTE_LEAST * Typeface.LINE)) : Integer.MAX_VALUE;
        return lines(paragraphs, width, Measures.NOTE_LEAST, most);
    }

    /** Each paragraph gets the lines it needs as long as one is left for each that follows. */
    private Block lines(List<List<Run>> paragraphs, double width, double capHeight, int most) {
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        int left = most;
        int waiting = paragraphs.size();
        for (List<Run> runs : paragraphs) {
            waiting--;
            Block paragraph = Paragraph.ofLines(type, runs, capHeight, width, Math.max(1, left - waiting));
            paragraph.at(0, y).forEach(drawn::add);
            y += paragraph.height();
            left -= (int) Math.round(paragraph.height() / (capHeight * Typeface.LINE));
        }
        return new Block(y, drawn);
    }

    private List<List<Run>> paragraphs(boolean twinIsBeside) {
        List<Run> family = new ArrayList<>(Run.labelled("Dam", card.dam()));
        if (!twinIsBeside) {
            card.twin().ifPresent(twin -> family.addAll(Run.bold(twin)));
        }
        return List.of(Run.labelled("Born", card.born()), family, Run.labelled("Birth", card.birth()));
    }
}
