package strawbed.audio;

import java.util.Arrays;

/**
 * What can be told of an utterance's sound without knowing its words.
 *
 * <p>The level of speech follows the idea of ITU-T Recommendation P.56, method B (from memory): energy over the time in
 * which somebody speaks, which is where the sound is above a threshold that lies 15.9 dB under that very level, and 0.2 s
 * after. Here it is reckoned in frames of 20 ms, without an offset, rumble and the noise's share.
 *
 * @param level of the speech while it is active, in dB of full scale
 * @param overNoise by how many dB that is over the noise: the quietest fifth of a second, mostly before the speech
 * @param clipped the part of the active samples that stand at full scale in a row, 0 to 1
 */
public record SoundMeasure(double level, double overNoise, double clipped) {
    private static final int FRAME = Sound.RATE / 50;

    /** Between the level of active speech and the threshold that tells it. P.56. */
    private static final double MARGIN = 15.9;

    /** Speech goes on for 0.2 s under the threshold. P.56. */
    private static final int HANGOVER = 10;

    /** What is no more than that over the noise is no speech; else the place before it would count. Our own. */
    private static final double OVER_NOISE = 3;

    /** A fifth of a second without speech lies before each utterance, and is long enough to tell a level. */
    private static final int QUIET = 10;

    /** A source that begins with a tenth of a second of digital silence has no noise of its own. */
    private static final int MUTE = 5;

    /** The least step of 16 bits, -96 dB: no noise can be told that lies lower. */
    private static final double LEAST_NOISE = Math.pow(10, -9.6);

    private static final double NOTHING = 1e-12;

    /** A first-order high-pass at about 80 Hz, used twice: the deepest voices lose little, a fan's rumble much. */
    private static final double HIGH_PASS = 0.97;

    /** 98% of full scale, as resampling leaves ripples on clipped tops. Common practice, no published source. */
    private static final int FULL_SCALE = 32_112;

    /** Sound that only touches full scale does so for a sample or two. Common practice, no published source. */
    private static final int IN_A_ROW = 3;

    /** Measures an utterance with some of the place before its speech, as {@link Endpointer} gives it. */
    public static SoundMeasure of(Sound utterance) {
        short[] samples = utterance.copySamples();
        double[] power = power(samples);
        if (power.length == 0) {
            return new SoundMeasure(decibels(0), 0, 0);
        }
        double noise = noise(power, samples);
        double energy = Math.max(0, Arrays.stream(power).sum() - power.length * noise);
        int active = activeFrames(power, energy, decibels(noise) + OVER_NOISE);
        double level = decibels(energy / active);
        double clipped = Math.min(1, (double) atFullScale(samples) / (active * FRAME));
        return new SoundMeasure(level, level - decibels(noise), clipped);
    }

    /** How strong each frame is; full scale is 1. */
    private static double[] power(short[] samples) {
        double[] power = new double[samples.length / FRAME];
        double lastIn = power.length == 0 ? 0 : samples[0];
        double once = 0;
        double twice = 0;
        for (int i = 0; i < power.length * FRAME; i++) {
            double before = once;
            once = samples[i] - lastIn + HIGH_PASS * once;
            twice = once - before + HIGH_PASS * twice;
            lastIn = samples[i];
            power[i / FRAME] += twice * twice / FRAME / (32_768.0 * 32_768.0);
        }
        return power;
    }

    /**
     * The quietest fifth of a second. Digital silence before the speech is a place without noise; inside the sound it
     * is a hole, and tells nothing of the place.
     */
    private static double noise(double[] power, short[] samples) {
        double quietest = Double.MAX_VALUE;
        int moving = 0;
        boolean anyMoved = false;
        for (int f = 0; f < power.length; f++) {
            if (isStill(samples, f)) {
                if (f == MUTE - 1 && !anyMoved) {
                    return LEAST_NOISE;
                }
                moving = 0;
                continue;
            }
            anyMoved = true;
            moving++;
            if (moving >= QUIET) {
                double mean = Arrays.stream(power, f - QUIET + 1, f + 1).sum() / QUIET;
                quietest = Math.min(quietest, mean);
            }
        }
        return quietest == Double.MAX_VALUE ? LEAST_NOISE : Math.max(LEAST_NOISE, quietest);
    }

    private static boolean isStill(short[] samples, int frame) {
        for (int i = frame * FRAME; i < (frame + 1) * FRAME; i++) {
            if (samples[i] != samples[frame * FRAME]) {
                return false;
            }
        }
        return true;
    }

    /** In how many frames somebody speaks; at least one. The threshold goes down to {@code least} dB. */
    private static int activeFrames(double[] power, double energy, double least) {
        double loudest = decibels(Arrays.stream(power).max().orElse(0));
        int active = 1;
        for (double threshold = loudest - 1; threshold > least; threshold--) {
            active = framesOver(threshold, power);
            if (decibels(energy / active) - threshold >= MARGIN) {
                break;
            }
        }
        return active;
    }

    private static int framesOver(double threshold, double[] power) {
        double least = Math.pow(10, threshold / 10);
        int count = 0;
        int left = 0;
        for (double frame : power) {
            left = frame > least ? HANGOVER + 1 : left - 1;
            count += left > 0 ? 1 : 0;
        }
        return Math.max(1, count);
    }

    /** How many samples are part of a row at full scale. */
    static int atFullScale(Sound sound) {
        return atFullScale(sound.copySamples());
    }

    /** How many samples are part of a row at the top or at the bottom. */
    private static int atFullScale(short[] samples) {
        int count = 0;
        int row = 0;
        for (int i = 0; i < samples.length; i++) {
            boolean atEnd = Math.abs((int) samples[i]) >= FULL_SCALE;
            boolean sameEnd = row > 0 && samples[i] > 0 == samples[i - 1] > 0;
            row = !atEnd ? 0 : sameEnd ? row + 1 : 1;
            if (row == IN_A_ROW) {
                count += IN_A_ROW;
            } else if (row > IN_A_ROW) {
                count++;
            }
        }
        return count;
    }

    private static double decibels(double power) {
        return 10 * Math.log10(Math.max(power, NOTHING));
    }
}
