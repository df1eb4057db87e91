package strawbed.audio;

import java.util.Arrays;

/**
 * Plays sound slower or faster, and so lower or higher; it keeps its beginning. By cubic interpolation, which is good
 * enough for a few percent.
 */
public final class SpeedChange implements SoundFilter {
    private final double speed;

    /** What of the stream is still needed, from its sample {@code heldFrom} on. */
    private short[] held = new short[0];

    private int heldFrom;
    private int played;
    private long start = -1;

    /**
     * A change of speed.
     *
     * @param speed 1.07 is seven percent faster
     */
    public SpeedChange(double speed) {
        if (!(speed > 0.5 && speed < 2)) {
            throw new IllegalArgumentException("a speed is over 0.5 and under 2, not " + speed);
        }
        this.speed = speed;
    }

    @Override
    public Sound accept(Sound block) {
        if (start < 0) {
            start = block.startSample();
        }
        short[] samples = block.copySamples();
        int before = held.length;
        held = Arrays.copyOf(held, before + samples.length);
        System.arraycopy(samples, 0, held, before, samples.length);
        // Each sample is made from two on either side.
        Sound ready = play((int) Math.max(0, Math.ceil((heldFrom + held.length - 2) / speed)));
        int forget = Math.max(0, Math.min(held.length, (int) (played * speed) - 1 - heldFrom));
        held = Arrays.copyOfRange(held, forget, held.length);
        heldFrom += forget;
        return ready;
    }

    @Override
    public Sound finish() {
        Sound rest = play((int) ((heldFrom + held.length) / speed));
        held = new short[0];
        heldFrom = 0;
        played = 0;
        start = -1;
        return rest;
    }

    private Sound play(int until) {
        short[] samples = new short[Math.max(0, until - played)];
        long at = Math.max(0, start) + played;
        for (int i = 0; i < samples.length; i++) {
            samples[i] = at((played + i) * speed);
        }
        played += samples.length;
        return Sound.of(samples, at);
    }

    private short at(double place) {
        int left = (int) place;
        double t = place - left;
        double a = sample(left - 1);
        double b = sample(left);
        double c = sample(left + 1);
        double d = sample(left + 2);
        double value = b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
    }

    /** A sample of the stream; its first and last go on for ever. */
    private short sample(int index) {
        return held[Math.max(0, Math.min(held.length - 1, index - heldFrom))];
    }
}
