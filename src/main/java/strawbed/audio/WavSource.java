package strawbed.audio;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A WAV file as a source of sound: 16, 24 or 32 bit or floating point, mono or stereo (mixed down), 8 to 96 kHz,
 * brought to 16 kHz. Reads as it goes, so that an hour takes no more memory than a second. Owned by one thread.
 */
public final class WavSource implements AudioSource {
    private static final int BUFFER_FRAMES = 4096;

    private final Path file;
    private final FileChannel channel;
    private final WavHeader header;
    private final @Nullable Resampler resampler;
    private final ByteBuffer buffer;

    private long bytesLeft;
    private boolean ended;
    private long position;

    private WavSource(Path file, FileChannel channel, WavHeader header) {
        this.file = file;
        this.channel = channel;
        this.header = header;
        resampler = header.rate() == Sound.RATE ? null : new Resampler(header.rate());
        buffer = ByteBuffer.allocate(BUFFER_FRAMES * header.frameBytes())
                .order(ByteOrder.LITTLE_ENDIAN)
                .limit(0);
        bytesLeft = header.present() - header.present() % header.frameBytes();
    }

    /**
     * Opens a file and checks its head.
     *
     * @throws AudioException when there is no such file or it is not a WAV file that can be read; says what to give
     */
    public static WavSource open(Path file) {
        if (Files.isDirectory(file)) {
            throw new AudioException(file + " is a folder; give a WAV file.");
        }
        FileChannel channel = null;
        try {
            channel = FileChannel.open(file);
            WavHeader header = WavHeader.read(file, channel);
            channel.position(header.dataStart());
            return new WavSource(file, channel, header);
        } catch (NoSuchFileException e) {
            throw new AudioException("There is no sound file " + file + "; check the name and the folder.", e);
        } catch (IOException e) {
            closeAfter(e, channel);
            throw unreadable(file, e);
        } catch (AudioException e) {
            closeAfter(e, channel);
            throw e;
        }
    }

    private static void closeAfter(Exception cause, @Nullable FileChannel channel) {
        if (channel != null) {
            try {
                channel.close();
            } catch (IOException e) {
                cause.addSuppressed(e);
            }
        }
    }

    private static AudioException unreadable(Path file, IOException cause) {
        return new AudioException(
                "The sound file " + file + " cannot be read (" + cause.getMessage()
                        + "); check the disk and the rights to the file.",
                cause);
    }

    /** One sentence on what is odd about the file, though it can be read: how much of it is missing. */
    public Optional<String> warning() {
        long missing = header.promised() - header.present();
        if (missing <= 0) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "The sound file %s ends early: %.1f of %.1f seconds are missing; what is there is used.",
                file,
                header.seconds(missing),
                header.seconds(header.promised())));
    }

    @Override
    public Optional<Sound> read() {
        short[] block = new short[BLOCK];
        int count = 0;
        while (count < BLOCK && advance()) {
            block[count] = toShort(resampler == null ? frame() : resampler.next());
            count++;
        }
        if (count == 0) {
            return Optional.empty();
        }
        Sound sound = Sound.of(Arrays.copyOf(block, count), position);
        position += count;
        return Optional.of(sound);
    }

    /** Reads on until an output sample can be made; false at the end. */
    private boolean advance() {
        if (resampler == null) {
            return fill();
        }
        while (!resampler.hasNext() && !ended) {
            if (fill()) {
                resampler.push(frame());
            } else {
                ended = true;
                resampler.finish();
            }
        }
        return resampler.hasNext();
    }

    /** Makes sure that a frame is in the buffer; false at the end. */
    private boolean fill() {
        if (buffer.hasRemaining()) {
            return true;
        }
        if (bytesLeft == 0) {
            return false;
        }
        buffer.clear().limit((int) Math.min(buffer.capacity(), bytesLeft));
        try {
            while (buffer.hasRemaining()) {
                if (channel.read(buffer) < 0) {
                    throw new IOException("it became shorter while it was read");
                }
            }
        } catch (IOException e) {
            throw unreadable(file, e);
        }
        bytesLeft -= buffer.flip().limit();
        return true;
    }

    /** The mean of the next frame's channels, at the scale of 16 bits. */
    private double frame() {
        double sum = 0;
        for (int i = 0; i < header.channels(); i++) {
            sum += sample();
        }
        return sum / header.channels();
    }

    private double sample() {
        if (header.floating()) {
            float value = buffer.getFloat();
            return Float.isNaN(value) ? 0 : Math.max(-1, Math.min(1, value)) * 32_768.0;
        }
        return switch (header.bits()) {
            case 16 -> buffer.getShort();
            case 24 -> (buffer.get() & 0xFF) / 256.0 + buffer.getShort();
            default -> buffer.getInt() / 65_536.0;
        };
    }

    private static short toShort(double value) {
        return (short) Math.max(Short.MIN_VALUE, Math.min(Short.MAX_VALUE, Math.round(value)));
    }

    @Override
    public long position() {
        return position;
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }
}
