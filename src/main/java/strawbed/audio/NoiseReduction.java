package strawbed.audio;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Takes steady noise out of an utterance, before a recogniser hears it: each frequency is turned down by as much as its
 * level in the quietest fifth of the sound explains (spectral subtraction; S. F. Boll, "Suppression of acoustic noise in
 * speech using spectral subtraction", IEEE Transactions on Acoustics, Speech, and Signal Processing 27, 1979). Never for
 * people's ears or for the record: what is kept is the sound as it came.
 */
public final class NoiseReduction {
    /** 32 ms with a new one each 8 ms. */
    private static final int FRAME = 512;

    private static final int STEP = 128;
    private static final int BANDS = FRAME / 2 + 1;

    private static final double[] WINDOW = IntStream.range(0, FRAME)
            .mapToDouble(i -> Math.sqrt(0.5 - 0.5 * Math.cos(2 * Math.PI * i / FRAME)))
            .toArray();

    private NoiseReduction() {}

    /**
     * The sound with less noise; the same length at the same place. One shorter than 32 ms comes back as it is.
     *
     * @param mostDecibels how much a frequency is turned down at most, over 0; 12 leaves a hush, 20 more bubbling
     */
    public static Sound of(Sound sound, double mostDecibels) {
        if (!(mostDecibels > 0)) {
            throw new IllegalArgumentException("noise is turned down by more than 0 dB, not by " + mostDecibels);
        }
        short[] samples = sound.copySamples();
        if (samples.length < FRAME) {
            return sound;
        }
        double[][][] spectra = spectra(samples);
        double[][] gains = gains(spectra, Math.pow(10, -mostDecibels / 20));
        return Sound.of(joined(spectra, gains, samples), sound.startSample());
    }

    private static double[][][] spectra(short[] samples) {
        double[][][] spectra = new double[(samples.length - FRAME) / STEP + 1][][];
        for (int f = 0; f < spectra.length; f++) {
            double[][] spectrum = new double[2][FRAME];
            for (int i = 0; i < FRAME; i++) {
                spectrum[0][i] = WINDOW[i] * samples[f * STEP + i];
            }
            transform(spectrum, TransformType.FORWARD);
            spectra[f] = spectrum;
        }
        return spectra;
    }

    private static void transform(double[][] spectrum, TransformType way) {
        FastFourierTransformer.transformInPlace(spectrum, DftNormalization.STANDARD, way);
    }

    private static double[][] gains(double[][][] spectra, double least) {
        double[][] power = Arrays.stream(spectra).map(NoiseReduction::power).toArray(double[][]::new);
        double[] noise = noise(power);
        double[][] gains = new double[power.length][BANDS];
        for (int f = 0; f < power.length; f++) {
            for (int band = 0; band < BANDS; band++) {
                double left = 1 - noise[band] / Math.max(power[f][band], 1e-9);
                gains[f][band] = Math.max(least, Math.sqrt(Math.max(0, left)));
            }
        }
        return gains;
    }

    private static double[] power(double[][] spectrum) {
        return IntStream.range(0, BANDS)
                .mapToDouble(band -> spectrum[0][band] * spectrum[0][band] + spectrum[1][band] * spectrum[1][band])
                .toArray();
    }

    /** The mean power of each band in the quietest fifth of the frames. */
    private static double[] noise(double[][] power) {
        double[][] quietest = Arrays.stream(power)
                .sorted(Comparator.comparingDouble(frame -> Arrays.stream(frame).sum()))
                .limit(Math.max(1, power.length / 5))
                .toArray(double[][]::new);
        double[] noise = new double[BANDS];
        for (double[] frame : quietest) {
            for (int band = 0; band < BANDS; band++) {
                noise[band] += frame[band] / quietest.length;
            }
        }
        return noise;
    }

    /** The frames under their gains, each averaged with that of the frame before, laid over each other again. */
    private static short[] joined(double[][][] spectra, double[][] gains, short[] samples) {
        double[] sum = new double[samples.length];
        double[] weight = new double[samples.length];
        for (int f = 0; f < spectra.length; f++) {
            double[][] spectrum = spectra[f];
            for (int band = 0; band < BANDS; band++) {
                double gain = (gains[f][band] + gains[Math.max(0, f - 1)][band]) / 2;
                scale(spectrum, band, gain);
                if (band > 0 && band < FRAME / 2) {
                    scale(spectrum, FRAME - band, gain);
                }
            }
            transform(spectrum, TransformType.INVERSE);
            for (int i = 0; i < FRAME; i++) {
                sum[f * STEP + i] += WINDOW[i] * spectrum[0][i];
                weight[f * STEP + i] += WINDOW[i] * WINDOW[i];
            }
        }
        short[] joined = new short[samples.length];
        for (int i = 0; i < joined.length; i++) {
            // The edges lie under no whole window; there is nothing but quiet before and behind speech.
            double value = weight[i] > 0.05 ? sum[i] / weight[i] : samples[i];
            joined[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
        }
        return joined;
    }

    private static void scale(double[][] spectrum, int at, double gain) {
        spectrum[0][at] *= gain;
        spectrum[1][at] *= gain;
    }
}
