package strawbed.audio;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Takes steady noise out of an utterance, before a recogniser hears it: each frequency is turned down by as much as its
 * level in the quietest fifth of the sound so far explains (spectral subtraction; S. F. Boll, "Suppression of acoustic
 * noise in speech using spectral subtraction", IEEE Transactions on Acoustics, Speech, and Signal Processing 27, 1979).
 * The sound so far is the utterance and the second before it, if {@link #hush} was told of that.
 */
public final class NoiseReduction implements SoundFilter {
    /** 32 ms with a new one each 8 ms. */
    private static final int FRAME = 512;

    private static final int STEP = 128;
    private static final int BANDS = FRAME / 2 + 1;

    /** One second before an utterance tells of the place; more would tell of what is over. */
    private static final int FRAMES_BEFORE = Sound.RATE / STEP;

    private static final double[] WINDOW = IntStream.range(0, FRAME)
            .mapToDouble(i -> Math.sqrt(0.5 - 0.5 * Math.cos(2 * Math.PI * i / FRAME)))
            .toArray();

    private final double least;

    /** The frames of the place and of the utterance. */
    private final Deque<Power> powers = new ArrayDeque<>();

    private short[] hushed = new short[0];
    private Stretch stretch = new Stretch();
    private boolean begun;

    /** The power of each band of a frame, and of all of it. */
    private static final class Power {
        private final double[] bands;
        private final double sum;

        private Power(double[][] spectrum) {
            bands = IntStream.range(0, BANDS)
                    .mapToDouble(band -> spectrum[0][band] * spectrum[0][band] + spectrum[1][band] * spectrum[1][band])
                    .toArray();
            sum = Arrays.stream(bands).sum();
        }

        private double sum() {
            return sum;
        }
    }

    /** The part of the utterance that frames still come to lie on. */
    private static final class Stretch {
        private long start;
        private short[] samples = new short[0];
        private double[] sum = new double[0];
        private double[] weight = new double[0];
        private double[] lastGains = new double[0];

        private void append(short[] more) {
            int before = samples.length;
            samples = Arrays.copyOf(samples, before + more.length);
            System.arraycopy(more, 0, samples, before, more.length);
            sum = Arrays.copyOf(sum, samples.length);
            weight = Arrays.copyOf(weight, samples.length);
        }

        /** Takes away the first samples, which no further frame lies on, as they sound now. */
        private Sound take(int count) {
            short[] taken = new short[count];
            for (int i = 0; i < count; i++) {
                // The edges lie under no whole window; there is nothing but quiet before and behind speech.
                double value = weight[i] > 0.05 ? sum[i] / weight[i] : samples[i];
                taken[i] = (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
            }
            Sound sound = Sound.of(taken, start);
            samples = Arrays.copyOfRange(samples, count, samples.length);
            sum = Arrays.copyOfRange(sum, count, sum.length);
            weight = Arrays.copyOfRange(weight, count, weight.length);
            start += count;
            return sound;
        }
    }

    /**
     * For one stream of sound.
     *
     * @param mostDecibels how much a frequency is turned down at most, over 0; 12 leaves a hush, 20 more bubbling
     */
    public NoiseReduction(double mostDecibels) {
        if (!(mostDecibels > 0)) {
            throw new IllegalArgumentException("noise is turned down by more than 0 dB, not by " + mostDecibels);
        }
        least = Math.pow(10, -mostDecibels / 20);
    }

    /** Takes sound of the place in which nobody speaks to the recorder. */
    public void hush(Sound block) {
        short[] more = block.copySamples();
        short[] all = Arrays.copyOf(hushed, hushed.length + more.length);
        System.arraycopy(more, 0, all, hushed.length, more.length);
        int at = 0;
        for (; at + FRAME <= all.length; at += STEP) {
            powers.add(new Power(spectrum(all, at)));
        }
        hushed = Arrays.copyOfRange(all, at, all.length);
        forget();
    }

    /** The sound of an utterance with less noise: the same length at the same place. */
    @Override
    public Sound accept(Sound block) {
        if (!begun) {
            begun = true;
            stretch = new Stretch();
            stretch.start = block.startSample();
            hushed = new short[0];
            forget();
        }
        stretch.append(block.copySamples());
        int frames = Math.max(0, (stretch.samples.length - FRAME + STEP) / STEP);
        double[][][] spectra = new double[frames][][];
        List<Power> ofFrames = new ArrayList<>();
        for (int frame = 0; frame < frames; frame++) {
            spectra[frame] = spectrum(stretch.samples, frame * STEP);
            ofFrames.add(new Power(spectra[frame]));
        }
        if (frames > 0) {
            powers.addAll(ofFrames);
            layOver(spectra, ofFrames, noise());
        }
        return stretch.take(frames * STEP);
    }

    @Override
    public Sound finish() {
        Sound rest = stretch.take(stretch.samples.length);
        begun = false;
        forget();
        return rest;
    }

    private void forget() {
        while (powers.size() > FRAMES_BEFORE) {
            powers.remove();
        }
    }

    private static double[][] spectrum(short[] samples, int from) {
        double[][] spectrum = new double[2][FRAME];
        for (int i = 0; i < FRAME; i++) {
            spectrum[0][i] = WINDOW[i] * samples[from + i];
        }
        FastFourierTransformer.transformInPlace(spectrum, DftNormalization.STANDARD, TransformType.FORWARD);
        return spectrum;
    }

    /** The mean power of each band in the quietest fifth of the frames. */
    private double[] noise() {
        List<Power> quietest = powers.stream()
                .sorted(Comparator.comparingDouble(Power::sum))
                .limit(Math.max(1, powers.size() / 5))
                .toList();
        double[] noise = new double[BANDS];
        for (Power frame : quietest) {
            for (int band = 0; band < BANDS; band++) {
                noise[band] += frame.bands[band] / quietest.size();
            }
        }
        return noise;
    }

    /** The frames under their gains, each averaged with that of the frame before, laid over each other again. */
    private void layOver(double[][][] spectra, List<Power> ofFrames, double[] noise) {
        for (int frame = 0; frame < spectra.length; frame++) {
            double[][] spectrum = spectra[frame];
            double[] gains = gains(ofFrames.get(frame).bands, noise);
            double[] before = stretch.lastGains.length == 0 ? gains : stretch.lastGains;
            for (int band = 0; band < BANDS; band++) {
                double gain = (gains[band] + before[band]) / 2;
                scale(spectrum, band, gain);
                if (band > 0 && band < FRAME / 2) {
                    scale(spectrum, FRAME - band, gain);
                }
            }
            stretch.lastGains = gains;
            FastFourierTransformer.transformInPlace(spectrum, DftNormalization.STANDARD, TransformType.INVERSE);
            for (int i = 0; i < FRAME; i++) {
                stretch.sum[frame * STEP + i] += WINDOW[i] * spectrum[0][i];
                stretch.weight[frame * STEP + i] += WINDOW[i] * WINDOW[i];
            }
        }
    }

    private double[] gains(double[] power, double[] noise) {
        double[] gains = new double[BANDS];
        for (int band = 0; band < BANDS; band++) {
            double left = 1 - noise[band] / Math.max(power[band], 1e-9);
            gains[band] = Math.max(least, Math.sqrt(Math.max(0, left)));
        }
        return gains;
    }

    private static void scale(double[][] spectrum, int at, double gain) {
        spectrum[0][at] *= gain;
        spectrum[1][at] *= gain;
    }
}
