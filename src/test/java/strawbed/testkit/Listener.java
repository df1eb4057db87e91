package strawbed.testkit;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import strawbed.event.Event;
import strawbed.speech.Hypothesis;
import strawbed.statement.Doubt;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SaidFact;
import strawbed.statement.SpeechTime;
import strawbed.statement.Thresholds;
import strawbed.statement.UtteranceInterpreter;

/** Understands words as the recorder does on the table's farm, at a chosen time. */
public final class Listener {
    /** Thresholds that the tests count with, wherever the bench sets the program's. */
    public static final Thresholds THRESHOLDS = new Thresholds(8, 20, 10, 16, 0.3, 1, 4, 2, 12, 0.5, 30, 1, 2, 360);

    /** Made once: it takes long. */
    public static final UtteranceInterpreter INTERPRETER =
            new UtteranceInterpreter(Grammars.ofTheTable().grammar(), THRESHOLDS);

    private final Instant now;
    private final boolean sameCalf;
    private final Set<String> calves;

    private Listener(Instant now, boolean sameCalf, Set<String> calves) {
        this.now = now;
        this.sameCalf = sameCalf;
        this.calves = calves;
    }

    /** When the table's sentences were spoken, with no calf named before. */
    public static Listener onTheTablesFarm() {
        return new Listener(SpokenSentence.SPOKEN_AT, false, SpokenSentence.OPEN_CALVES);
    }

    public static Listener at(Instant now) {
        return new Listener(now, false, SpokenSentence.OPEN_CALVES);
    }

    public Listener afterACalfWasNamed() {
        return new Listener(now, true, calves);
    }

    public SpeechTime speech() {
        return new SpeechTime(now, SpokenSentence.ZONE);
    }

    public Listening listening() {
        return new Listening(calves, sameCalf);
    }

    /** Readings of one sound, each 10 better than the next. */
    public Interpretation hears(String... readings) {
        int count = readings.length;
        return hears(Arrays.stream(readings)
                .map(words -> Grammars.reading(
                        words, 10.0 * (count - Arrays.asList(readings).indexOf(words))))
                .toList());
    }

    public Interpretation hears(List<Hypothesis> readings) {
        return INTERPRETER.interpret(readings, speech(), listening());
    }

    /** The facts of a sentence that must be understood. */
    public List<SaidFact> facts(String words) {
        Interpretation meaning = hears(words);
        if (meaning instanceof Interpretation.Understood understood) {
            return understood.statement().facts();
        }
        throw new AssertionError("not understood: \"" + words + "\" -> " + meaning);
    }

    /** The only fact of a sentence that must be understood. */
    public SaidFact fact(String words) {
        List<SaidFact> facts = facts(words);
        if (facts.size() != 1) {
            throw new AssertionError("not one fact: \"" + words + "\" -> " + facts);
        }
        return facts.get(0);
    }

    /** The only event of a sentence that must be understood. */
    public Event event(String words) {
        return fact(words).event();
    }

    /** What would be asked; nothing when it is understood. */
    public List<Doubt> doubts(String... readings) {
        Interpretation meaning = hears(readings);
        if (meaning instanceof Interpretation.Unsure unsure) {
            return unsure.doubts();
        }
        if (meaning instanceof Interpretation.Understood) {
            return List.of();
        }
        throw new AssertionError("no statement: " + List.of(readings) + " -> " + meaning);
    }
}
