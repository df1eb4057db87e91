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
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;

/** Whole WAV files: RIFF with a head of 44 bytes, 16 kHz, 16 bit, mono. Safe for any thread. */
public final class WavFile {
    /** What the name of a file has behind it while it is written; such a file was never whole. */
    public static final String PART = ".part";

    private static final int HEAD = 44;

    private WavFile() {}

    /**
     * Writes a sound; the file is there whole and on the disk, its owner's alone, or not at all.
     *
     * @throws AudioException when it cannot be written
     */
    public static void write(Path file, Sound sound) {
        Path part = file.resolveSibling(file.getFileName() + PART);
        try {
            Files.deleteIfExists(part);
            try (FileChannel channel = FileChannel.open(
                    part, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownersAlone(part))) {
                ByteBuffer bytes = bytes(sound);
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            move(part, file);
        } catch (IOException e) {
            // The caller still has the sound, and a full disk needs its room for facts.
            remove(part, e);
            throw new AudioException(
                    "The sound file " + file + " cannot be written (" + e
                            + "); check that its folder is there, may be written and has free space.",
                    e);
        }
    }

    /** Whether a file that may be half-written has any samples that can be heard. */
    public static boolean hasSamples(Path part) {
        try (FileChannel channel = FileChannel.open(part)) {
            return channel.size() >= HEAD + Short.BYTES
                    && WavHeader.read(part, channel).present() > 0;
        } catch (IOException e) {
            throw unreadable(part, e);
        }
    }

    /**
     * Makes a whole file of a half-written one: its head then says what is there, and it gets its name. In place, so
     * that the sound is never nowhere.
     *
     * @param part with samples
     * @param file not there yet
     * @throws AudioException when it cannot be read or renamed
     */
    public static void finish(Path part, Path file) {
        try {
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
                WavHeader header = WavHeader.read(part, channel);
                long samples = header.present() - header.present() % header.frameBytes();
                long end = header.dataStart() + samples;
                channel.truncate(end);
                channel.write(size(end - 8), 4);
                channel.write(size(samples), header.dataStart() - Integer.BYTES);
                channel.force(true);
            }
            move(part, file);
        } catch (IOException e) {
            throw new AudioException(
                    "The half-written sound file " + part + " cannot be kept as " + file.getFileName() + " (" + e
                            + "); check the disk and the right to write there.",
                    e);
        }
    }

    /** How long the sound of a file is, by its head and its size. */
    public static Duration duration(Path file) {
        try (FileChannel channel = FileChannel.open(file)) {
            WavHeader header = WavHeader.read(file, channel);
            return Duration.ofMillis(Math.round(header.seconds(header.present()) * 1000));
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    private static void remove(Path part, IOException reason) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }

    /** The name too is on the disk afterwards, where the system lets a folder be asked for that. */
    private static void move(Path part, Path file) throws IOException {
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        if (isPosix(file)) {
            try (FileChannel folder = FileChannel.open(file.toAbsolutePath().resolveSibling(""))) {
                folder.force(true);
            }
        }
    }

    private static FileAttribute<?>[] ownersAlone(Path file) {
        return isPosix(file)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static boolean isPosix(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private static ByteBuffer size(long bytes) {
        return ByteBuffer.allocate(Integer.BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt((int) bytes)
                .flip();
    }

    private static AudioException unreadable(Path file, IOException cause) {
        return new AudioException(
                "The sound file " + file + " cannot be read (" + cause
                        + "); check the disk and the rights to the file.",
                cause);
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
