package strawbed.protocol.file;

/**
 * What is wrong at one place of the file.
 *
 * @param line from 1; 0 where the whole file is meant
 * @param problem what was found, what may stand there and what to do
 */
public record FileFault(int line, String problem) {
    /** For people, with the line. */
    public String sentence() {
        return line == 0 ? problem : "line " + line + ": " + problem;
    }
}
