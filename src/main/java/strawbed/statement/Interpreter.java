package strawbed.statement;

import java.util.List;
import java.util.Optional;
import strawbed.speech.Hypothesis;

/** From the readings of an utterance to what it was taken for. Implementations are safe for any thread. */
public interface Interpreter {
    /** What an utterance that stands for itself was taken for. */
    Interpretation interpret(Evidence evidence, SpeechTime speech, Listening listening);

    /**
     * What of the sound speaks against that meaning; empty when nothing does, and when no reading of it means anything.
     */
    List<Misgiving> misgivings(Evidence evidence, SpeechTime speech, Listening listening);

    /** The same of one hearing alone. */
    default Interpretation interpret(List<Hypothesis> hypotheses, SpeechTime speech, Listening listening) {
        return interpret(Evidence.of(hypotheses), speech, listening);
    }

    /** What was understood before with this utterance added, or empty when the utterance does not go on with it. */
    Optional<Interpretation> continued(
            Interpretation before, List<Hypothesis> hypotheses, SpeechTime speech, Listening listening);

    /** Whether some sentence begins with all these words, or is them; true for none. */
    boolean begins(List<String> words);
}
