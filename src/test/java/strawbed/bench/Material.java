package strawbed.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.audio.WavSource;
import strawbed.testkit.SpokenSentence;

/**
 * The sound files of the bench, kept between runs.
 *
 * @param folder where they lie
 */
public record Material(Path folder) {
    /** Quiet before and behind, as a microphone has: 0.3 s. */
    private static final int QUIET = 3 * Sound.RATE / 10;

    /**
     * Every so many-th sentence of the table, spoken.
     *
     * @throws IOException when the voice is not here
     */
    public List<Spoken> table(Speaker speaker, int every) throws IOException {
        Path home = Files.createDirectories(folder.resolve(speaker.name()));
        List<SpokenSentence> table = SpokenSentence.all();
        List<Spoken> spoken = new ArrayList<>();
        for (int row = 0; row < table.size(); row += every) {
            SpokenSentence sentence = table.get(row);
            spoken.add(
                    new Spoken(sentence, spoken(home, String.format("%03d", row + 1), sentence.words(), speaker, 1)));
        }
        return spoken;
    }

    /**
     * A sentence by itself, without quiet around it.
     *
     * @throws IOException when the voice is not here
     */
    Sound said(String words, Speaker speaker, double stretch) throws IOException {
        Path home = Files.createDirectories(folder.resolve("said").resolve(speaker.name() + "-" + stretch));
        String name =
                UUID.nameUUIDFromBytes(words.getBytes(StandardCharsets.UTF_8)).toString();
        Sound amid = sound(spoken(home, name, words, speaker, stretch));
        return Sound.of(amid.slice(QUIET, amid.length() - QUIET).copySamples(), 0);
    }

    private static Path spoken(Path home, String name, String words, Speaker speaker, double stretch)
            throws IOException {
        Path text = home.resolve(name + ".txt");
        Path wav = home.resolve(name + ".wav");
        if (Files.exists(wav) && Files.exists(text) && Files.readString(text).equals(words)) {
            return wav;
        }
        Files.writeString(text, words);
        Files.deleteIfExists(wav);
        Path bare = home.resolve(name + "-bare.wav");
        speaker.speak(text, bare, stretch);
        WavFile.write(wav, amidQuiet(sound(bare)));
        Files.delete(bare);
        return wav;
    }

    /** One word, spoken by the voice of the program itself. */
    Path word(String word) throws IOException {
        return spoken(Files.createDirectories(folder.resolve("word")), "001", word, Speaker.INSIDE, 1);
    }

    /** Copies of tightly cut recordings, with quiet around each. */
    public List<Path> amidQuiet(List<Path> files) {
        try {
            Path home = Files.createDirectories(folder.resolve("amid-quiet"));
            List<Path> copies = new ArrayList<>();
            for (Path file : files) {
                Path copy = home.resolve(file.getFileName());
                if (!Files.exists(copy)) {
                    WavFile.write(copy, amidQuiet(sound(file)));
                }
                copies.add(copy);
            }
            return copies;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A grammar file with these lines after its head; its root is the rule "all". */
    public Path grammar(String name, String... rules) {
        String head = "#ABNF 1.0 UTF-8;\nlanguage en-US;\nroot $all;\n";
        try {
            return Files.writeString(
                    Files.createDirectories(folder).resolve(name), head + String.join("\n", rules) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Sound amidQuiet(Sound sound) {
        short[] samples = new short[sound.length() + 2 * QUIET];
        System.arraycopy(sound.copySamples(), 0, samples, QUIET, sound.length());
        return Sound.of(samples, 0);
    }

    /** A whole file. */
    static Sound sound(Path file) {
        Sound all = Sound.of(new short[0], 0);
        try (WavSource source = WavSource.open(file)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                all = all.join(block.get());
            }
        }
        return all;
    }

    /** How long a file lasts. */
    static Duration length(Path file) {
        return sound(file).duration();
    }
}
