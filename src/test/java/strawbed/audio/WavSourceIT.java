package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.testkit.Tones;

/** Files are written by the JDK's own sound library, so that reader and writer are not of one hand. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WavSourceIT {
    private static final double[] TONE = Tones.tone(440, 0.5, 16_000, 16_000);

    @TempDir
    Path folder;

    /** A file of one second of 440 Hz at half of full scale; a second channel is silent. */
    private Path tone(int rate, int bits, int channels, boolean floating) throws IOException {
        AudioFormat.Encoding coding = floating ? AudioFormat.Encoding.PCM_FLOAT : AudioFormat.Encoding.PCM_SIGNED;
        int frame = channels * bits / 8;
        double[] samples = Tones.tone(440, 0.5, rate, rate);
        ByteBuffer bytes = ByteBuffer.allocate(rate * frame).order(ByteOrder.LITTLE_ENDIAN);
        for (double sample : samples) {
            for (int channel = 0; channel < channels; channel++) {
                double value = channel == 0 ? sample : 0;
                if (floating) {
                    bytes.putFloat((float) value);
                } else {
                    long whole = Math.round(value * (1L << (bits - 1)));
                    for (int i = 0; i < bits / 8; i++) {
                        bytes.put((byte) (whole >> (8 * i)));
                    }
                }
            }
        }
        Path file = folder.resolve("tone.wav");
        AudioFormat format = new AudioFormat(coding, rate, bits, channels, frame, rate, false);
        try (AudioInputStream in = new AudioInputStream(new ByteArrayInputStream(bytes.array()), format, rate)) {
            AudioSystem.write(in, AudioFileFormat.Type.WAVE, file.toFile());
        }
        return file;
    }

    private Path changed(Path file, Consumer<ByteBuffer> change) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        change.accept(ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN));
        return Files.write(folder.resolve("changed.wav"), bytes);
    }

    private static void assertRefused(Path file, String... words) {
        assertThatThrownBy(() -> WavSource.open(file))
                .isInstanceOf(AudioException.class)
                .hasMessageContaining(String.valueOf(file.getFileName()))
                .hasMessageContainingAll(words)
                .hasMessageEndingWith(".");
    }

    @ParameterizedTest
    @CsvSource({
        "8000,16,1,false", "11025,16,2,false", "16000,16,1,false", "16000,16,2,false", "22050,16,1,false",
        "32000,16,2,false", "44100,16,2,false", "48000,16,1,false", "44100,24,2,false", "48000,32,2,false",
        "44100,32,2,true", "16000,32,1,true", "16000,24,1,false"
    })
    void a_tone_is_read_the_same_from_every_format(int rate, int bits, int channels, boolean floating)
            throws IOException {
        Sound sound = WavFile.read(tone(rate, bits, channels, floating));
        assertThat(sound.length()).isEqualTo(16_000);
        short[] samples = sound.copySamples();
        for (int i = 500; i < 15_500; i++) {
            // The second channel is silent, so mixing halves the tone.
            assertThat((double) samples[i]).isCloseTo(TONE[i] * 32_768 / channels, within(20.0));
        }
    }

    @Test
    void sixteen_kilohertz_sixteen_bit_mono_is_read_bit_by_bit_in_blocks_of_twenty_milliseconds() throws IOException {
        long position = 0;
        short[] wanted = Tones.sound(TONE).copySamples();
        try (WavSource source = WavSource.open(tone(16_000, 16, 1, false))) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                assertThat(block.get().startSample()).isEqualTo(position);
                assertThat(block.get().copySamples())
                        .isEqualTo(Arrays.copyOfRange(wanted, (int) position, (int) position + 320));
                position += 320;
            }
            assertThat(source.position()).isEqualTo(position).isEqualTo(16_000);
            assertThat(source.warning()).isEmpty();
            assertThat(source.read()).isEmpty();
        }
    }

    @Test
    void a_written_file_is_read_back_and_the_jdk_reads_it_too() throws Exception {
        Path file = folder.resolve("written.wav");
        Sound sound = Tones.sound(Tones.noise(0.3, 0.2, new Random(1)));
        WavFile.write(file, sound);
        WavFile.write(file, sound);
        assertThat(WavFile.read(file)).isEqualTo(sound);
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            assertThat(in.getFormat().matches(SoundDevices.FORMAT)).isTrue();
            assertThat(in.readAllBytes()).isEqualTo(sound.littleEndianBytes());
        }
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
        assertThatThrownBy(() -> WavFile.write(folder.resolve("none").resolve("a.wav"), sound))
                .isInstanceOf(AudioException.class)
                .hasMessageContaining("check that its folder is there");
    }

    @Test
    void files_that_are_no_sound_are_refused_with_a_remedy() throws IOException {
        assertRefused(folder.resolve("none.wav"), "There is no sound file");
        assertRefused(Files.createDirectory(folder.resolve("sub")), "is a folder");
        assertRefused(Files.createFile(folder.resolve("empty.wav")), "is empty");
        assertRefused(Files.writeString(folder.resolve("note.wav"), "Bring milk"), "not a WAV file");
        assertRefused(Files.writeString(folder.resolve("long.wav"), "Bring milk and straw tomorrow"), "not a WAV");
        byte[] good = Files.readAllBytes(tone(16_000, 16, 1, false));
        assertRefused(Files.write(folder.resolve("head.wav"), Arrays.copyOf(good, 44)), "no samples");
        assertRefused(Files.write(folder.resolve("part.wav"), Arrays.copyOf(good, 30)), "ends before its samples");
    }

    @Test
    void absurd_heads_are_refused_with_the_value() throws IOException {
        Path good = tone(16_000, 16, 1, false);
        assertRefused(changed(good, head -> head.putInt(24, 0)), "0 samples a second");
        assertRefused(changed(good, head -> head.putInt(24, -1)), "4294967295 samples a second");
        assertRefused(changed(good, head -> head.putShort(22, (short) 0)), "0 channels");
        assertRefused(changed(good, head -> head.putShort(22, (short) 6)), "6 channels");
        assertRefused(changed(good, head -> head.putShort(20, (short) 7)), "compressed (coding 7)");
        assertRefused(changed(good, head -> head.putShort(34, (short) 8)), "8 bits", "give 16 bits");
        assertRefused(changed(good, head -> head.putShort(32, (short) 0)), "16 bits in 0 bytes");
        assertRefused(changed(good, head -> head.putInt(16, -1)), "damaged head");
    }

    @Test
    void a_truncated_file_is_read_to_its_end_with_a_warning() throws IOException {
        byte[] good = Files.readAllBytes(tone(16_000, 16, 1, false));
        Path file = Files.write(folder.resolve("cut.wav"), Arrays.copyOf(good, 44 + 16_001));
        try (WavSource source = WavSource.open(file)) {
            assertThat(source.warning())
                    .hasValueSatisfying(
                            warning -> assertThat(warning).contains("cut.wav", "0.5 of 1.0 seconds are missing"));
        }
        assertThat(WavFile.read(file).length()).isEqualTo(8_000);
    }

    @Test
    void a_file_of_open_length_is_read_to_its_end_without_a_warning() throws IOException {
        Path file = changed(tone(16_000, 16, 1, false), head -> head.putInt(40, -1));
        try (WavSource source = WavSource.open(file)) {
            assertThat(source.warning()).isEmpty();
        }
        assertThat(WavFile.read(file).length()).isEqualTo(16_000);
    }

    @Test
    void chunks_between_head_and_samples_are_passed_over() throws IOException {
        byte[] good = Files.readAllBytes(tone(16_000, 16, 1, false));
        ByteBuffer bytes = ByteBuffer.allocate(good.length + 12).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put(good, 0, 36).put("LIST".getBytes(StandardCharsets.US_ASCII)).putInt(3);
        bytes.put(new byte[4]).put(good, 36, good.length - 36);
        Path file = Files.write(folder.resolve("list.wav"), bytes.array());
        assertThat(WavFile.read(file)).isEqualTo(Tones.sound(TONE));
    }

    @Test
    void random_bytes_and_random_damage_are_read_or_refused_but_never_fail_otherwise() throws IOException {
        byte[] good = Files.readAllBytes(tone(22_050, 16, 2, false));
        int refused = 0;
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            byte[] bytes = Arrays.copyOf(good, random.nextInt(seed % 2 == 0 ? 100 : 4_000));
            if (seed % 4 == 0) {
                random.nextBytes(bytes);
            }
            for (int i = 0; i < seed % 3 && bytes.length > 0; i++) {
                bytes[random.nextInt(Math.min(44, bytes.length))] = (byte) random.nextInt();
            }
            Path file = Files.write(folder.resolve("random.wav"), bytes);
            try {
                assertThat(WavFile.read(file).length()).as("seed %d", seed).isPositive();
            } catch (AudioException e) {
                assertThat(e).as("seed %d", seed).hasMessageContaining("random.wav");
                refused++;
            }
        }
        assertThat(refused).isBetween(200, 450);
    }
}
