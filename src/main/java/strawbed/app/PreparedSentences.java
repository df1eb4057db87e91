package strawbed.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import strawbed.grammar.GrammarSource;
import strawbed.hearing.Phrasebook;

/**
 * The recogniser's sentences for the program's own grammar: made by the build, so that a start need not. Those of a farm's
 * own grammar are made by the first start with it and kept in the data folder.
 */
public final class PreparedSentences {
    private static final String RESOURCE = "/hearing/sentences.txt";

    private PreparedSentences() {}

    /** The prepared text; empty when the build made none. */
    static String text() {
        try (InputStream in = PreparedSentences.class.getResourceAsStream(RESOURCE)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those that an earlier start kept; empty when there are none that can be read, as they are only made anew then. */
    static String kept(Path file) {
        try {
            return Files.isRegularFile(file) ? Files.readString(file) : "";
        } catch (IOException damaged) {
            return "";
        }
    }

    /**
     * For the build: writes the sentences of a folder's grammar below a folder of classes. Nothing is done when they are
     * there already.
     *
     * @param args the grammar's folder and the folder of classes
     */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[1] + RESOURCE);
        String before = Files.isRegularFile(file) ? Files.readString(file) : "";
        String after = Phrasebook.read(GrammarSource.directory(Path.of(args[0])), before)
                .prepared();
        if (!after.equals(before)) {
            Files.createDirectories(Path.of(args[1], "hearing"));
            Files.writeString(file, after);
        }
    }
}
