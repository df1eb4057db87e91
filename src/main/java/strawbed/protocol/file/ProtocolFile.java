package strawbed.protocol.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import strawbed.protocol.Protocol;

/** Reads and writes the file in which a farm sets its protocol. */
public final class ProtocolFile {
    /** Its name in the farm's data folder. */
    public static final String NAME = "protocol.toml";

    /** Many times what a protocol takes, and little enough to read at once. */
    private static final int MOST_BYTES = 1_000_000;

    private ProtocolFile() {}

    /** Reads a file; whatever is wrong with it, its bytes or its text is told as a fault. */
    public static ProtocolReading read(Path file) {
        if (!Files.exists(file)) {
            return broken("there is no file " + file + ".");
        }
        if (Files.isDirectory(file)) {
            return broken(file + " is a folder, but must be a file. Move it away, then write the file anew.");
        }
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return broken(file + " is no protocol: it is too large or no plain file. Give another one.");
            }
            return decode(Files.readAllBytes(file));
        } catch (AccessDeniedException denied) {
            return broken(file + " may not be read by this user. Change who may read it.");
        } catch (IOException failure) {
            return broken(file + " cannot be read: " + failure.getMessage() + ". Check the disk.");
        }
    }

    /** Reads the text of a file. */
    public static ProtocolReading parse(String text) {
        return new SettingsReader(text).read();
    }

    /** The text of a file with this protocol, with comments that tell what each setting does. */
    public static String text(Protocol protocol) {
        return new CommentedText(protocol).text();
    }

    /**
     * Writes a file with this protocol, whole or not at all, and never over another file. Makes its folder if need be.
     *
     * @throws ProtocolFileException if there is such a file already, or it cannot be written
     */
    public static void write(Path file, Protocol protocol) {
        Path whole = file.toAbsolutePath();
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
            // A temporary file is for this user's eyes only, and so is what it becomes.
            Path part = Files.createTempFile(folder, NAME, ".part");
            try {
                Files.writeString(part, text(protocol));
                Files.move(part, whole);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (FileAlreadyExistsException exists) {
            throw new ProtocolFileException(
                    exists.getFile() + " is there already and was left as it is. Give another name, or move it away.",
                    exists);
        } catch (IOException failure) {
            throw new ProtocolFileException(
                    "The protocol cannot be written to " + file + ": " + failure
                            + ". Make room, or check who may write there.",
                    failure);
        }
    }

    private static ProtocolReading decode(byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            int line = (int) text.chars().filter(letter -> letter == '\n').count() + 1;
            return new ProtocolReading.Broken(List.of(new FileFault(
                    line,
                    String.format(
                            "the byte %02X here is not UTF-8. Save the file as UTF-8 text.", bytes[in.position()]))));
        }
        return parse(text);
    }

    private static ProtocolReading broken(String problem) {
        return new ProtocolReading.Broken(List.of(new FileFault(0, problem)));
    }
}
