package strawbed.hearing;

import java.util.Optional;
import strawbed.speech.SpeechRecognizer;

/**
 * Who listens. Closed by whoever made them.
 *
 * @param ours hears the farm's sentences only
 * @param any hears any words of the language, as a second opinion; empty to go without
 */
public record Recognizers(SpeechRecognizer ours, Optional<SpeechRecognizer> any) {
    /** One that hears the farm's sentences, without a second opinion. */
    public static Recognizers alone(SpeechRecognizer ours) {
        return new Recognizers(ours, Optional.empty());
    }
}
