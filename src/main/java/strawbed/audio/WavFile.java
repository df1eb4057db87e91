package strawbed.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;

/** Whole WAV files: RIFF with a head of 44 bytes, 16 kHz, 16 bit, mono. Safe for any thread. */
public final class WavFile {
    private static final int HEAD = 44;

    private WavFile() {}

    /**
     * Writes a sound; the file is there whole and on the disk, or not at all.
     *
     * @throws AudioException when it cannot be written
     */
    public static void write(Path file, Sound sound) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                    part, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
                ByteBuffer bytes = bytes(sound);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new AudioException(
                    "The sound file " + file + " cannot be written (" + e
                            + "); check that its folder is there, may be written and has free space.",
                    e);
        }
    }

    private static ByteBuffer bytes(Sound sound) {
        byte[] samples = sound.littleEndianBytes();
        return ByteBuffer.allocate(HEAD + samples.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put("RIFF".getBytes(StandardCharsets.US_ASCII))
                .putInt(HEAD - 8 + samples.length)
                .put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII))
                .putInt(16)
                .putShort((short) 1)
                .putShort((short) 1)
                .putInt(Sound.RATE)
                .putInt(Sound.RATE * Short.BYTES)
                .putShort((short) Short.BYTES)
                .putShort((short) Short.SIZE)
                .put("data".getBytes(StandardCharsets.US_ASCII))
                .putInt(samples.length)
                .put(samples)
                .flip();
    }

    /**
     * Reads a whole file that {@link WavSource} can read; for short ones, as all of it is held in memory.
     *
     * @throws AudioException when it cannot be read
     */
    public static Sound read(Path file) {
        short[] samples = new short[Sound.RATE];
        int count = 0;
        try (WavSource source = WavSource.open(file)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                short[] more = block.get().copySamples();
                if (count + more.length > samples.length) {
                    samples = Arrays.copyOf(samples, 2 * samples.length);
                }
                System.arraycopy(more, 0, samples, count, more.length);
                count += more.length;
            }
        }
        return Sound.of(Arrays.copyOf(samples, count), 0);
    }
}
