package strawbed.speech.vosk;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vosk.Model;
import org.vosk.Recognizer;
import strawbed.audio.Sound;
import strawbed.speech.Ending;
import strawbed.speech.Hypothesis;
import strawbed.speech.Lexicon;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Vocabulary;

/** Vosk with one vocabulary. For one thread at a time: two at once in one native recogniser crash the program. */
final class VoskRecognizer implements SpeechRecognizer {
    /** Quiet put before each sound, and after one that is cut off: words lose their first and last phone without it. */
    private static final short[] PADDING = new short[Sound.RATE * 3 / 10];

    private final Recognizer recognizer;
    private final NativeHeap heap;
    private final Lexicon lexicon;
    private long samplesFed;
    private @Nullable Sound utterance;

    /** Vosk thought that the utterance was over, and what it heard before is gone. */
    private boolean split;

    private boolean closed;

    /**
     * For a vocabulary.
     *
     * @param json its sentences, as {@link #json} writes them
     */
    VoskRecognizer(Model model, NativeHeap heap, String json, Lexicon lexicon, int alternatives) {
        this(newRecognizer(model, json), heap, lexicon, alternatives);
    }

    /** For any words. Without alternatives Vosk gives no likelihood that could be compared, so it is asked for one. */
    VoskRecognizer(Model model, NativeHeap heap) {
        this(newRecognizer(model), heap, Lexicon.empty(), 1);
    }

    private VoskRecognizer(Recognizer recognizer, NativeHeap heap, Lexicon lexicon, int alternatives) {
        this.recognizer = recognizer;
        this.heap = heap;
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

    /** A vocabulary as Vosk takes it. */
    static String json(Vocabulary vocabulary) {
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
    public void accept(Sound block) {
        requireOpen();
        if (utterance == null) {
            utterance = block;
            feed(PADDING);
        } else {
            utterance = utterance.join(block);
        }
        feed(block.copySamples());
    }

    @Override
    public List<String> wordsSoFar() {
        requireOpen();
        if (utterance == null) {
            return List.of();
        }
        List<RecognizedWord> spoken = ResultReader.wordsSoFar(recognizer.getPartialResult()).stream()
                .map(word -> new RecognizedWord(word, Duration.ZERO, Duration.ZERO))
                .toList();
        return lexicon.toWritten(spoken).stream().map(RecognizedWord::text).toList();
    }

    @Override
    public List<Hypothesis> finish(Ending ending) {
        requireOpen();
        if (utterance == null) {
            return List.of();
        }
        Sound sound = utterance;
        short[] behind = ending == Ending.CUT_OFF ? PADDING : new short[0];
        if (split) {
            // All in one call: only at the end of a call does Vosk look for the end of an utterance, so it never
            // splits.
            forget();
            short[] whole = new short[PADDING.length + sound.length() + behind.length];
            System.arraycopy(sound.copySamples(), 0, whole, PADDING.length, sound.length());
            feed(whole);
        } else if (behind.length > 0) {
            feed(behind);
        }
        ResultReader reader = new ResultReader(sound, samplesFed - behind.length - sound.length());
        List<Hypothesis> hypotheses = reader.hypotheses(recognizer.getFinalResult()).stream()
                .map(lexicon::toWritten)
                .toList();
        done();
        return hypotheses;
    }

    @Override
    public void forget() {
        requireOpen();
        if (utterance != null) {
            // A reset would keep what the recogniser learnt of the voice: the next utterance shall not depend on this
            // one.
            recognizer.getFinalResult();
            done();
        }
    }

    private void done() {
        utterance = null;
        split = false;
        heap.heardOne();
    }

    private void feed(short[] samples) {
        split |= recognizer.acceptWaveForm(samples, samples.length);
        // Its clock runs on from one utterance to the next.
        samplesFed += samples.length;
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException("The recogniser is closed");
        }
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            recognizer.close();
        }
    }
}
