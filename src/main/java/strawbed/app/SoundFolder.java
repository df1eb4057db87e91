package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strawbed.audio.AudioException;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.event.SoundName;

/** The folder of what was said: one WAV file an utterance, beside the record. */
final class SoundFolder {
    /** Version 7 of RFC 9562, section 5.7: the first 48 bits are milliseconds since 1970. */
    private static final Pattern NAME =
            Pattern.compile("([0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[0-9a-f]{4}-[0-9a-f]{12})\\.wav");

    private static final int MILLISECONDS_FROM = 16;

    private final Path folder;
    private final Supplier<UUID> ids;

    SoundFolder(Path data, Supplier<UUID> ids) {
        this.folder = data.resolve("sounds");
        this.ids = ids;
    }

    /** Takes from others the right to look into it, as it may have been made by an older program. */
    void keepToOwner() throws IOException {
        if (Files.isDirectory(folder)) {
            OwnersFile.keepToOwner(folder);
        }
    }

    /** The names of all files in it, in the order of their names; none where there is no folder yet. */
    List<String> names() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /**
     * The file of a sound, there or not.
     *
     * @throws AudioException for a name that could mean a file elsewhere: an older program may have imported such
     */
    Path file(String name) {
        if (!SoundName.isPlain(name)) {
            throw new AudioException(
                    "The record names a sound \"" + name + "\", which is not the plain name of a file in " + folder
                            + "; nothing was done with it. Look where that fact came from.");
        }
        return folder.resolve(name);
    }

    /**
     * When a sound was named, from its name.
     *
     * @return empty if the name is not one of ours
     */
    static Optional<Instant> namedAt(String name) {
        Matcher ours = NAME.matcher(name);
        return ours.matches()
                ? Optional.of(Instant.ofEpochMilli(
                        UUID.fromString(ours.group(1)).getMostSignificantBits() >>> MILLISECONDS_FROM))
                : Optional.empty();
    }

    /** A name for a new sound. */
    String newName() {
        return ids.get() + ".wav";
    }

    /**
     * Keeps a sound; one of the same name is replaced in one step.
     *
     * @throws AudioException if it cannot be written
     */
    void write(String name, Sound sound) {
        Path file = file(name);
        try {
            OwnersFile.makeFolder(folder);
        } catch (IOException e) {
            throw new AudioException(
                    "The folder " + folder
                            + " for what was said cannot be made. Check that the disk can be written to.",
                    e);
        }
        WavFile.write(file, sound);
    }
}
