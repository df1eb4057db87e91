package strawbed.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strawbed.audio.NoiseReduction;
import strawbed.audio.Sound;
import strawbed.audio.SoundFilter;
import strawbed.audio.SpeedChange;
import strawbed.speech.Ending;
import strawbed.speech.Envelope;
import strawbed.speech.Hypothesis;
import strawbed.speech.SpeechRecognizer;
import strawbed.statement.Evidence;

/**
 * Hears one utterance four times while it is spoken: as it is, and with less noise, this also a little faster and slower.
 * What they agree on is a better reading than any of them, and what they do not agree on an honest doubt. In free words it
 * is heard as well, for a second opinion.
 *
 * <p>Where it is no sentence the plain hearing goes on alone: all of them take longer over people's talk than the talk
 * does. The others follow as soon as it may become a sentence after all. Owned by one thread.
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

    /** What the plain hearing has and the others have not. */
    private Optional<Sound> heldBack = Optional.empty();

    Passes(Recognizers recognizers) {
        this.recognizers = recognizers;
    }

    /** Takes sound of the place in which nobody speaks. */
    void hush(Sound block) {
        noiseReduction.hush(block);
    }

    /**
     * Takes the next block of an utterance.
     *
     * @param isPromising whether it may become a sentence, by the words so far
     */
    void accept(Sound block, boolean isPromising) {
        List<Portion> portions = new ArrayList<>(List.of(new Portion(recognizers.plain(), block)));
        Sound waiting = withHeldBack(block);
        if (isPromising) {
            heldBack = Optional.empty();
            portions.addAll(followers(waiting));
        } else {
            heldBack = Optional.of(waiting);
        }
        portions.parallelStream().forEach(Portion::give);
    }

    private Sound withHeldBack(Sound block) {
        return heldBack.map(before -> before.join(block)).orElse(block);
    }

    /** What one of them has to hear of a block. */
    private record Portion(SpeechRecognizer recognizer, Sound sound) {
        void give() {
            for (int at = 0; at < sound.length(); at += SpeechRecognizer.BITE) {
                recognizer.accept(sound.slice(at, Math.min(sound.length(), at + SpeechRecognizer.BITE)));
            }
        }
    }

    /** What the others have to hear of a block that the plain hearing has. */
    private List<Portion> followers(Sound block) {
        List<Portion> portions = new ArrayList<>(clearPortions(noiseReduction.accept(block)));
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

    /** The words that the sound as it is holds so far. */
    List<String> wordsSoFar() {
        return recognizers.plain().wordsSoFar();
    }

    /**
     * Takes the rest of the utterance, and gives what was heard of it.
     *
     * @param rest of length 0 when all of it was given
     * @param ending how the utterance ends
     * @param promises of the plain readings, whether any may be a sentence; asked where the others lag behind, and if none
     *     may, theirs are missing
     */
    Evidence finish(Sound rest, Ending ending, Predicate<List<Hypothesis>> promises) {
        List<Portion> portions = new ArrayList<>();
        if (rest.length() > 0) {
            portions.add(new Portion(recognizers.plain(), rest));
        }
        List<List<Hypothesis>> readings = new ArrayList<>();
        if (heldBack.isPresent()) {
            readings.add(finish(recognizers.plain(), portions, ending));
            if (!promises.test(readings.get(0))) {
                forget();
                return Evidence.of(readings.get(0));
            }
        }
        portions.addAll(lastOfFollowers(rest));
        // All processors at once: a person waits for it.
        readings.addAll(all().skip(readings.size()).toList().parallelStream()
                .map(recognizer -> finish(recognizer, portions, ending))
                .toList());
        return evidence(readings);
    }

    private List<Portion> lastOfFollowers(Sound rest) {
        Optional<Sound> waiting = rest.length() > 0 ? Optional.of(withHeldBack(rest)) : heldBack;
        heldBack = Optional.empty();
        List<Portion> portions = new ArrayList<>(waiting.map(this::followers).orElse(List.of()));
        portions.addAll(clearPortions(noiseReduction.finish()));
        portions.add(new Portion(recognizers.faster(), faster.finish()));
        portions.add(new Portion(recognizers.slower(), slower.finish()));
        return portions;
    }

    private Evidence evidence(List<List<Hypothesis>> readings) {
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
        heldBack = Optional.empty();
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
