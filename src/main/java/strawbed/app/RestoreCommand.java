package strawbed.app;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.journal.sqlite.RecordRestore;
import strawbed.journal.sqlite.RecordRestore.Restored;

/** The command {@code strawbed restore}: a backup in the place of the record. */
@Command(
        name = "restore",
        description = "Looks through a backup and puts it in the place of the record. The record that was there is"
                + " kept in the data folder under a dated name. A backup holds no sounds: those that are there stay.",
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(paramLabel = "FILE", description = "A file that \"strawbed backup\" made.")
    @Nullable
    Path file;

    @Option(
            names = "--replace",
            description = "Also where the record has facts that the backup lacks, or cannot be read.")
    boolean replace;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        Path backup = RecordTelling.given(file);
        Restored restored = new RecordRestore(settings.data(), settings.clock(), settings.zone()).from(backup, replace);
        program.out().println("Restored from " + backup + ": " + RecordTelling.summary(restored.health()) + ".");
        if (restored.kept() != null) {
            boolean isWhole = restored.kept().toString().endsWith(".db");
            program.out()
                    .println((isWhole ? "The record that was there" : "What was left of the record that was there")
                            + " is now " + restored.kept() + ".");
        }
        return 0;
    }
}
