package strawbed.bench;

import java.util.Arrays;
import strawbed.audio.Sound;

/** Mixes speech and noise at a level that is told in decibels. */
final class Mix {
    private static final int FRAME = Sound.RATE / 50;

    /** Speech is active in frames within this much of its loudest ones. */
    private static final double ACTIVE_WITHIN = 25;

    private Mix() {}

    /**
     * Speech in noise.
     *
     * @param decibels the level of the speech while it is active over that of the noise, both as root mean squares
     */
    static Sound of(Sound speech, double[] noise, double decibels) {
        short[] said = speech.copySamples();
        double gain = activeLevel(said) / rms(noise) / Math.pow(10, decibels / 20);
        double[] sum = new double[said.length];
        double peak = 1;
        for (int i = 0; i < said.length; i++) {
            sum[i] = said[i] + gain * noise[i];
            peak = Math.max(peak, Math.abs(sum[i]));
        }
        // Turned down rather than clipped, as clipping is a trial of its own.
        double scale = Math.min(1, 32_000 / peak);
        short[] mixed = new short[said.length];
        for (int i = 0; i < said.length; i++) {
            mixed[i] = (short) Math.round(scale * sum[i]);
        }
        return Sound.of(mixed, 0);
    }

    /** Noise by itself, with this root mean square. */
    static Sound alone(double[] noise, double level) {
        double gain = level / rms(noise);
        short[] samples = new short[noise.length];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = clipped(gain * noise[i]);
        }
        return Sound.of(samples, 0);
    }

    /** The same sound by so many decibels louder, or quieter where they are below 0; what is over full scale is clipped. */
    static Sound louder(Sound sound, double decibels) {
        short[] samples = sound.copySamples();
        double gain = Math.pow(10, decibels / 20);
        for (int i = 0; i < samples.length; i++) {
            samples[i] = clipped(gain * samples[i]);
        }
        return Sound.of(samples, 0);
    }

    /** The same sound with its loudest sample so many decibels over full scale, clipped there. */
    static Sound driven(Sound sound, double decibels) {
        int peak = 1;
        for (short sample : sound.copySamples()) {
            peak = Math.max(peak, Math.abs((int) sample));
        }
        return louder(sound, decibels + 20 * Math.log10((double) Short.MAX_VALUE / peak));
    }

    static short clipped(double sample) {
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(sample)));
    }

    /** The root mean square of the frames that are within 25 dB of the loudest. */
    static double activeLevel(short[] samples) {
        int frames = Math.max(1, samples.length / FRAME);
        double[] power = new double[frames];
        for (int f = 0; f < frames; f++) {
            for (int i = f * FRAME; i < Math.min(samples.length, (f + 1) * FRAME); i++) {
                power[f] += (double) samples[i] * samples[i] / FRAME;
            }
        }
        double loudest = Arrays.stream(power).max().orElse(0);
        double least = loudest * Math.pow(10, -ACTIVE_WITHIN / 10);
        return Math.sqrt(
                Arrays.stream(power).filter(level -> level >= least).average().orElse(0));
    }

    static double rms(double[] samples) {
        return Math.sqrt(Arrays.stream(samples).map(x -> x * x).average().orElse(0));
    }
}
