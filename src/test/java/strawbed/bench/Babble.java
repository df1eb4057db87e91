package strawbed.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import strawbed.audio.Sound;

/** Six people who talk at once, all equally loud, of things that are not for the recorder. */
final class Babble {
    private static final int TALKERS = 6;
    private static final int LONGEST_PAUSE = Sound.RATE / 2;

    private final List<double[]> sentences;

    Babble(List<Sound> spoken) {
        sentences = spoken.stream().map(Babble::equallyLoud).toList();
    }

    private static double[] equallyLoud(Sound sound) {
        short[] samples = sound.copySamples();
        double level = Math.max(1, Mix.activeLevel(samples));
        double[] equal = new double[samples.length];
        for (int i = 0; i < samples.length; i++) {
            equal[i] = samples[i] / level;
        }
        return equal;
    }

    /** So many samples of it. */
    double[] made(int length, SplittableRandom random) {
        double[] all = new double[length];
        for (int talker = 0; talker < TALKERS; talker++) {
            int at = -random.nextInt(2 * Sound.RATE);
            while (at < length) {
                double[] sentence = sentences.get(random.nextInt(sentences.size()));
                for (int i = Math.max(0, -at); i < sentence.length && at + i < length; i++) {
                    all[at + i] += sentence[i];
                }
                at += sentence.length + random.nextInt(LONGEST_PAUSE);
            }
        }
        return all;
    }

    /** The sentences of a file of talk, one a line, without its comments. */
    static List<String> lines(String resource) {
        List<String> lines = new ArrayList<>();
        for (String line : Text.of(resource)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                lines.add(line.replaceFirst("\t.*", ""));
            }
        }
        return lines;
    }
}
