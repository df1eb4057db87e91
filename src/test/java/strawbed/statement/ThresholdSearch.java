package strawbed.statement;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import strawbed.speech.Hypothesis;
import strawbed.testkit.Grammars;
import strawbed.testkit.SpokenSentence;

/** Tries thresholds on evidence that was gathered once, for the bench. */
public final class ThresholdSearch {
    /** A wrong record is as bad as so many statements that have to be asked about. */
    private static final double WRONG = 8;

    /** Phrases that were made to sound like ours are said by nobody, so that quiet speech must not pay for them. */
    private static final double WRONG_ON_PURPOSE = 0.5;

    /** Asking about the right statement is nearly as good as taking it: one word answers it. */
    private static final double ASKED_RIGHT = 0.7;

    /** Most is said in quiet, and what is asked there without need is soon not answered any more. */
    private static final double QUIET = 3;

    /** The cell of such phrases. */
    public static final String ON_PURPOSE = "phrases like ours";

    private static final int ROUNDS = 3;

    /**
     * What free speech may do is set by hand: of chatter so few lines are taken that the search would ask about half of
     * what is said in quiet to be rid of one of them.
     */
    private static final Map<String, List<Double>> TRIED = new TreeMap<>(Map.of(
            "lag", List.of(2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0),
            "ask-lag", List.of(6.0, 8.0, 9.0, 10.0, 11.0, 12.0),
            "votes", List.of(0.0, 0.25, 0.5, 0.75, 1.0),
            "margin", List.of(0.25, 0.5, 1.0, 1.5, 2.0, 3.0),
            "other-calf", List.of(0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 8.0),
            "left-out-millis", List.of(240.0, 300.0, 360.0, 420.0, 500.0, 700.0)));

    static {
        TRIED.put("other-value", List.of(0.25, 0.5, 1.0, 1.5, 2.0, 3.0, 4.0));
        TRIED.put("missing", List.of(6.0, 8.0, 10.0, 12.0));
        TRIED.put("plausible", List.of(2.0, 4.0, 6.0, 8.0, 12.0));
    }

    private final UtteranceInterpreter interpreter =
            new UtteranceInterpreter(Grammars.ofTheTable().grammar(), Thresholds.set());
    private final Map<List<String>, Optional<Reading>> known = new HashMap<>();
    private final List<Case> cases;

    /**
     * A sound that was heard.
     *
     * @param cell where: cases of one cell weigh as much as those of any other
     * @param words what was said; null for what is no statement
     */
    public record Case(String cell, @Nullable String words, Evidence evidence) {}

    /** How cases came out. */
    public record Score(int right, int askedRight, int askedWrong, int wrong, int of) {
        double worth(double worst) {
            return (right + ASKED_RIGHT * askedRight - worst * wrong) / of;
        }
    }

    public ThresholdSearch(List<Case> cases) {
        this.cases = List.copyOf(cases);
    }

    /** The scores of each cell, with some of the hearings only. */
    public Map<String, Score> scores(Thresholds thresholds, List<Integer> passes, boolean free, boolean envelope) {
        Map<String, Score> scores = new LinkedHashMap<>();
        for (Case one : cases) {
            scores.merge(
                    one.cell(),
                    score(one, thresholds, some(one.evidence(), passes, free, envelope)),
                    (a, b) -> new Score(
                            a.right + b.right,
                            a.askedRight + b.askedRight,
                            a.askedWrong + b.askedWrong,
                            a.wrong + b.wrong,
                            a.of + b.of));
        }
        return scores;
    }

    private static Evidence some(Evidence all, List<Integer> passes, boolean free, boolean envelope) {
        return new Evidence(
                passes.stream().map(all.passes()::get).toList(),
                free ? all.freeScore() : OptionalDouble.empty(),
                envelope ? all.envelope() : Optional.empty());
    }

    private Score score(Case one, Thresholds thresholds, Evidence evidence) {
        Interpretation meaning = Weighing.of(evidence, thresholds, this::read)
                .map(Weighed::meaning)
                .orElse(new Interpretation.NoMatch(List.of()));
        boolean right = one.words() != null
                && meaning.sense()
                        .equals(read(Grammars.reading(one.words(), 0))
                                .orElseThrow()
                                .meaning()
                                .sense());
        boolean none = meaning instanceof Interpretation.NoMatch;
        boolean asked = meaning instanceof Interpretation.Unsure;
        boolean taken = !none && !asked;
        return new Score(
                taken && right ? 1 : 0, asked && right ? 1 : 0, asked && !right ? 1 : 0, taken && !right ? 1 : 0, 1);
    }

    private Optional<Reading> read(Hypothesis hypothesis) {
        return known.computeIfAbsent(
                hypothesis.texts(),
                words -> interpreter.read(
                        hypothesis,
                        new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE),
                        new Listening(SpokenSentence.OPEN_CALVES, false)));
    }

    /** The best thresholds that a walk along one number at a time finds. */
    public Thresholds best(Thresholds start, List<Integer> passes) {
        Thresholds best = start;
        double worth = worth(best, passes);
        for (int round = 0; round < ROUNDS; round++) {
            for (Map.Entry<String, List<Double>> number : TRIED.entrySet()) {
                for (double value : number.getValue()) {
                    Thresholds tried = best.with(number.getKey(), value);
                    double now = worth(tried, passes);
                    if (now > worth + 1e-9) {
                        best = tried;
                        worth = now;
                    }
                }
            }
        }
        return best;
    }

    private double worth(Thresholds thresholds, List<Integer> passes) {
        return scores(thresholds, passes, true, true).entrySet().stream()
                .mapToDouble(cell -> (cell.getKey().equals("quiet") ? QUIET : 1)
                        * cell.getValue().worth(cell.getKey().equals(ON_PURPOSE) ? WRONG_ON_PURPOSE : WRONG))
                .sum();
    }
}
