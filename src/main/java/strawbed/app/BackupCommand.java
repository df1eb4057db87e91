package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.journal.sqlite.RecordBackup;
import strawbed.journal.sqlite.RecordHealth;

/** The command {@code strawbed backup}: a copy of the record in one file. */
@Command(
        name = "backup",
        description = "Copies the record into one file and looks through the copy, also while the recorder runs. It"
                + " holds the facts and the open statements, not the sounds: copy the folder of sounds yourself. Keep"
                + " it on another disk. It never replaces a file.",
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "The file to make, such as /media/stick/record-november.db; else today's in the folder that"
                    + " station.properties names.")
    @Nullable
    Path file;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        if (file == null) {
            return today(program, settings);
        }
        Path target = file;
        RecordHealth health = new RecordBackup(settings.data()).write(target, settings.clock());
        if (!health.isSound()) {
            program.err()
                    .println("The copy " + target + " is made, but the record is not sound and so is its copy. "
                            + RecordTelling.findings(health));
            return Failures.FAILED;
        }
        program.out()
                .println("Made and looked through: " + target + ", " + RecordTelling.summary(health)
                        + ". It holds no sounds.");
        return 0;
    }

    private static int today(Main program, Settings settings) {
        StationFile station = StationFile.in(settings.data());
        Path folder = station.backupFolder()
                .orElseThrow(() -> new BadInputException("Where to? Give a FILE, or set backup.folder in "
                        + settings.data().resolve(StationFile.NAME) + " to a folder, best on another disk."));
        DailyBackup.Outcome outcome = new DailyBackup(settings, station, folder).make();
        PrintWriter out = outcome.isGood() ? program.out() : program.err();
        outcome.told().forEach(out::println);
        if (outcome.told().isEmpty()) {
            out.println("Today's backup is in " + folder + " already.");
        }
        return outcome.isGood() ? 0 : Failures.FAILED;
    }
}
