package strawbed.audio;

import java.util.Arrays;

/**
 * Brings samples of any rate to 16,000 a second, bit by bit: a polyphase low-pass (sinc under a Blackman window), so that
 * nothing above half the lower rate folds back. Output sample 0 lies on input sample 0. Owned by one thread.
 */
final class Resampler {
    /** Zero crossings of the sinc on each side; 32 put the transition within a tenth of the band. */
    private static final int CROSSINGS = 32;

    /** The cut, as a part of half the lower rate: the transition must end before the folding begins. */
    private static final double CUT = 0.92;

    private final int up;
    private final int down;
    private final int half;
    private final double[][] taps;

    private double[] held;
    private int heldCount;
    private long heldStart;
    private long pushed;
    private long next;

    Resampler(int rate) {
        int common = greatestCommonDivisor(rate, Sound.RATE);
        up = Sound.RATE / common;
        down = rate / common;
        double cut = CUT * Math.min(1, (double) Sound.RATE / rate);
        half = (int) Math.ceil(CROSSINGS / cut);
        taps = new double[up][];
        for (int phase = 0; phase < up; phase++) {
            taps[phase] = taps((double) phase / up, cut);
        }
        // The edge of the source is silence: half a filter of it before the first sample.
        held = new double[4 * half];
        heldCount = half;
        heldStart = -half;
    }

    /** The filter for outputs that lie the given part of an input step after an input sample; its sum is 1. */
    private double[] taps(double offset, double cut) {
        double[] filter = new double[2 * half + 1];
        for (int i = 0; i < filter.length; i++) {
            double x = i - half - offset;
            double sinc = x == 0 ? 1 : Math.sin(Math.PI * cut * x) / (Math.PI * cut * x);
            double place = Math.PI * x / (half + 1);
            filter[i] = sinc * (0.42 + 0.5 * Math.cos(place) + 0.08 * Math.cos(2 * place));
        }
        double sum = Arrays.stream(filter).sum();
        return Arrays.stream(filter).map(tap -> tap / sum).toArray();
    }

    /** Takes one more input sample. */
    void push(double sample) {
        append(sample);
        pushed++;
    }

    /** Takes the end of the input: silence follows, as much as the last outputs need. */
    void finish() {
        for (int i = 0; i <= half; i++) {
            append(0);
        }
    }

    /** Whether another output can be made; after the end none past the last input. */
    boolean hasNext() {
        long at = next * down / up;
        return at < pushed && at + half < heldStart + heldCount;
    }

    /** The next output. Call only when there is one. */
    double next() {
        long at = next * down / up;
        double[] filter = taps[(int) (next * down % up)];
        int from = (int) (at - half - heldStart);
        double sum = 0;
        for (int i = 0; i < filter.length; i++) {
            sum += filter[i] * held[from + i];
        }
        next++;
        return sum;
    }

    private void append(double sample) {
        if (heldCount == held.length) {
            int drop = (int) Math.max(0, Math.min(heldCount, next * down / up - half - heldStart));
            heldCount -= drop;
            heldStart += drop;
            double[] target = drop > 0 ? held : new double[2 * held.length];
            System.arraycopy(held, drop, target, 0, heldCount);
            held = target;
        }
        held[heldCount] = sample;
        heldCount++;
    }

    private static int greatestCommonDivisor(int a, int b) {
        return b == 0 ? a : greatestCommonDivisor(b, a % b);
    }
}
