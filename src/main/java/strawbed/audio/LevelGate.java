package strawbed.audio;

import java.util.Arrays;

/**
 * Tells frames that stand out from the noise. The noise floor is the tenth-lowest percent of the levels of the last 5 s:
 * speech has that many gaps, and a fan that starts is taken for quiet 5 s later. Owned by one thread.
 */
final class LevelGate {
    private static final int WINDOW = 250;
    private static final double QUIETEST_PART = 0.10;

    /** Found on human recordings: lower takes breath for speech, higher loses soft word ends. */
    private static final double LOUD = 9;

    private static final double AUDIBLE = 6;

    /** No floor lies lower, or the least significant bits would be speech. In dB of full scale. */
    private static final double LOWEST_FLOOR = -75;

    /** Until a second was heard the floor is not believed: a source may begin in the middle of a word. */
    private static final int BELIEVED_AFTER = 50;

    /** A first-order high-pass at about 80 Hz, which takes away an offset and the deepest rumble. */
    private static final double HIGH_PASS = 0.97;

    private final double[] window = new double[WINDOW];
    private int heard;
    private double floor = LOWEST_FLOOR;

    private boolean running;
    private double lastIn;
    private double lastOut;

    /** Takes the next frame and gives its level in dB of full scale; minus infinity when it does not move at all. */
    double level(short[] samples, int from, int to) {
        if (!running) {
            lastIn = samples[from];
            running = true;
        }
        boolean still = true;
        double sum = 0;
        for (int i = from; i < to; i++) {
            still &= samples[i] == samples[from];
            lastOut = samples[i] - lastIn + HIGH_PASS * lastOut;
            lastIn = samples[i];
            sum += lastOut * lastOut;
        }
        // Digital silence is no noise that one could learn from; a microphone never gives it.
        if (still) {
            return Double.NEGATIVE_INFINITY;
        }
        double level = 10 * Math.log10(sum / (to - from) / (32_768.0 * 32_768.0) + 1e-12);
        learn(level);
        return level;
    }

    private void learn(double level) {
        window[heard % WINDOW] = level;
        heard++;
        if (heard >= BELIEVED_AFTER) {
            double[] sorted = Arrays.copyOf(window, Math.min(heard, WINDOW));
            Arrays.sort(sorted);
            floor = Math.max(LOWEST_FLOOR, sorted[(int) (sorted.length * QUIETEST_PART)]);
        }
    }

    /** Whether a level stands out enough to begin speech. */
    boolean isLoud(double level) {
        return level > floor + LOUD;
    }

    /** Whether a level stands out enough for speech to go on. */
    boolean isAudible(double level) {
        return level > floor + AUDIBLE;
    }
}
