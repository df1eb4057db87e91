package strawbed.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import strawbed.speech.vosk.VoskModel;

/** The command {@code strawbed}. */
@Command(
        name = "strawbed",
        description = "A hands-free recorder for a calf's first hours. It listens offline, reads back what it"
                + " understood, and saves it with its time when you confirm.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            DemoCommand.class,
            HearCommand.class,
            GrammarCommand.class,
            StationCommand.class,
            ListenCommand.class,
            CalvesCommand.class,
            CalfCommand.class,
            DueCommand.class,
            CardCommand.class,
            HandoverCommand.class,
            CribCommand.class,
            PrinterCommand.class,
            ProtocolCommand.class,
            HerdCommand.class,
            ExportCommand.class,
            ImportCommand.class,
            CheckCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            RescueCommand.class
        })
public final class Main implements Runnable {
    private static final Set<String> LISTENING = Set.of("station", "listen");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The folder of the farm's record; else the user's data folder.")
    @Nullable
    Path data;

    @Option(
            names = "--model",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The folder of another Vosk speech model; else the one that comes with the program.")
    @Nullable
    Path model;

    @CommandLine.Spec
    CommandLine.Model.@Nullable CommandSpec spec;

    private final PrintWriter documents;

    private Main(PrintWriter documents) {
        this.documents = documents;
    }

    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs the program and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        // Libraries tell their news at level info; a person at work needs the program's own sentences only.
        Logger.getLogger("").setLevel(Level.SEVERE);
        if (Arrays.stream(args).anyMatch(LISTENING::contains)) {
            // It takes a quarter of a second, and can go on while the command line is read.
            VoskModel.prepare();
        }
        PrintWriter harmlessOut = new PrintWriter(new TerminalWriter(out), true);
        PrintWriter harmlessErr = new PrintWriter(new TerminalWriter(err), true);
        CommandLine line = new CommandLine(new Main(out))
                .setOut(harmlessOut)
                .setErr(harmlessErr)
                .setExecutionExceptionHandler(new Failures())
                .setParameterExceptionHandler(Failures::badUse);
        int code = execute(line, args);
        harmlessOut.flush();
        harmlessErr.flush();
        return code;
    }

    private static int execute(CommandLine line, String... args) {
        try {
            return line.execute(args);
        } catch (OutOfMemoryError full) {
            line.getErr()
                    .println("The record is too big for the memory that Java may take. Nothing that was saved is hurt."
                            + " Give Java more with -Xmx, as in \"java -Xmx8g -jar\" and the program's name.");
            return Failures.FAILED;
        }
    }

    @Override
    public void run() {
        CommandLine line = commandLine();
        line.usage(line.getOut());
    }

    private CommandLine commandLine() {
        if (spec == null) {
            throw new IllegalStateException("the command line was not set up");
        }
        return spec.commandLine();
    }

    /** The root command that picocli gives a subcommand. */
    static Main of(@Nullable Main parent) {
        if (parent == null) {
            throw new IllegalStateException("the command line was not set up");
        }
        return parent;
    }

    Settings settings() {
        return Settings.of(Optional.ofNullable(data), Optional.ofNullable(model));
    }

    /** For a document that another program reads, every character of it as it is. */
    PrintWriter documents() {
        return documents;
    }

    PrintWriter out() {
        return commandLine().getOut();
    }

    PrintWriter err() {
        return commandLine().getErr();
    }

    /** Reads the version that the build wrote into the jar. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {text()};
        }

        static String text() {
            String version = Main.class.getPackage().getImplementationVersion();
            return "strawbed " + (version == null ? "(not packaged)" : version);
        }
    }
}
