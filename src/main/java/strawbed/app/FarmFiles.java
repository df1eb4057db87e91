package strawbed.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import strawbed.grammar.GrammarSource;

/**
 * The farm's own files of the grammar as they were when they were first asked for, and the program's for the others.
 * What is edited while the recorder runs counts from the next start on. Safe for any thread.
 */
final class FarmFiles implements GrammarSource {
    private final Path folder;
    private final GrammarSource own;
    private final GrammarSource program = Settings.programsGrammar();
    private final Map<String, String> read = new TreeMap<>();

    FarmFiles(Path folder) {
        this.folder = folder;
        this.own = GrammarSource.directory(folder);
    }

    @Override
    public synchronized String text(String file) {
        String known = read.get(file);
        if (known != null) {
            return known;
        }
        // The program's first: it refuses names that lead elsewhere.
        if (!Files.exists(folder.resolve(file))) {
            return program.text(file);
        }
        String text = own.text(file);
        read.put(file, text);
        return text;
    }

    /** The files of the farm's own that were asked for, by their names. */
    synchronized Map<String, String> read() {
        return Collections.unmodifiableMap(new TreeMap<>(read));
    }

    /** Makes a folder hold these files and no others. What is right already is not written again. */
    static void keep(Path folder, Map<String, String> files) throws IOException {
        OwnersFile.makeFolder(folder);
        for (Path there : filesIn(folder)) {
            if (!files.containsKey(folder.relativize(there).toString().replace('\\', '/'))) {
                Files.delete(there);
            }
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            byte[] bytes = file.getValue().getBytes(StandardCharsets.UTF_8);
            if (!Files.isRegularFile(path) || !Arrays.equals(Files.readAllBytes(path), bytes)) {
                OwnersFile.makeFolder(Optional.ofNullable(path.getParent()).orElse(folder));
                OwnersFile.write(path, bytes);
            }
        }
    }

    /** All files below a folder. */
    static List<Path> filesIn(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
