package strawbed.app;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What one command of the program printed, for tests of other rooms.
 *
 * @param code the exit code
 */
public record CommandRun(int code, String out, String err) {
    /** Runs the program as its command line does, in this process. */
    public static CommandRun of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new CommandRun(code, out.toString(), err.toString());
    }
}
