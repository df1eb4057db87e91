package strawbed.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import strawbed.audio.NoiseReduction;
import strawbed.audio.Sound;
import strawbed.audio.SpeedChange;
import strawbed.speech.Envelope;
import strawbed.speech.Hypothesis;
import strawbed.speech.SpeechRecognizer;
import strawbed.statement.Evidence;
import strawbed.statement.ThresholdSearch;

/** Evidence of every kind that was tried, gathered once from a sound, so that each kind's worth can be told. */
final class Gathered {
    /** As it is, 7% faster, 7% slower. */
    static final List<Integer> BEFORE = List.of(0, 1, 2);

    /** As it is, with less noise, this also faster and slower: what the program does. */
    static final List<Integer> CHOSEN = List.of(0, 3, 4, 5);

    private static final double FASTER = 1.07;
    private static final double SLOWER = 0.93;

    private Gathered() {}

    static ThresholdSearch.Case of(String cell, @Nullable String words, Sound sound, Ear ear) {
        SpeechRecognizer ours = ear.recognizers().plain();
        Sound clearer = new NoiseReduction(12).changed(sound);
        List<List<Hypothesis>> passes = new ArrayList<>();
        for (Sound variant : List.of(
                sound,
                new SpeedChange(FASTER).changed(sound),
                new SpeedChange(SLOWER).changed(sound),
                clearer,
                new SpeedChange(FASTER).changed(clearer),
                new SpeedChange(SLOWER).changed(clearer),
                new NoiseReduction(6).changed(sound),
                new NoiseReduction(20).changed(sound))) {
            passes.add(ours.recognize(variant));
        }
        List<Hypothesis> free = ear.recognizers().any().orElseThrow().recognize(sound);
        return new ThresholdSearch.Case(
                cell,
                words,
                new Evidence(
                        passes,
                        free.isEmpty()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(free.get(0).score()),
                        Optional.of(Envelope.of(clearer))));
    }
}
