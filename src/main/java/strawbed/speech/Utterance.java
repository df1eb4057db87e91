package strawbed.speech;

import java.util.List;
import strawbed.audio.Sound;

/**
 * A piece of sound and how it may be read.
 *
 * @param sound what was heard
 * @param hypotheses best first; empty when no word was heard
 */
public record Utterance(Sound sound, List<Hypothesis> hypotheses) {
    public Utterance {
        hypotheses = List.copyOf(hypotheses);
    }
}
