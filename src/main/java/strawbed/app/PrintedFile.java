package strawbed.app;

import java.io.IOException;
import java.nio.file.Path;

/** Writes what is to be printed, for its owner alone. */
final class PrintedFile {
    private PrintedFile() {}

    /**
     * Writes a file whole, and the folder it is in where that is missing.
     *
     * @param what it is, such as "The card"
     */
    static void write(Path file, byte[] pdf, String what) {
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                OwnersFile.makeFolder(parent);
            }
            OwnersFile.write(file, pdf);
        } catch (IOException e) {
            throw new BadInputException(
                    what + " cannot be written to " + file
                            + ". Check that the folder can be written to and that the disk has room, or give another file with -o.");
        }
    }
}
