package strawbed.grammar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Where the text of grammar files comes from; file names are relative and use {@code /}. */
@FunctionalInterface
public interface GrammarSource {

    /**
     * The whole text of a file.
     *
     * @throws GrammarException when there is no such file or its bytes are not UTF-8
     */
    String text(String file);

    /** This source, but with the given text in place of one file. */
    default GrammarSource with(String file, String text) {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(text, "text");
        return asked -> asked.equals(file) ? text : text(asked);
    }

    /** The files below a directory, as UTF-8, and from elsewhere those that it lacks. */
    static GrammarSource directory(Path directory, GrammarSource others) {
        GrammarSource own = directory(directory);
        return file -> Files.exists(directory.resolve(FileNames.check(file))) ? own.text(file) : others.text(file);
    }

    /** The files below a directory, as UTF-8. */
    static GrammarSource directory(Path directory) {
        Objects.requireNonNull(directory, "directory");
        return file -> {
            FileNames.check(file);
            Path path = directory.resolve(file);
            if (!Files.isRegularFile(path)) {
                throw new GrammarException(file, "there is no such file in " + directory + ".");
            }
            try {
                return decode(file, Files.readAllBytes(path));
            } catch (IOException e) {
                throw new GrammarException(file, "the file in " + directory + " cannot be read.", e);
            }
        };
    }

    /** The resources of a class loader, as UTF-8, their names preceded by the prefix, such as {@code grammar/}. */
    static GrammarSource resources(ClassLoader loader, String prefix) {
        Objects.requireNonNull(loader, "loader");
        Objects.requireNonNull(prefix, "prefix");
        return file -> resource(file, prefix, loader.getResourceAsStream(prefix + FileNames.check(file)));
    }

    /** The resources as a class sees them: a prefix that begins with {@code /} does not start at its package. */
    static GrammarSource resources(Class<?> neighbour, String prefix) {
        Objects.requireNonNull(neighbour, "neighbour");
        Objects.requireNonNull(prefix, "prefix");
        return file -> resource(file, prefix, neighbour.getResourceAsStream(prefix + FileNames.check(file)));
    }

    private static String resource(String file, String prefix, @Nullable InputStream opened) {
        try (InputStream stream = opened) {
            if (stream == null) {
                throw new GrammarException(file, "there is no such file in " + prefix + ".");
            }
            return decode(file, stream.readAllBytes());
        } catch (IOException e) {
            throw new GrammarException(file, "the file in " + prefix + " cannot be read.", e);
        }
    }

    private static String decode(String file, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            SourceText good = new SourceText(file, text);
            throw good.mistake(
                    good.text().length(),
                    String.format("the byte %02X here is not UTF-8. Save the file as UTF-8.", bytes[in.position()]));
        }
        return text;
    }
}
