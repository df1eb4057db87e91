package strawbed.hearing;

import java.util.List;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.SpeechTime;

/** A stretch of speech between pauses, with what it was taken for on its own. */
record Part(Sound sound, Evidence evidence, SpeechTime speech, Interpretation meaning) {
    /** As it is without what was said before it. */
    Heard alone() {
        return new Heard(sound, meaning, speech, evidence, false);
    }

    /** The readings of the sound as it is. */
    List<Hypothesis> hypotheses() {
        return evidence.plain();
    }

    /** Whether the best reading is speech of our words alone. */
    boolean hasOnlyKnownWords() {
        return !hypotheses().isEmpty() && !hypotheses().get(0).texts().contains(RecognizedWord.UNKNOWN);
    }
}
