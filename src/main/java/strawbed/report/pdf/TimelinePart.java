package strawbed.report.pdf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.report.CardWord;
import strawbed.report.CardWords;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.Timeline;

/** The first 24 hours: a lane for each kind of mark above one axis, black as far as the card knows. */
final class TimelinePart {
    private static final double LABELS_LEAST = 14.5;
    /** Longer words are cut off, so that a long day keeps its room. */
    private static final double LABELS_MOST = 20;

    private static final double ARROW_SLOT = Measures.MARK / 2 + LanePart.ARROW_GAP + LanePart.ARROW;
    private static final double AXIS_GAP = 0.9;
    private static final double PASSED = 1;
    private static final double TICK = 1;
    private static final double LONG_TICK = 1.6;
    private static final double HOUR_TEXT_TOP = LONG_TICK + 0.4;
    private static final double HOUR_TEXT_GAP = 1.4;
    private static final int HOURS = (int) Timeline.LENGTH.toHours();
    private static final int LABELLED_HOURS = 6;

    private final Type type;
    private final Timeline timeline;
    private final Instant printedAt;
    private final CardWords words;
    private final double width;
    private final double labels;
    private final double axisLeft;
    private final double axis;

    TimelinePart(Type type, Timeline timeline, Instant printedAt, double width, CardWords words) {
        this.words = words;
        this.type = type;
        this.timeline = timeline;
        this.printedAt = printedAt;
        this.width = width;
        this.labels = Stream.of(MarkKind.values())
                .mapToDouble(kind -> type.width(label(kind), Weight.BOLD, Measures.NOTE))
                .map(wide -> Math.max(LABELS_LEAST, Math.min(LABELS_MOST, wide)))
                .max()
                .orElse(LABELS_LEAST);
        this.axisLeft = labels + ARROW_SLOT;
        this.axis = width - axisLeft - ARROW_SLOT;
    }

    Block lay(LaneSize size) {
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        for (MarkKind kind : MarkKind.values()) {
            drawn.add(centred(type.tight(lane(kind), Weight.BOLD, Measures.NOTE), y, size));
            lane(kind, size).at(0, y).forEach(drawn::add);
            y += size.height();
        }
        y += AXIS_GAP;
        addAxis(y, drawn);
        double bottom = addHours(y + PASSED, drawn);
        Role figure = Role.figure(spoken());
        return new Block(bottom, drawn.stream().map(thing -> thing.as(figure)).toList());
    }

    /** The same as the drawing tells, kind by kind. */
    private String spoken() {
        String start = words.word(CardWord.FIRST_DAY) + ", " + words.word(start());
        return Stream.of(MarkKind.values())
                .map(kind -> words.word(word(kind)) + ": " + spoken(kind))
                .collect(Collectors.joining("; ", start + ". ", "."));
    }

    private String spoken(MarkKind kind) {
        String marks = timeline.marks().stream()
                .filter(mark -> mark.kind() == kind)
                .sorted(Comparator.comparing(Mark::afterStart))
                .map(this::spoken)
                .collect(Collectors.joining(", "));
        return marks.isEmpty() ? words.word(CardWord.NONE) : marks;
    }

    private String spoken(Mark mark) {
        return Stream.of(mark.clock(), mark.label(), words.word(mark.done() ? CardWord.DONE : CardWord.PLANNED))
                .filter(word -> !word.isBlank())
                .collect(Collectors.joining(" "));
    }

    private CardWord start() {
        return timeline.startIsBirth() ? CardWord.FROM_BIRTH : CardWord.FROM_FIRST_SEEN;
    }

    private Block lane(MarkKind kind, LaneSize size) {
        List<Mark> marks =
                timeline.marks().stream().filter(mark -> mark.kind() == kind).collect(Collectors.toList());
        return new LanePart(type, size, form(kind), Cluster.along(marks, axis), axisLeft, width).lay();
    }

    private static Drawn centred(Drawn.Words words, double y, LaneSize size) {
        return words.moved(0, y + (size.height() - words.box().height()) / 2);
    }

    private void addAxis(double y, List<Drawn> drawn) {
        double passed = axis * passed();
        if (passed > 0) {
            drawn.add(new Drawn.Bar(new Box(axisLeft, y, passed, PASSED)));
        }
        if (passed < axis) {
            double thinTop = y + PASSED - Measures.THIN_LINE;
            drawn.add(new Drawn.Bar(new Box(axisLeft + passed, thinTop, axis - passed, Measures.THIN_LINE)));
        }
    }

    /** How much of the day had passed when the card was printed, from 0 to 1. */
    private double passed() {
        double part = Duration.between(timeline.start(), printedAt).toSeconds() / (double) Timeline.LENGTH.toSeconds();
        return Math.max(0, Math.min(1, part));
    }

    private double addHours(double y, List<Drawn> drawn) {
        double bottom = y;
        double free = axisLeft;
        for (int hour = 0; hour <= HOURS; hour++) {
            boolean labelled = hour % LABELLED_HOURS == 0;
            double x = axisLeft + axis * hour / HOURS;
            double left = Math.min(x, axisLeft + axis - Measures.THIN_LINE);
            drawn.add(new Drawn.Bar(new Box(left, y, Measures.THIN_LINE, labelled ? LONG_TICK : TICK)));
            if (labelled) {
                Drawn.Words text = type.tight(hourWord(hour), Weight.REGULAR, Measures.NOTE_LEAST);
                double shift = text.box().width() * (hour == 0 ? 0 : hour == HOURS ? 1 : 0.5);
                Drawn.Words placed = text.moved(x - shift, y + HOUR_TEXT_TOP);
                if (placed.box().x() >= free) {
                    drawn.add(placed);
                    free = placed.box().right() + HOUR_TEXT_GAP;
                }
                bottom = Math.max(bottom, placed.box().bottom());
            }
        }
        return bottom;
    }

    private String hourWord(int hour) {
        if (hour > 0) {
            return type.regular().printable(words.hours(hour));
        }
        return type.regular().printable(words.word(start()));
    }

    /** The word in front of a lane. */
    private String lane(MarkKind kind) {
        return type.shortened(label(kind), Weight.BOLD, Measures.NOTE, labels);
    }

    private String label(MarkKind kind) {
        return type.bold().printable(words.word(word(kind)));
    }

    private static CardWord word(MarkKind kind) {
        return switch (kind) {
            case FEED -> CardWord.FEED;
            case DIP -> CardWord.NAVEL;
            case CHECK -> CardWord.CHECK;
        };
    }

    private static Form form(MarkKind kind) {
        return switch (kind) {
            case FEED -> Form.CIRCLE;
            case DIP -> Form.SQUARE;
            case CHECK -> Form.TRIANGLE;
        };
    }
}
