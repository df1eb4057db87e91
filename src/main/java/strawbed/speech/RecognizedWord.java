package strawbed.speech;

import java.time.Duration;

/**
 * A word that was heard.
 *
 * @param text in small letters; {@value #UNKNOWN} for speech that is none of the words asked for
 * @param from when it began, from the start of the sound's source
 * @param to when it ended, likewise, not before it began
 */
public record RecognizedWord(String text, Duration from, Duration to) {
    /** Stands for speech outside the vocabulary. */
    public static final String UNKNOWN = "[unk]";

    public RecognizedWord {
        if (text.isBlank()) {
            throw new IllegalArgumentException("A recognised word has letters");
        }
        if (from.isNegative() || to.compareTo(from) < 0) {
            throw new IllegalArgumentException("The word \"" + text + "\" cannot last from " + from + " to " + to);
        }
    }
}
