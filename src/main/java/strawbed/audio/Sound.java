package strawbed.audio;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.Duration;
import java.util.Arrays;

/**
 * A piece of sound: 16,000 samples a second, 16 bit, mono, and where its first sample stood in its source. Immutable.
 */
public final class Sound {
    /** Samples a second. */
    public static final int RATE = 16_000;

    private static final long NANOS_PER_SAMPLE = 1_000_000_000L / RATE;

    private final short[] samples;
    private final long startSample;

    private Sound(short[] samples, long startSample) {
        if (startSample < 0) {
            throw new IllegalArgumentException("A sound cannot start before its source: sample " + startSample);
        }
        this.samples = samples;
        this.startSample = startSample;
    }

    /**
     * A sound of a copy of these samples.
     *
     * @param startSample the position of the first one in the source, at least 0
     */
    public static Sound of(short[] samples, long startSample) {
        return new Sound(samples.clone(), startSample);
    }

    /** The number of samples. */
    public int length() {
        return samples.length;
    }

    /** The position of the first sample in the source. */
    public long startSample() {
        return startSample;
    }

    /** The time from the start of the source to the first sample. */
    public Duration start() {
        return time(startSample);
    }

    /** How long it lasts. */
    public Duration duration() {
        return time(samples.length);
    }

    /** A copy of the samples. */
    public short[] copySamples() {
        return samples.clone();
    }

    /** Whether another sound is the beginning of this one, wherever each stood in its source. */
    public boolean startsWith(Sound other) {
        return other.samples.length <= samples.length
                && Arrays.equals(samples, 0, other.samples.length, other.samples, 0, other.samples.length);
    }

    /**
     * The part from one sample to before another.
     *
     * @throws IndexOutOfBoundsException when the part does not lie inside
     */
    public Sound slice(int from, int to) {
        if (from < 0 || from > to || to > samples.length) {
            throw new IndexOutOfBoundsException("Part " + from + " to " + to + " of " + samples.length + " samples");
        }
        return new Sound(Arrays.copyOfRange(samples, from, to), startSample + from);
    }

    /** The same samples at another position. */
    Sound at(long start) {
        return new Sound(samples, start);
    }

    /**
     * This sound and a later one of the same source in one; a gap between them becomes silence, so that positions stay.
     *
     * @throws IllegalArgumentException when the other one begins before this one ends
     */
    public Sound join(Sound later) {
        long gap = later.startSample - (startSample + samples.length);
        if (gap < 0) {
            throw new IllegalArgumentException("A sound that begins at sample " + later.startSample
                    + " cannot follow one that ends at " + (startSample + samples.length));
        }
        short[] joined = Arrays.copyOf(samples, Math.toIntExact(samples.length + gap + later.samples.length));
        System.arraycopy(later.samples, 0, joined, joined.length - later.samples.length, later.samples.length);
        return new Sound(joined, startSample);
    }

    /** The samples as bytes, low byte first, as recognisers and sound devices take them. */
    public byte[] littleEndianBytes() {
        ByteBuffer bytes = ByteBuffer.allocate(samples.length * Short.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asShortBuffer().put(samples);
        return bytes.array();
    }

    /** The root of the mean square, 0 to 32,768; 0 when there are no samples. */
    public double rms() {
        if (samples.length == 0) {
            return 0;
        }
        double sum = 0;
        for (short sample : samples) {
            sum += (double) sample * sample;
        }
        return Math.sqrt(sum / samples.length);
    }

    private static Duration time(long samples) {
        return Duration.ofSeconds(samples / RATE, samples % RATE * NANOS_PER_SAMPLE);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sound sound
                && sound.startSample == startSample
                && Arrays.equals(sound.samples, samples);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(samples) + Long.hashCode(startSample);
    }

    @Override
    public String toString() {
        return "Sound of " + duration() + " at " + start();
    }
}
