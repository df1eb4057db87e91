package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.exchange.CalfList;
import strawbed.exchange.CalfRow;
import strawbed.exchange.ColumnMap;
import strawbed.exchange.Reading;
import strawbed.exchange.RecordReader;
import strawbed.journal.EventJournal;
import strawbed.journal.ImportPlan;
import strawbed.journal.sqlite.SqliteEventJournal;

/** The command {@code strawbed import}: an exported record, or a list of calves, into the record. */
@Command(
        name = "import",
        description = "Brings an exported record (JSON Lines) into the record, or with --map the calves of a CSV."
                + " The whole file is checked first: with one fault nothing is changed.",
        mixinStandardHelpOptions = true)
final class ImportCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(paramLabel = "FILE", description = "What \"strawbed export --format json\" wrote, or a CSV of calves.")
    Path file = Path.of("");

    @Option(names = "--dry-run", description = "Only tell what is wrong with the file, or what would be added.")
    boolean dryRun;

    @Option(
            names = "--map",
            split = ",",
            paramLabel = "FACT=COLUMN",
            description = "The file is a CSV of calves; which column is number, dam, born, sex or breed, such as"
                    + " number=Ear,dam=Cow,born=Date. Each row opens a calf.")
    @Nullable
    Map<String, String> columns;

    @Override
    public Integer call() {
        Settings settings = Main.of(main).settings();
        return columns == null ? record(settings) : calves(settings, ColumnMap.of(columns));
    }

    private int record(Settings settings) {
        Reading<List<RecordedEvent>> reading = RecordReader.read(file);
        if (reading instanceof Reading.Broken<List<RecordedEvent>> broken) {
            return refused(broken);
        }
        List<RecordedEvent> events = ((Reading.Good<List<RecordedEvent>>) reading).content();
        ImportPlan plan = RecordReading.read(settings, record -> record.plan(events))
                .orElseGet(() -> ImportPlan.of(List.of(), 0, events));
        if (!plan.conflicts().isEmpty()) {
            head(plan.conflicts().size());
            plan.conflicts()
                    .forEach(event -> err().println("  line " + RecordReader.lineOf(event)
                            + ": the record has another event with the id " + event.id() + "."));
            return Failures.BAD_INPUT;
        }
        List<RecordedEvent> added = plan.added();
        if (!dryRun && !added.isEmpty()) {
            try (EventJournal journal = open(settings)) {
                added = journal.importAll(events);
            }
        }
        long calves = added.stream()
                .map(RecordedEvent::calf)
                .filter(Objects::nonNull)
                .distinct()
                .count();
        told(added.size(), calves, events.size() - added.size());
        return 0;
    }

    private int calves(Settings settings, ColumnMap map) {
        Reading<List<CalfRow>> reading =
                CalfList.read(file, map, settings.zone(), settings.clock().instant());
        if (reading instanceof Reading.Good<List<CalfRow>> good) {
            reading = CalfList.against(good.content(), RecordReading.herd(settings));
        }
        if (reading instanceof Reading.Broken<List<CalfRow>> broken) {
            return refused(broken);
        }
        List<CalfRow> rows = ((Reading.Good<List<CalfRow>>) reading).content();
        if (dryRun || rows.isEmpty()) {
            told(
                    CalfList.events(rows, ids(settings), settings.clock().instant())
                            .size(),
                    rows.size(),
                    0);
            return 0;
        }
        try (EventJournal journal = open(settings)) {
            // Once more with the record held: until now a recorder may have written to it.
            if (CalfList.against(rows, Herd.of(journal.all())) instanceof Reading.Broken<List<CalfRow>> broken) {
                return refused(broken);
            }
            int added = journal.append(CalfList.events(
                            rows, ids(settings), settings.clock().instant()))
                    .size();
            told(added, rows.size(), 0);
        }
        return 0;
    }

    private void told(int events, long calves, int known) {
        String what =
                events + (events == 1 ? " event of " : " events of ") + calves + (calves == 1 ? " calf" : " calves");
        String rest = known == 0 ? "." : "; " + known + " in the record already.";
        Main.of(main)
                .out()
                .println((dryRun ? "The file is good. Nothing was changed; to be added: " : "Imported ") + what + rest);
    }

    private int refused(Reading.Broken<?> broken) {
        head(broken.count());
        broken.faults().forEach(fault -> err().println("  " + fault.sentence()));
        long more = broken.count() - broken.faults().size();
        if (more > 0) {
            err().println("  and " + more + " more.");
        }
        return Failures.BAD_INPUT;
    }

    private void head(long count) {
        err().println(file + " has " + count + (count == 1 ? " fault. " : " faults. ") + "Nothing was changed.");
    }

    private PrintWriter err() {
        return Main.of(main).err();
    }

    private EventJournal open(Settings settings) {
        SqliteEventJournal journal =
                SqliteEventJournal.open(settings.data(), settings.clock(), settings.zone(), ids(settings));
        RecordTelling.findings(journal).forEach(err()::println);
        return journal;
    }

    private static TimeOrderedIds ids(Settings settings) {
        return new TimeOrderedIds(settings.clock(), new SecureRandom());
    }
}
