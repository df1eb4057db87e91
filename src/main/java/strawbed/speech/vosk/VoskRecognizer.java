package strawbed.speech.vosk;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.vosk.Model;
import org.vosk.Recognizer;
import strawbed.audio.Sound;
import strawbed.speech.Lexicon;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Utterance;
import strawbed.speech.Vocabulary;

/** Vosk with one vocabulary. Owned by one thread: two in the native recogniser at once crash the program. */
final class VoskRecognizer implements SpeechRecognizer {
    /** Quiet put before and after each sound: tightly cut words lose their first and last phone without it. */
    private static final int PADDING = Sound.RATE * 3 / 10;

    private final Recognizer recognizer;
    private final Lexicon lexicon;
    private long samplesFed;
    private boolean closed;

    VoskRecognizer(Model model, Vocabulary vocabulary, int alternatives) {
        this(newRecognizer(model, json(vocabulary)), vocabulary.lexicon(), alternatives);
    }

    /** For any words. Without alternatives Vosk gives no likelihood that could be compared, so it is asked for one. */
    VoskRecognizer(Model model) {
        this(newRecognizer(model), Lexicon.empty(), 1);
    }

    private VoskRecognizer(Recognizer recognizer, Lexicon lexicon, int alternatives) {
        this.recognizer = recognizer;
        this.lexicon = lexicon;
        recognizer.setWords(true);
        recognizer.setMaxAlternatives(alternatives);
    }

    private static Recognizer newRecognizer(Model model, String... grammar) {
        try {
            return grammar.length == 0
                    ? new Recognizer(model, Sound.RATE)
                    : new Recognizer(model, Sound.RATE, grammar[0]);
        } catch (IOException e) {
            throw new ModelException("The speech model does not take this vocabulary; start again.", e);
        }
    }

    private static String json(Vocabulary vocabulary) {
        List<String> sentences = Stream.concat(
                        vocabulary.spokenSentences().stream().map(words -> String.join(" ", words)),
                        Stream.of(RecognizedWord.UNKNOWN))
                .toList();
        try {
            return JSON.std.asString(sentences);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Utterance recognize(Sound sound) {
        if (closed) {
            throw new IllegalStateException("The recogniser is closed");
        }
        // All in one call: only at the end of a call does Vosk look for the end of an utterance, so it never splits.
        short[] padded = new short[sound.length() + 2 * PADDING];
        System.arraycopy(sound.copySamples(), 0, padded, PADDING, sound.length());
        recognizer.acceptWaveForm(padded, padded.length);
        ResultReader reader = new ResultReader(sound, samplesFed + PADDING);
        // Its clock runs on from one utterance to the next.
        samplesFed += padded.length;
        return new Utterance(
                sound,
                reader.hypotheses(recognizer.getFinalResult()).stream()
                        .map(lexicon::toWritten)
                        .toList());
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            recognizer.close();
        }
    }
}
