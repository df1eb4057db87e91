package strawbed.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import strawbed.audio.WavFile;
import strawbed.voice.FreeTtsVoice;

/**
 * A synthetic voice that speaks the table.
 *
 * @param tuning whether grammar and thresholds were tuned while listening to it
 * @param command the program that speaks, with WAV and TEXT for its files, WORDS for words a minute and STRETCH for how
 *     much longer than usual it takes; empty for the voice of the program itself, which has one rate only
 */
public record Speaker(String name, boolean tuning, List<String> command) {
    /** The voice of the program itself, so always there. */
    public static final Speaker INSIDE = new Speaker("freetts-kevin16", false, List.of());

    public Speaker {
        command = List.copyOf(command);
    }

    /** How fast people speak: three rates, as how much longer than usual a sentence takes. */
    static final List<Double> RATES = List.of(1.0, 0.87, 1.15);

    private static final int USUAL_WORDS = 165;

    /** All voices of the bench; not all may be installed. Those to tune on use other engines or speakers. */
    static List<Speaker> all() {
        return List.of(
                espeak("en-us"),
                flite("kal16", true),
                espeak("en-us+f3"),
                flite("awb", true),
                espeak("en-gb"),
                flite("slt", false),
                festival("cmu_us_slt_arctic_hts"),
                festival("ked_diphone"),
                flite("rms", false),
                INSIDE);
    }

    private static Speaker espeak(String voice) {
        return new Speaker(
                "espeak-ng-" + voice,
                true,
                List.of("espeak-ng", "-v", voice, "-s", "WORDS", "-w", "WAV", "-f", "TEXT"));
    }

    private static Speaker flite(String voice, boolean tuning) {
        return new Speaker(
                "flite-" + voice,
                tuning,
                List.of("flite", "-voice", voice, "--setf", "duration_stretch=STRETCH", "-o", "WAV", "-f", "TEXT"));
    }

    private static Speaker festival(String voice) {
        String choice = "(begin (voice_" + voice + ") (Parameter.set 'Duration_Stretch STRETCH))";
        return new Speaker("festival-" + voice, false, List.of("text2wave", "-eval", choice, "-o", "WAV", "TEXT"));
    }

    /**
     * Speaks a text file to a WAV file.
     *
     * @param stretch one of {@link #RATES}
     * @throws IOException when its program is not here or fails
     */
    void speak(Path text, Path wav, double stretch) throws IOException {
        if (command.isEmpty()) {
            WavFile.write(wav, new FreeTtsVoice().speak(Files.readString(text)));
            return;
        }
        List<String> words = command.stream()
                .map(word -> word.replace("WAV", wav.toString())
                        .replace("TEXT", text.toString())
                        .replace("WORDS", String.valueOf(Math.round(USUAL_WORDS / stretch)))
                        .replace("STRETCH", String.valueOf(stretch)))
                .toList();
        Process process = new ProcessBuilder(words)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            int code = process.waitFor();
            if (code != 0 || !Files.exists(wav)) {
                throw new IOException(command.get(0) + " ended with code " + code);
            }
        } catch (InterruptedException e) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while " + command.get(0) + " spoke", e);
        }
    }
}
