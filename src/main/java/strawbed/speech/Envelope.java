package strawbed.speech;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import strawbed.audio.Sound;

/**
 * How loud a sound is from moment to moment, to see whether words account for all of it. Immutable.
 */
public final class Envelope {
    private static final int FRAME_MILLIS = 20;
    private static final int FRAME = Sound.RATE * FRAME_MILLIS / 1000;

    /** Frames within this of the usual loudness of the words are as loud as speech. */
    private static final double AS_LOUD = 10;

    /** Words begin and end a little beside the times that recognisers give. */
    private static final int BESIDE = 40;

    private final Duration start;

    /** The level of each stretch of 20 ms. */
    private final double[] decibels;

    private Envelope(Duration start, double[] decibels) {
        this.start = start;
        this.decibels = decibels;
    }

    /** The envelope of a sound. */
    public static Envelope of(Sound sound) {
        double[] decibels = IntStream.range(0, sound.length() / FRAME)
                .mapToDouble(frame -> 20
                        * Math.log10(
                                sound.slice(frame * FRAME, (frame + 1) * FRAME).rms() + 1e-3))
                .toArray();
        return new Envelope(sound.start(), decibels);
    }

    /** The longest stretch that is as loud as the words but lies in none of them. */
    public Duration longestWithout(List<RecognizedWord> words) {
        boolean[] covered = new boolean[decibels.length];
        words.forEach(word -> Arrays.fill(covered, frame(word.from(), -BESIDE), frame(word.to(), BESIDE), true));
        double[] inWords = IntStream.range(0, decibels.length)
                .filter(frame -> covered[frame])
                .mapToDouble(frame -> decibels[frame])
                .sorted()
                .toArray();
        if (inWords.length == 0) {
            return Duration.ZERO;
        }
        double loud = inWords[inWords.length / 2] - AS_LOUD;
        int longest = 0;
        int run = 0;
        for (int frame = 0; frame < decibels.length; frame++) {
            run = !covered[frame] && decibels[frame] >= loud ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return Duration.ofMillis((long) longest * FRAME_MILLIS);
    }

    /** How far the louder parts stand out from the quieter ones, in dB: about 40 in a quiet room, half of that in noise. */
    public double clearness() {
        double[] sorted = Arrays.stream(decibels).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[sorted.length * 9 / 10] - sorted[sorted.length / 10];
    }

    private int frame(Duration time, int more) {
        long millis = time.minus(start).toMillis() + more;
        return (int) Math.max(0, Math.min(decibels.length, millis / FRAME_MILLIS));
    }
}
