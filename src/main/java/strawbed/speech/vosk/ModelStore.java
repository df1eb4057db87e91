package strawbed.speech.vosk;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Finds the folder of the speech model: the one that is set, else the one that comes with the program, which is unpacked
 * into the data folder once. Safe for any thread, but two programs should not unpack at once.
 *
 * <p>An unpacked folder counts only with its mark {@value #COMPLETE}; what an interrupted unpacking left is begun again.
 */
public final class ModelStore {
    private static final String COMPLETE = ".complete";
    private static final String LIST = "/files.txt";
    private static final long BYTES_NEEDED = 100L << 20;

    private final Optional<Path> configured;
    private final Path dataDirectory;
    private final String resourcePrefix;
    private final Function<String, @Nullable URL> resources;

    /**
     * A store.
     *
     * @param configured the folder of another model, from the settings
     * @param dataDirectory the program's folder for what it keeps
     * @param resourcePrefix where the model lies in the program, such as "/speech-model/model-en-us", with a list of its
     *     files in "files.txt" and its version in "uuid"
     */
    public ModelStore(Optional<Path> configured, Path dataDirectory, String resourcePrefix) {
        this(configured, dataDirectory, resourcePrefix, ModelStore.class::getResource);
    }

    /** A store over other resources than the program's own. */
    ModelStore(
            Optional<Path> configured,
            Path dataDirectory,
            String resourcePrefix,
            Function<String, @Nullable URL> resources) {
        this.configured = configured;
        this.dataDirectory = dataDirectory;
        this.resourcePrefix = resourcePrefix;
        this.resources = resources;
    }

    /**
     * The model's folder; the first call may take a second.
     *
     * @throws ModelException when there is no model or it cannot be unpacked
     */
    public Path directory() {
        if (configured.isPresent()) {
            if (!Files.isDirectory(configured.get())) {
                throw new ModelException("There is no folder " + configured.get()
                        + " with a speech model; correct the path in the settings or take it out.");
            }
            return configured.get();
        }
        return onDisk().orElseGet(this::unpacked);
    }

    /** The model when the program runs from plain files, as in tests. */
    private Optional<Path> onDisk() {
        URL list = list();
        if (!list.getProtocol().equals("file")) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(Path.of(list.toURI()).getParent());
        } catch (URISyntaxException e) {
            throw new ModelException("The speech model has no readable path: " + list + "; move the program.", e);
        }
    }

    private URL list() {
        URL list = resources.apply(resourcePrefix + LIST);
        if (list == null) {
            throw new ModelException("This program comes without a speech model; set the path of one in the settings.");
        }
        return list;
    }

    private Path unpacked() {
        Path folder = dataDirectory.resolve("speech-model");
        try {
            String version = version();
            Path target = folder.resolve(version);
            if (!Files.exists(target.resolve(COMPLETE))) {
                unpack(folder.resolve(version + ".part"), target);
            }
            return target;
        } catch (IOException e) {
            throw new ModelException(
                    "The speech model cannot be unpacked into " + folder + " (" + e
                            + "); check that the folder may be written and that 100 MB are free.",
                    e);
        }
    }

    private void unpack(Path part, Path target) throws IOException {
        delete(part);
        delete(target);
        Files.createDirectories(part);
        requireSpace(part);
        for (String name :
                text("files.txt").lines().filter(line -> !line.isBlank()).toList()) {
            unpack(name, part.resolve(name).normalize(), part);
        }
        Files.writeString(part.resolve(COMPLETE), "");
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
    }

    private void unpack(String name, Path file, Path part) throws IOException {
        if (!file.startsWith(part) || file.equals(part)) {
            throw new ModelException(
                    "The speech model lists a file outside its folder: " + name + "; install the program again.");
        }
        Files.createDirectories(file.resolveSibling(""));
        try (InputStream in = open(name)) {
            Files.copy(in, file);
        }
    }

    /** Names the folder, so that another model is unpacked beside the last. */
    private String version() throws IOException {
        String version = text("uuid").strip();
        if (!version.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
            throw new ModelException(
                    "The speech model's version \"" + version + "\" is damaged; install the program again.");
        }
        return version;
    }

    private String text(String name) throws IOException {
        try (InputStream in = open(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private InputStream open(String name) throws IOException {
        URL resource = resources.apply(resourcePrefix + "/" + name);
        if (resource == null) {
            throw new ModelException("The speech model's file " + name + " is missing; install the program again.");
        }
        return resource.openStream();
    }

    private static void requireSpace(Path directory) throws IOException {
        long free = Files.getFileStore(directory).getUsableSpace();
        if (free < BYTES_NEEDED) {
            throw new ModelException("The disk of " + directory + " has " + (free >> 20)
                    + " MB free and the speech model needs 100 MB; make room and start again.");
        }
    }

    private static void delete(Path directory) throws IOException {
        if (!Files.exists(directory)) {
            return;
        }
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(directory)) {
            paths = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : paths) {
            Files.delete(path);
        }
    }
}
