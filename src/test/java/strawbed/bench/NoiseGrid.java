package strawbed.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.audio.SpeedChange;
import strawbed.testkit.SpokenSentence;

/** Sentences made from the grammar and spoken, in quiet and in noise. */
final class NoiseGrid {
    static final List<Double> LEVELS = List.of(20.0, 10.0, 5.0, 0.0);

    /** Sound of the place before and behind the speech. */
    private static final int AROUND = Sound.RATE / 2;

    /**
     * By how much the speakers' vocal tracts are shortened, of every other one lengthened: pitch and formants go up or
     * down as much, and so does the rate. Voices that nothing was chosen by, made of voices that are at hand.
     */
    static final double TRACT = Double.parseDouble(System.getProperty("bench.tract", "1"));

    private final Material material;
    private final Babble babble;
    private final List<Speaker> speakers;

    NoiseGrid(Material material, Babble babble, List<Speaker> speakers) {
        this.material = material;
        this.babble = babble;
        this.speakers = speakers;
    }

    /**
     * Speech in a noise.
     *
     * @param noise null is quiet, or overlapping voices where {@code voices} is set
     */
    record Cell(@Nullable Noise noise, boolean voices, double decibels) {
        static final Cell QUIET = new Cell(null, false, 0);

        static List<Cell> all() {
            List<Cell> cells = new ArrayList<>();
            for (double level : LEVELS) {
                for (Noise noise : Noise.values()) {
                    cells.add(new Cell(noise, false, level));
                }
                cells.add(new Cell(null, true, level));
            }
            return cells;
        }

        boolean isQuiet() {
            return noise == null && !voices;
        }

        String words() {
            return isQuiet()
                    ? "quiet"
                    : (voices
                                    ? "overlapping voices"
                                    : Objects.requireNonNull(noise).words())
                            + String.format(java.util.Locale.ROOT, ", %.0f dB", decibels);
        }
    }

    /** One sentence as it was heard. */
    record Trial(SpokenSentence sentence, Speaker speaker, Ear.Result result) {
        Outcome outcome() {
            return Spoken.outcome(sentence, result.lines());
        }

        Confusion confusion() {
            return Confusion.of(speaker.name(), outcome(), sentence.words(), result.lines());
        }

        Duration computing() {
            return result.last();
        }
    }

    /** Listens to the sentences in one cell; the voices and their rates take turns. */
    List<Trial> heard(List<SpokenSentence> sentences, Cell cell, Crew crew) throws InterruptedException {
        List<Integer> numbers = new ArrayList<>();
        for (int i = 0; i < sentences.size(); i++) {
            numbers.add(i);
        }
        return crew.map(numbers, (ear, i) -> {
            Speaker speaker = speakers.get(i % speakers.size());
            Sound sound = in(
                    cell, speech(sentences.get(i).words(), i), sentences.get(i).words());
            return new Trial(sentences.get(i), speaker, ear.hear(sound));
        });
    }

    Sound speech(String words, int turn) {
        Speaker speaker = speakers.get(turn % speakers.size());
        double rate = Speaker.RATES.get(turn / speakers.size() % Speaker.RATES.size());
        try {
            Sound said = material.said(words, speaker, speaker.command().isEmpty() ? 1 : rate);
            return TRACT == 1 ? said : new SpeedChange(turn % 2 == 0 ? TRACT : 1 / TRACT).changed(said);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("the voice " + speaker.name() + " does not speak", e);
        }
    }

    /** Speech in the sound of a place, which begins half a second before it and ends half a second behind it. */
    Sound in(Cell cell, Sound speech, String seed) {
        short[] around = new short[speech.length() + 2 * AROUND];
        System.arraycopy(speech.copySamples(), 0, around, AROUND, speech.length());
        Sound amid = Sound.of(around, 0);
        if (cell.isQuiet()) {
            return amid;
        }
        SplittableRandom random = new SplittableRandom(Objects.hash(seed, cell.words()));
        double[] noise = Optional.ofNullable(cell.noise())
                .map(kind -> kind.made(around.length, random))
                .orElseGet(() -> babble.made(around.length, random));
        return Mix.of(amid, noise, cell.decibels());
    }
}
