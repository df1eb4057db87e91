package strawbed.exchange;

/**
 * What is wrong at one place of a file.
 *
 * @param line from 1
 * @param problem what was found, what may stand there and what to do
 */
public record Fault(long line, String problem) {
    /** For people, with the line. */
    public String sentence() {
        return "line " + line + ": " + problem;
    }
}
