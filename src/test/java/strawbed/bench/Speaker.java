package strawbed.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import strawbed.audio.WavFile;
import strawbed.voice.FreeTtsVoice;

/**
 * A synthetic voice that speaks the table.
 *
 * @param tuning whether the grammar was tuned while listening to it
 * @param command the program that speaks, with WAV and TEXT for its files; empty for the voice of the program itself
 */
public record Speaker(String name, boolean tuning, List<String> command) {
    /** The voice of the program itself, so always there. */
    public static final Speaker INSIDE = new Speaker("freetts-kevin16", false, List.of());

    public Speaker {
        command = List.copyOf(command);
    }

    /** All voices of the bench; not all may be installed. */
    static List<Speaker> all() {
        return Stream.of(
                        Stream.of("en-us", "en-gb", "en-us+f3").map(Speaker::espeak),
                        Stream.of("slt", "rms", "awb", "kal16").map(Speaker::flite),
                        Stream.of(festival(), INSIDE))
                .flatMap(some -> some)
                .toList();
    }

    private static Speaker espeak(String voice) {
        return new Speaker("espeak-ng-" + voice, true, List.of("espeak-ng", "-v", voice, "-w", "WAV", "-f", "TEXT"));
    }

    private static Speaker flite(String voice) {
        return new Speaker("flite-" + voice, false, List.of("flite", "-voice", voice, "-o", "WAV", "-f", "TEXT"));
    }

    private static Speaker festival() {
        String choice = "(voice_cmu_us_slt_arctic_hts)";
        return new Speaker("festival-slt-hts", false, List.of("text2wave", "-eval", choice, "-o", "WAV", "TEXT"));
    }

    /**
     * Speaks a text file to a WAV file.
     *
     * @throws IOException when its program is not here or fails
     */
    void speak(Path text, Path wav) throws IOException {
        if (command.isEmpty()) {
            WavFile.write(wav, new FreeTtsVoice().speak(Files.readString(text)));
            return;
        }
        List<String> words = command.stream()
                .map(word -> word.equals("WAV") ? wav.toString() : word.equals("TEXT") ? text.toString() : word)
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
