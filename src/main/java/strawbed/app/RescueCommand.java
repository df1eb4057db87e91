package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.Places;
import strawbed.journal.sqlite.RecordRescue;
import strawbed.journal.sqlite.Rescued;

/** The command {@code strawbed rescue}: what is intact in a damaged record, in a new one. */
@Command(
        name = "rescue",
        description = "Reads a damaged record page by page and takes all facts that are intact into a new record in"
                + " another folder. The damaged file is only read. What was lost or left out is listed beside the new"
                + " record in rescue.txt. A record that is whole in a backup is better restored from there.",
        mixinStandardHelpOptions = true)
final class RescueCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(
            paramLabel = "FILE",
            arity = "0..1",
            description = "The file of the damaged record; else record.db of the data folder.")
    @Nullable
    Path file;

    @Option(
            names = "--to",
            required = true,
            paramLabel = "DIR",
            description = "The data folder of the new record: a new or an empty folder.")
    @Nullable
    Path to;

    @Option(
            names = "--with-changed",
            description = "Also take facts that can be read but do not fit the chain. They may say what nobody said.")
    boolean withChanged;

    @Override
    public Integer call() {
        Settings settings = Main.of(main).settings();
        Path damaged = file == null ? settings.data().resolve("record.db") : file;
        Path folder = RecordTelling.given(to);
        Rescued rescued = new RecordRescue(
                        folder,
                        settings.clock(),
                        settings.zone(),
                        new TimeOrderedIds(settings.clock(), new SecureRandom()))
                .from(damaged, withChanged);
        tell(rescued, damaged, folder);
        return rescued.isWhole() ? 0 : Failures.FAILED;
    }

    private void tell(Rescued rescued, Path damaged, Path folder) {
        PrintWriter out = Main.of(main).out();
        rescued.source().forEach(out::println);
        out.println("Rescued from " + damaged + " into " + rescued.record() + ": " + facts(rescued.facts()) + ".");
        numbers("Not proven, because no link of the chain is left: ", rescued.unproven());
        numbers("Taken though changed: ", rescued.changed());
        numbers("Lost: ", rescued.missing());
        if (rescued.leftOut() > 0) {
            out.println("Found and left out, because they are changed or cannot be read: " + facts(rescued.leftOut())
                    + (withChanged ? "." : ". Those that can be read are taken with --with-changed."));
        }
        if (rescued.statements() > 0 || rescued.statementsLost() > 0) {
            out.println("Statements that waited for an answer: " + rescued.statements() + " rescued, "
                    + rescued.open() + " of them still open"
                    + (rescued.statementsLost() == 0 ? "." : "; " + rescued.statementsLost() + " lost or left out."));
        }
        out.println(
                rescued.isWhole()
                        ? "Nothing was lost. What was looked at is told in " + rescued.list() + "."
                        : "All that is left of what is lost or left out is in " + rescued.list() + ".");
        out.println("The facts have new numbers and a new chain; their ids, times and words are the old ones.");
        out.println("Sounds are not copied: copy the folder "
                + damaged.toAbsolutePath().normalize().resolveSibling("sounds") + " to " + folder.resolve("sounds")
                + " by hand. Keep the damaged file.");
    }

    private void numbers(String what, List<Places> places) {
        if (!places.isEmpty()) {
            long count = places.stream().mapToLong(Places::count).sum();
            Main.of(main).out().println(what + facts(count) + ", number " + Places.text(places) + ".");
        }
    }

    private static String facts(long count) {
        return count == 1 ? "1 fact" : count + " facts";
    }
}
