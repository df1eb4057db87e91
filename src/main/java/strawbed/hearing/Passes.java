package strawbed.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import strawbed.audio.NoiseReduction;
import strawbed.audio.Sound;
import strawbed.audio.SoundFilter;
import strawbed.audio.SpeedChange;
import strawbed.speech.Ending;
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
        portions(block).forEach(Portion::give);
    }

    /** What one of them has to hear of a block. */
    private record Portion(SpeechRecognizer recognizer, Sound sound) {
        void give() {
            for (int at = 0; at < sound.length(); at += SpeechRecognizer.BITE) {
                recognizer.accept(sound.slice(at, Math.min(sound.length(), at + SpeechRecognizer.BITE)));
            }
        }
    }

    private List<Portion> portions(Sound block) {
        List<Portion> portions = new ArrayList<>(clearPortions(noiseReduction.accept(block)));
        portions.add(new Portion(recognizers.plain(), block));
        recognizers.any().ifPresent(any -> portions.add(new Portion(any, block)));
        return portions;
    }

    private List<Portion> clearPortions(Sound block) {
        clear = Optional.of(clear.map(before -> before.join(block)).orElse(block));
        return List.of(
                new Portion(recognizers.clearer(), block),
                new Portion(recognizers.faster(), faster.accept(block)),
                new Portion(recognizers.slower(), slower.accept(block)));
    }

    private List<Portion> lastPortions() {
        List<Portion> portions = new ArrayList<>(clearPortions(noiseReduction.finish()));
        portions.add(new Portion(recognizers.faster(), faster.finish()));
        portions.add(new Portion(recognizers.slower(), slower.finish()));
        return portions;
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

    /**
     * Takes the rest of the utterance, and gives what was heard of it.
     *
     * @param rest of length 0 when all of it was given
     * @param ending how the utterance ends
     */
    Evidence finish(Sound rest, Ending ending) {
        List<Portion> portions = new ArrayList<>(rest.length() == 0 ? List.of() : portions(rest));
        portions.addAll(lastPortions());
        // All processors at once: a person waits for it.
        List<List<Hypothesis>> readings = all().parallel()
                .map(recognizer -> finish(recognizer, portions, ending))
                .toList();
        int ours = (int) ours().count();
        Evidence evidence = new Evidence(
                readings.subList(0, ours),
                readings.size() > ours ? OptionalDouble.of(freeScore(readings.get(ours))) : OptionalDouble.empty(),
                clear.map(Envelope::of));
        clear = Optional.empty();
        return evidence;
    }

    private static List<Hypothesis> finish(SpeechRecognizer recognizer, List<Portion> portions, Ending ending) {
        portions.stream().filter(portion -> portion.recognizer() == recognizer).forEach(Portion::give);
        return recognizer.finish(ending);
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
