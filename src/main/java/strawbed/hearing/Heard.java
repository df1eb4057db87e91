package strawbed.hearing;

import strawbed.audio.Sound;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.SpeechTime;

/**
 * An utterance that came to its end.
 *
 * @param sound what was heard, all parts of it
 * @param meaning what it was taken for
 * @param speech when speech began
 * @param evidence how it was heard; of one that goes on with more facts, how these were
 * @param goesOn whether this takes the place of the one before, because the speaker went on after a pause
 */
public record Heard(Sound sound, Interpretation meaning, SpeechTime speech, Evidence evidence, boolean goesOn) {}
