package strawbed.testkit;

import java.util.Random;
import strawbed.audio.Sound;

/** Made-up sound: tones that come and go like syllables, noise and silence. Levels are those of full scale, 0 to 1. */
public final class Tones {
    private Tones() {}

    /** A steady tone. */
    public static double[] tone(double hertz, double amplitude, int rate, int count) {
        double[] samples = new double[count];
        for (int i = 0; i < count; i++) {
            samples[i] = amplitude * Math.sin(2 * Math.PI * hertz * i / rate);
        }
        return samples;
    }

    /** Samples that rise and fall four times a second, as speech does, at 16 kHz. */
    public static double[] syllables(double seconds, double amplitude) {
        double[] samples = tone(300, amplitude, Sound.RATE, (int) (seconds * Sound.RATE));
        for (int i = 0; i < samples.length; i++) {
            samples[i] *= Math.pow(Math.sin(Math.PI * 4 * i / Sound.RATE), 2);
        }
        return samples;
    }

    /** White noise of the given root mean square, at 16 kHz. */
    public static double[] noise(double seconds, double rms, Random random) {
        return random.doubles((int) (seconds * Sound.RATE))
                .map(value -> (value - 0.5) * Math.sqrt(12) * rms)
                .toArray();
    }

    /** Adds a sound into another one from a second on. */
    public static void mix(double[] into, double[] sound, double atSecond) {
        int at = (int) (atSecond * Sound.RATE);
        for (int i = 0; i < sound.length; i++) {
            into[at + i] += sound[i];
        }
    }

    /** The samples as a sound from position 0, clipped at full scale. */
    public static Sound sound(double[] samples) {
        short[] values = new short[samples.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = (short) Math.max(-32_768, Math.min(32_767, Math.round(samples[i] * 32_768)));
        }
        return Sound.of(values, 0);
    }
}
