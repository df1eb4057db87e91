package strawbed.audio;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;

/**
 * What the head of a WAV file says, checked: how its samples are coded and where they lie.
 *
 * @param channels 1 or 2
 * @param rate samples a second and channel
 * @param bits of a sample: 16, 24 or 32
 * @param floating whether samples are floating-point numbers from -1 to 1
 * @param dataStart the place of the first sample in the file
 * @param promised bytes of samples that the head promises; -1 when it leaves them open
 * @param present bytes of samples that the file has
 */
record WavHeader(int channels, int rate, int bits, boolean floating, long dataStart, long promised, long present) {
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final long OPEN_END = 0xFFFFFFFFL;
    private static final int LONGEST_FORMAT = 1024;
    private static final Set<Integer> RATES =
            Set.of(8_000, 11_025, 12_000, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000);

    private static final String CONVERT = "give a WAV file with 16 bits, mono or stereo, 16,000 samples a second";

    /** Reads and checks the head; a truncated file passes as long as it has one sample. */
    static WavHeader read(Path file, FileChannel channel) throws IOException {
        String name = "The sound file " + file;
        if (channel.size() == 0) {
            throw new AudioException(name + " is empty; record or copy it again.");
        }
        try {
            return read(name, channel);
        } catch (EOFException e) {
            throw new AudioException(name + " ends before its samples begin; record or copy it again.", e);
        }
    }

    private static WavHeader read(String name, FileChannel channel) throws IOException {
        String notWav = name + " is not a WAV file; " + CONVERT + ".";
        if (channel.size() < 12) {
            throw new AudioException(notWav);
        }
        ByteBuffer riff = bytes(channel, 0, 12);
        if (!tag(riff, 0).equals("RIFF") || !tag(riff, 8).equals("WAVE")) {
            throw new AudioException(notWav);
        }
        ByteBuffer format = null;
        long at = 12;
        while (true) {
            ByteBuffer chunk = bytes(channel, at, 8);
            String tag = tag(chunk, 0);
            long size = Integer.toUnsignedLong(chunk.getInt(4));
            at += 8;
            if (tag.equals("data")) {
                if (format == null) {
                    throw new AudioException(name + " does not say how its samples are coded; " + CONVERT + ".");
                }
                return header(name, format, at, size, channel.size() - at);
            }
            if (tag.equals("fmt ")) {
                if (size < 16 || size > LONGEST_FORMAT) {
                    throw new AudioException(name + " has a damaged head; record or copy it again.");
                }
                format = bytes(channel, at, (int) size);
            }
            at += size + size % 2;
        }
    }

    private static WavHeader header(String name, ByteBuffer format, long dataStart, long size, long left) {
        int coding = Short.toUnsignedInt(format.getShort(0));
        int channels = Short.toUnsignedInt(format.getShort(2));
        int rate = format.getInt(4);
        int frame = Short.toUnsignedInt(format.getShort(12));
        int bits = Short.toUnsignedInt(format.getShort(14));
        if (coding == EXTENSIBLE && format.capacity() >= 26) {
            coding = Short.toUnsignedInt(format.getShort(24));
        }
        if (coding != PCM && coding != FLOAT) {
            throw new AudioException(name + " is compressed (coding " + coding + "); " + CONVERT + ".");
        }
        if (channels != 1 && channels != 2) {
            throw new AudioException(name + " has " + channels + " channels; give mono or stereo.");
        }
        if (!RATES.contains(rate)) {
            throw new AudioException(
                    name + " has " + Integer.toUnsignedString(rate) + " samples a second; " + CONVERT + ".");
        }
        boolean known = coding == FLOAT ? bits == 32 : bits == 16 || bits == 24 || bits == 32;
        if (!known || frame != channels * bits / Byte.SIZE) {
            throw new AudioException(name + " has samples of " + bits + " bits in " + frame + " bytes; give 16 bits.");
        }
        long promised = size == OPEN_END ? -1 : size;
        long present = promised < 0 ? left : Math.min(promised, left);
        if (present < frame) {
            throw new AudioException(name + " has a head but no samples; record or copy it again.");
        }
        return new WavHeader(channels, rate, bits, coding == FLOAT, dataStart, promised, present);
    }

    int frameBytes() {
        return channels * bits / Byte.SIZE;
    }

    /** Seconds of sound in so many bytes. */
    double seconds(long bytes) {
        return (double) bytes / frameBytes() / rate;
    }

    private static ByteBuffer bytes(FileChannel channel, long at, int count) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(count).order(ByteOrder.LITTLE_ENDIAN);
        while (bytes.hasRemaining()) {
            if (channel.read(bytes, at + bytes.position()) < 0) {
                throw new EOFException();
            }
        }
        return bytes;
    }

    private static String tag(ByteBuffer bytes, int at) {
        byte[] tag = new byte[4];
        bytes.get(at, tag);
        return new String(tag, StandardCharsets.ISO_8859_1);
    }
}
