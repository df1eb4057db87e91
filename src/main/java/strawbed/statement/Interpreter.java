package strawbed.statement;

import java.util.List;
import java.util.Optional;
import strawbed.speech.Hypothesis;

/** From the readings of an utterance to what it was taken for. Implementations are safe for any thread. */
public interface Interpreter {
    /** What an utterance that stands for itself was taken for. */
    Interpretation interpret(List<Hypothesis> hypotheses, SpeechTime speech, Listening listening);

    /** What was understood before with this utterance added, or empty when the utterance does not go on with it. */
    Optional<Interpretation> continued(
            Interpretation before, List<Hypothesis> hypotheses, SpeechTime speech, Listening listening);

    /**
     * The one outcome of several hearings of the same sound, the plain one first: the meaning found most often; asked
     * about when the hearings dispute it, or when most of them doubt it.
     */
    Interpretation agreed(List<Interpretation> meanings);
}
