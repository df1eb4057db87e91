package strawbed.bench;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import strawbed.audio.Sound;

/**
 * Minutes of noise without any statement, the four noises and overlapping voices in turn. Each is made when it is asked for, as an hour of them
 * would take over 100 MB.
 *
 * @param babble overlapping voices, which come last
 */
record NoiseAlone(Babble babble) {
    private static final List<Noise> NOISES = List.of(Noise.values());
    private static final int LENGTH = 60 * Sound.RATE;

    /** -27 dB of full scale, as the noises had before they took turns. */
    static final double LEVEL = 1_500;

    /** The noises, and overlapping voices. */
    static int kinds() {
        return NOISES.size() + 1;
    }

    /** What is heard in a minute, in words. */
    static String name(int minute) {
        int kind = minute % kinds();
        return kind < NOISES.size() ? NOISES.get(kind).words() : "overlapping voices";
    }

    Sound minute(int minute) {
        int kind = minute % kinds();
        SplittableRandom random = new SplittableRandom(Objects.hash("noise alone", minute));
        double[] noise = kind < NOISES.size() ? NOISES.get(kind).made(LENGTH, random) : babble.made(LENGTH, random);
        return Mix.alone(noise, LEVEL);
    }
}
