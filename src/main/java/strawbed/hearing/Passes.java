package strawbed.hearing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strawbed.audio.NoiseReduction;
import strawbed.audio.Sound;
import strawbed.audio.SoundFilter;
import strawbed.audio.SpeedChange;
import strawbed.speech.Envelope;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;
import strawbed.statement.Evidence;

/**
 * Hears one utterance four times while it is spoken: as it is, and with less noise, this also a little faster and slower.
 * What they agree on is a better reading than any of them, and what they do not agree on an honest doubt. Owned by one
 * thread.
 */
final class Passes {
    private static final double FASTER = 1.07;
    private static final double SLOWER = 0.93;

    /** Noise is turned down by this much at most, in dB. */
    private static final double LESS_NOISE = 12;

    private final Recognizers recognizers;
    private final NoiseReduction noiseReduction = new NoiseReduction(LESS_NOISE);
    private final SoundFilter faster = new SpeedChange(FASTER);
    private final SoundFilter slower = new SpeedChange(SLOWER);
    private Optional<Sound> clear = Optional.empty();

    Passes(Recognizers recognizers) {
        this.recognizers = recognizers;
    }

    /** Takes sound of the place in which nobody speaks. */
    void hush(Sound block) {
        noiseReduction.hush(block);
    }

    /** Takes the next block of an utterance. */
    void accept(Sound block) {
        give(block, recognizers.plain());
        recognizers.any().ifPresent(any -> give(block, any));
        acceptClear(noiseReduction.accept(block));
    }

    private void acceptClear(Sound block) {
        clear = Optional.of(clear.map(before -> before.join(block)).orElse(block));
        give(block, recognizers.clearer());
        give(faster.accept(block), recognizers.faster());
        give(slower.accept(block), recognizers.slower());
    }

    private static void give(Sound sound, SpeechRecognizer recognizer) {
        for (int at = 0; at < sound.length(); at += SpeechRecognizer.BITE) {
            recognizer.accept(sound.slice(at, Math.min(sound.length(), at + SpeechRecognizer.BITE)));
        }
    }

    /** The words that the sound as it is holds so far, without what is none of ours behind them. */
    List<String> wordsSoFar() {
        List<String> words = recognizers.plain().wordsSoFar();
        int end = words.size();
        while (end > 0 && words.get(end - 1).equals(RecognizedWord.UNKNOWN)) {
            end--;
        }
        return words.subList(0, end);
    }

    /** Takes the end of the utterance, of which there was one block at least, and gives what was heard of it. */
    Evidence finish() {
        acceptClear(noiseReduction.finish());
        give(faster.finish(), recognizers.faster());
        give(slower.finish(), recognizers.slower());
        // All processors at once: a person waits for it.
        List<List<Hypothesis>> readings =
                all().parallel().map(SpeechRecognizer::finish).toList();
        int ours = (int) ours().count();
        Evidence evidence = new Evidence(
                readings.subList(0, ours),
                readings.size() > ours ? OptionalDouble.of(freeScore(readings.get(ours))) : OptionalDouble.empty(),
                clear.map(Envelope::of));
        clear = Optional.empty();
        return evidence;
    }

    /** Drops what was taken of an utterance. */
    void forget() {
        noiseReduction.finish();
        faster.finish();
        slower.finish();
        clear = Optional.empty();
        all().forEach(SpeechRecognizer::forget);
    }

    private Stream<SpeechRecognizer> all() {
        return Stream.concat(ours(), recognizers.any().stream());
    }

    private Stream<SpeechRecognizer> ours() {
        return Stream.of(recognizers.plain(), recognizers.clearer(), recognizers.faster(), recognizers.slower());
    }

    /** Free speech that heard no word does not fit at all. */
    private static double freeScore(List<Hypothesis> free) {
        return free.isEmpty() ? Double.NEGATIVE_INFINITY : free.get(0).score();
    }
}
