package strawbed.report.pdf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strawbed.report.CalfCard;

/**
 * Places a card's words and signs on the sheet: head, cautions, first day, what to do, facts, last lines.
 *
 * <p>The lower parts take what they need, the head and its number get the rest; what even the head cannot use becomes
 * white around the rules, and under the tasks, where a pen may add one.
 */
final class CardLayout {
    static final double RULE_GAP = 1.2;
    private static final double RULE_GAP_MOST = 2.6;
    private static final double TO_DO_LEAST = 2 * Measures.TICK_BOX + 1.2;
    private static final double PART_GAP = 1;

    private final Type type;
    private final CalfCard card;
    private final double width;
    private final double height;
    private final Head head;
    private final List<Plan> plans;
    private final CautionPart cautionPart;
    private final TimelinePart timelinePart;

    private final FactPart factPart;
    private final Block footer;
    private final Map<LaneSize, Block> timelines = new EnumMap<>(LaneSize.class);
    private final Map<Integer, Block> facts = new HashMap<>();
    private final boolean hasCautions;

    private CardLayout(Type type, CalfCard card, CardPaper paper, Instant printedAt) {
        this.type = type;
        this.card = card;
        width = paper.width() - 2 * Measures.MARGIN;
        height = paper.height() - 2 * Measures.MARGIN;
        head = paper.isUpright()
                ? new UprightHead(type, card.head(), width)
                : new LyingHead(type, card.head(), width, LyingHead.READ_FROM_AFAR);
        plans = paper.isUpright() ? Plan.standing(head, RULE_GAP) : Plan.lying(head, RULE_GAP);
        cautionPart = new CautionPart(type, card.cautions(), width, card.words());
        timelinePart = new TimelinePart(type, card.timeline(), printedAt, width, card.words());

        factPart = new FactPart(type, card.facts(), width, card.words());
        footer = new FooterPart(type, card.foot(), card.words(), true).lay(width);
        hasCautions = !card.cautions().isEmpty();
    }

    /** Everything on the card, in the order of reading. */
    static List<Drawn> of(Type type, CalfCard card, CardPaper paper, Instant printedAt) {
        return new CardLayout(type, card, paper, printedAt).lay();
    }

    private List<Drawn> lay() {
        Plan last = plans.get(plans.size() - 1);
        return lay(plans.stream().filter(this::holdsEverything).findFirst().orElse(last));
    }

    private boolean holdsEverything(Plan plan) {
        return plan.head() + cautionPart.needed() + toDoPart(plan).needed(plan.taskColumns()) <= room(plan);
    }

    /** The height left for head, cautions and tasks. */
    private double room(Plan plan) {
        double lower = timeline(plan).height() + PART_GAP + foot(plan).height();
        return height - lower - rules() * ruled(RULE_GAP);
    }

    private Block timeline(Plan plan) {
        return timelines.computeIfAbsent(plan.lanes(), timelinePart::lay);
    }

    private Block foot(Plan plan) {
        return FootPart.of(facts.computeIfAbsent(plan.factLines(), factPart::lay), footer);
    }

    private ToDoPart toDoPart(Plan plan) {
        return new ToDoPart(type, card.toDos(), width, plan.tasks(), card.words());
    }

    private int rules() {
        return hasCautions ? 3 : 2;
    }

    private List<Drawn> lay(Plan plan) {
        double room = room(plan);
        ToDoPart toDoPart = toDoPart(plan);
        Block cautions = hasCautions ? cautionPart.lay(cautionRoom(plan, room - plan.head())) : Block.EMPTY;
        room -= cautions.height();
        Block toDos = toDoPart.lay(room - plan.head());
        room -= toDos.height();
        Block top = head.lay(room);
        double headHeight = Math.max(top.height(), head.least(RULE_GAP));
        double spare = room - headHeight;
        double ruleGap = Math.min(RULE_GAP_MOST, RULE_GAP + spare / (2 * rules()));
        Block timeline = timeline(plan);
        List<Block> ruled = hasCautions ? List.of(cautions, timeline, toDos) : List.of(timeline, toDos);
        return place(top, headHeight, ruled, ruleGap, foot(plan));
    }

    /** Large where everything has room; else small, before a task is left out. */
    private double cautionRoom(Plan plan, double room) {
        ToDoPart toDoPart = toDoPart(plan);
        if (holdsEverything(plan)) {
            return room - toDoPart.needed(plan.taskColumns());
        }
        double toDoLeast = Math.min(TO_DO_LEAST, toDoPart.lay(TO_DO_LEAST).height());
        return Math.min(cautionPart.needed(), room - toDoLeast);
    }

    private List<Drawn> place(Block top, double headHeight, List<Block> ruled, double ruleGap, Block foot) {
        List<Drawn> drawn = new ArrayList<>(top.drawn());
        double y = headHeight;
        for (Block block : ruled) {
            drawn.add(new Drawn.Bar(new Box(0, y + ruleGap, width, Measures.RULE)));
            y += ruled(ruleGap);
            block.at(0, y).forEach(drawn::add);
            y += block.height();
        }
        foot.at(0, height - foot.height()).forEach(drawn::add);
        return drawn.stream()
                .map(thing -> thing.moved(Measures.MARGIN, Measures.MARGIN))
                .toList();
    }

    static double ruled(double gap) {
        return gap + Measures.RULE + gap;
    }
}
