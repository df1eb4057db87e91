package strawbed.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;

/**
 * Sound as a microphone should not give it.
 *
 * @param words what is wrong, as the report names it
 * @param on does it to a sentence amid quiet
 */
record Roughness(String words, UnaryOperator<Sound> on) {
    private static final int LOW_RATE = 8_000;
    private static final double BESIDE = 10;

    /**
     * All kinds.
     *
     * @param readBack the program's own voice with another statement
     * @param talk another person, who says nothing to the recorder
     */
    static List<Roughness> all(Sound readBack, Sound talk) {
        List<Roughness> all = new ArrayList<>();
        for (int decibels : List.of(6, 12, 20)) {
            all.add(new Roughness(decibels + " dB over full scale", sound -> Mix.driven(sound, decibels)));
        }
        for (int decibels : List.of(20, 40, 60)) {
            all.add(new Roughness(decibels + " dB down", sound -> Mix.louder(sound, -decibels)));
        }
        all.add(new Roughness("an offset of a quarter of full scale", Roughness::offset));
        for (int hertz : List.of(50, 60)) {
            all.add(new Roughness(
                    "hum of " + hertz + " Hz with overtones, 10 dB",
                    sound -> Mix.of(sound, hum(hertz, sound.length()), BESIDE)));
        }
        all.add(new Roughness(
                "its own read-back over it, 12 dB down, 120 ms late", sound -> over(sound, readBack, 12, 0.12)));
        all.add(new Roughness("another person talks at once, as loud", sound -> over(sound, talk, 0, 0)));
        all.add(new Roughness("a shout 0.2 s before it", sound -> before(sound, shout(1), 0.2)));
        all.add(new Roughness("a sneeze 0.1 s behind it", sound -> behind(sound, sneeze(1), 0.1)));
        all.add(new Roughness("8 kHz brought to 16 kHz", Roughness::narrow));
        return all;
    }

    private static Sound offset(Sound sound) {
        short[] samples = sound.copySamples();
        for (int i = 0; i < samples.length; i++) {
            samples[i] = Mix.clipped(samples[i] + 8_192.0);
        }
        return Sound.of(samples, 0);
    }

    /** The mains, with eleven overtones that grow weaker. */
    static double[] hum(int hertz, int length) {
        double[] hum = new double[length];
        for (int i = 0; i < length; i++) {
            for (int overtone = 1; overtone <= 12; overtone++) {
                hum[i] += Math.sin(2 * Math.PI * hertz * overtone * i / Sound.RATE + overtone) / overtone;
            }
        }
        return hum;
    }

    /** Another sound over a sentence, so many decibels under it and so much later than the sentence begins. */
    static Sound over(Sound sentence, Sound other, double under, double seconds) {
        short[] said = sentence.copySamples();
        short[] added = other.copySamples();
        double gain = Mix.activeLevel(said) / Mix.activeLevel(added) / Math.pow(10, under / 20);
        return mixed(sentence, added, firstSound(said) + (int) (seconds * Sound.RATE), gain);
    }

    private static Sound before(Sound sentence, double[] noise, double gap) {
        int room = noise.length + (int) (gap * Sound.RATE);
        short[] later = new short[sentence.length() + room];
        System.arraycopy(sentence.copySamples(), 0, later, room, sentence.length());
        return beside(Sound.of(later, 0), noise, firstSound(later) - room);
    }

    private static Sound behind(Sound sentence, double[] noise, double gap) {
        short[] said = sentence.copySamples();
        int end = said.length;
        while (end > 0 && said[end - 1] == 0) {
            end--;
        }
        int at = end + (int) (gap * Sound.RATE);
        short[] longer = Arrays.copyOf(said, Math.max(said.length, at + noise.length + Sound.RATE / 2));
        return beside(Sound.of(longer, 0), noise, at);
    }

    /** A noise beside a sentence, as loud as the sentence while it is spoken. */
    private static Sound beside(Sound sentence, double[] noise, int at) {
        short[] added =
                Mix.alone(noise, Mix.activeLevel(sentence.copySamples())).copySamples();
        return mixed(sentence, added, at, 1);
    }

    private static Sound mixed(Sound sentence, short[] added, int at, double gain) {
        short[] said = sentence.copySamples();
        for (int i = 0; i < added.length && at + i < said.length; i++) {
            said[at + i] = Mix.clipped(said[at + i] + gain * added[i]);
        }
        return Sound.of(said, 0);
    }

    private static int firstSound(short[] samples) {
        int first = 0;
        while (first < samples.length - 1 && samples[first] == 0) {
            first++;
        }
        return first;
    }

    /** A glide from 180 Hz up to 420 and down, with the overtones of an open mouth, for 0.8 s. */
    static double[] shout(long seed) {
        double[] shout = new double[Sound.RATE * 8 / 10];
        SplittableRandom random = new SplittableRandom(seed);
        double phase = 0;
        for (int i = 0; i < shout.length; i++) {
            double part = (double) i / shout.length;
            double hertz = 180 + 240 * Math.sin(Math.PI * part);
            phase += 2 * Math.PI * hertz / Sound.RATE;
            for (int overtone = 1; overtone * hertz < 4_000; overtone++) {
                double mouth = 1 / (1 + Math.pow((overtone * hertz - 800) / 300, 2)) + 0.05;
                shout[i] += mouth * Math.sin(overtone * phase);
            }
            shout[i] = (shout[i] + 0.1 * (2 * random.nextDouble() - 1)) * Math.sin(Math.PI * part);
        }
        return shout;
    }

    /** A burst of air between about 500 and 4,000 Hz, which begins at once and dies away within 0.4 s. */
    static double[] sneeze(long seed) {
        double[] sneeze = new double[Sound.RATE * 4 / 10];
        SplittableRandom random = new SplittableRandom(seed);
        double high = 0;
        double low = 0;
        for (int i = 0; i < sneeze.length; i++) {
            high += 0.8 * (2 * random.nextDouble() - 1 - high);
            low += 0.18 * (high - low);
            sneeze[i] = (high - low) * Math.min(1, i / 320.0) * Math.exp(-i / 1_600.0);
        }
        return sneeze;
    }

    /** As a telephone's headset gives it: through a file of 8 kHz, as the program reads it. */
    static Sound narrow(Sound sound) {
        short[] samples = sound.copySamples();
        byte[] bytes = new byte[samples.length / 2 * Short.BYTES];
        for (int i = 0; i < samples.length / 2; i++) {
            short value = Mix.clipped(lowPassed(samples, 2 * i));
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> 8);
        }
        try {
            Path file = Files.createTempFile("narrow", ".wav");
            AudioFormat format = new AudioFormat(LOW_RATE, Short.SIZE, 1, true, false);
            try (AudioInputStream in =
                    new AudioInputStream(new ByteArrayInputStream(bytes), format, bytes.length / Short.BYTES)) {
                AudioSystem.write(in, AudioFileFormat.Type.WAVE, file.toFile());
            }
            Sound wide = WavFile.read(file);
            Files.delete(file);
            return wide;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A sinc of 3.6 kHz under a Hann window. */
    private static double lowPassed(short[] samples, int at) {
        int half = 48;
        double cut = 2 * 3_600.0 / Sound.RATE;
        double sum = 0;
        for (int k = -half; k <= half; k++) {
            if (at + k >= 0 && at + k < samples.length) {
                double sinc = k == 0 ? cut : Math.sin(Math.PI * cut * k) / (Math.PI * k);
                sum += samples[at + k] * sinc * (0.5 + 0.5 * Math.cos(Math.PI * k / (half + 1)));
            }
        }
        return sum;
    }
}
