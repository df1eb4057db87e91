package strawbed.app;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Commands of the program in one process that goes on, as a recorder does, with an environment of the test's: what it
 * learned of printers once must not be believed for ever.
 */
final class CommandSession implements AutoCloseable {
    private static final String END = "exit code ";

    private final Process process;
    private final BufferedWriter in;
    private final BufferedReader out;

    private CommandSession(Process process) {
        this.process = process;
        this.in = process.outputWriter(StandardCharsets.UTF_8);
        this.out = process.inputReader(StandardCharsets.UTF_8);
    }

    /**
     * @param prefix of the command line, such as one that makes a name space
     * @param server where the print server is
     */
    static CommandSession start(List<String> prefix, String server) throws IOException {
        List<String> command = new ArrayList<>(prefix);
        command.addAll(SmallDisk.java(CommandSession.class));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("CUPS_SERVER", server);
        return new CommandSession(builder.start());
    }

    SmallDisk.Outcome run(List<String> words) throws IOException {
        in.write(String.join("\t", words));
        in.newLine();
        in.flush();
        StringBuilder printed = new StringBuilder();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith(END)) {
                return new SmallDisk.Outcome(Integer.parseInt(line.substring(END.length())), printed.toString());
            }
            printed.append(line).append('\n');
        }
        throw new IOException("the program ended: " + printed);
    }

    @Override
    public void close() throws IOException {
        in.close();
        process.destroy();
    }

    /** In the other process: a command a line, its words between tabs. */
    public static void main(String[] args) throws IOException {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            int code = Main.run(out, out, line.split("\t", -1));
            out.println(END + code);
        }
        System.exit(0);
    }
}
