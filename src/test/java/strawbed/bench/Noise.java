package strawbed.bench;

import java.util.SplittableRandom;
import strawbed.audio.Sound;

/** Noises of a barn, made by formula: the same seed gives the same sound. All have a level of about a tenth of full scale. */
enum Noise {
    /** Equal power in each octave: rain on a roof, running water. */
    PINK("pink noise") {
        @Override
        double[] made(int length, SplittableRandom random) {
            return pink(length, random);
        }
    },
    /** A belt fan: hum of the mains and its harmonics, air below 500 Hz, blades that pass 23 times a second. */
    FAN("fan") {
        @Override
        double[] made(int length, SplittableRandom random) {
            double[] air = pink(length, random);
            double low = 0;
            double[] fan = new double[length];
            for (int i = 0; i < length; i++) {
                low += 0.18 * (air[i] - low);
                double t = (double) i / Sound.RATE;
                double hum = 0;
                for (int harmonic = 1; harmonic <= 8; harmonic++) {
                    hum += Math.sin(2 * Math.PI * 60 * harmonic * t + harmonic) / (harmonic * 12.0);
                }
                fan[i] = low * (1 + 0.3 * Math.sin(2 * Math.PI * 23 * t)) + 0.25 * air[i] + hum;
            }
            return fan;
        }
    },
    /** Gates, buckets and stanchions: two or three a second, each a few ringing tones that die away. */
    BANGS("bangs") {
        @Override
        double[] made(int length, SplittableRandom random) {
            double[] bangs = new double[length];
            int at = random.nextInt(Sound.RATE / 2);
            while (at < length) {
                double loud = 0.3 + 0.7 * random.nextDouble();
                for (int tone = 0; tone < 5; tone++) {
                    ring(bangs, at, loud / 5, 250 + 3_200 * random.nextDouble(), 0.02 + 0.12 * random.nextDouble());
                }
                for (int i = at; i < Math.min(length, at + Sound.RATE / 50); i++) {
                    bangs[i] += loud * 0.6 * (2 * random.nextDouble() - 1) * Math.exp(-(i - at) / 80.0);
                }
                at += (int) (Sound.RATE * (0.15 + 0.6 * random.nextDouble()));
            }
            double[] hush = pink(length, random);
            for (int i = 0; i < length; i++) {
                bangs[i] += 0.01 * hush[i];
            }
            return bangs;
        }
    },
    /** Cows that call: a gliding tone of 90 to 220 Hz with many harmonics through a throat, one to two seconds long. */
    COWS("cow calls") {
        @Override
        double[] made(int length, SplittableRandom random) {
            double[] herd = new double[length];
            int at = random.nextInt(Sound.RATE / 2);
            while (at < length) {
                int lasts = (int) (Sound.RATE * (0.9 + 1.3 * random.nextDouble()));
                call(herd, at, lasts, 90 + 80 * random.nextDouble(), random);
                at += lasts + (int) (Sound.RATE * 0.8 * random.nextDouble());
            }
            double[] hush = pink(length, random);
            for (int i = 0; i < length; i++) {
                herd[i] += 0.01 * hush[i];
            }
            return herd;
        }
    };

    private static final int HARMONICS = 30;

    private final String words;

    Noise(String words) {
        this.words = words;
    }

    /** As the report names it. */
    String words() {
        return words;
    }

    /** Samples of this noise, of any level. */
    abstract double[] made(int length, SplittableRandom random);

    /** By seven first-order filters over white noise, from 20 Hz to 8 kHz within 1 dB of one over f. */
    static double[] pink(int length, SplittableRandom random) {
        double[] corners = {20, 60, 180, 540, 1_600, 4_800};
        double[] state = new double[corners.length];
        double[] pink = new double[length];
        for (int i = -Sound.RATE; i < length; i++) {
            double sum = 0;
            double white = 2 * random.nextDouble() - 1;
            for (int k = 0; k < corners.length; k++) {
                double a = 1 - Math.exp(-2 * Math.PI * corners[k] / Sound.RATE);
                state[k] += a * (white - state[k]);
                sum += state[k] / Math.sqrt(corners[k]) * Math.sqrt(corners[0]);
            }
            if (i >= 0) {
                pink[i] = sum;
            }
        }
        return pink;
    }

    private static void ring(double[] into, int at, double loud, double hertz, double seconds) {
        int end = Math.min(into.length, at + (int) (6 * seconds * Sound.RATE));
        for (int i = at; i < end; i++) {
            double t = (double) (i - at) / Sound.RATE;
            into[i] += loud * Math.exp(-t / seconds) * Math.sin(2 * Math.PI * hertz * t);
        }
    }

    private static void call(double[] into, int at, int lasts, double hertz, SplittableRandom random) {
        double throat = 350 + 250 * random.nextDouble();
        double mouth = 900 + 500 * random.nextDouble();
        double loud = 0.3 + 0.7 * random.nextDouble();
        double phase = 0;
        for (int i = 0; i < lasts && at + i < into.length; i++) {
            double part = (double) i / lasts;
            double now = hertz * (1 + 0.6 * Math.sin(Math.PI * Math.min(1, part * 1.3)));
            phase += 2 * Math.PI * now / Sound.RATE;
            double sum = 0;
            for (int h = 1; h <= HARMONICS && h * now < Sound.RATE / 2.0; h++) {
                double f = h * now;
                double gain = 1 / (1 + Math.pow((f - throat) / 160, 2)) + 0.5 / (1 + Math.pow((f - mouth) / 220, 2));
                sum += (gain + 0.02) * Math.sin(h * phase);
            }
            double swell = Math.min(1, Math.min(part * 6, (1 - part) * 4));
            into[at + i] += loud * swell * (sum + 0.05 * (2 * random.nextDouble() - 1));
        }
    }
}
