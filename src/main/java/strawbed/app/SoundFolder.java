package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import java.util.function.Supplier;
import strawbed.audio.AudioException;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;

/** The folder of what was said: one WAV file an utterance, beside the record. */
final class SoundFolder {
    private final Path folder;
    private final Supplier<UUID> ids;

    SoundFolder(Path data, Supplier<UUID> ids) {
        this.folder = data.resolve("sounds");
        this.ids = ids;
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
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new AudioException(
                    "The folder " + folder
                            + " for what was said cannot be made. Check that the disk can be written to.",
                    e);
        }
        WavFile.write(folder.resolve(name), sound);
    }
}
