package strawbed.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    private static final EvidenceFolder KEPT = new EvidenceFolder(Path.of("target", "bench", "evidence"));

    /** How the model is set: other settings give other evidence. */
    private static final int SETTINGS = settings();

    private Gathered() {}

    static ThresholdSearch.Case of(String cell, @Nullable String words, Sound sound, Ear ear) {
        Sound clearer = less(12, sound);
        String name = Integer.toHexString(31 * ear.version() + SETTINGS) + "-" + Integer.toHexString(sound.hashCode());
        List<List<Hypothesis>> heard = KEPT.find(name).orElseGet(() -> {
            List<List<Hypothesis>> all = heard(sound, clearer, ear);
            KEPT.keep(name, all);
            return all;
        });
        List<Hypothesis> free = heard.get(heard.size() - 1);
        return new ThresholdSearch.Case(
                cell,
                words,
                new Evidence(
                        heard.subList(0, heard.size() - 1),
                        free.isEmpty()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(free.get(0).score()),
                        Optional.of(Envelope.of(clearer))));
    }

    private static int settings() {
        try {
            return Files.readString(
                            Path.of(System.getProperty("strawbed.model")).resolve("conf/model.conf"))
                    .hashCode();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The hearings of our own words, and at last that of any words. */
    private static List<List<Hypothesis>> heard(Sound sound, Sound clearer, Ear ear) {
        SpeechRecognizer ours = ear.recognizers().plain();
        List<List<Hypothesis>> passes = new ArrayList<>();
        for (Sound variant : List.of(
                sound,
                at(FASTER, sound),
                at(SLOWER, sound),
                clearer,
                at(FASTER, clearer),
                at(SLOWER, clearer),
                less(6, sound),
                less(20, sound))) {
            passes.add(ours.recognize(variant));
        }
        passes.add(ear.recognizers().any().orElseThrow().recognize(sound));
        return passes;
    }

    private static Sound less(double decibels, Sound sound) {
        return new NoiseReduction(decibels).changed(sound);
    }

    private static Sound at(double speed, Sound sound) {
        return new SpeedChange(speed).changed(sound);
    }
}
