package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import strawbed.app.SmallDisk.Way;
import strawbed.testkit.Commit;

/**
 * The long run of faults: {@code mvn -B -Pfaults process-test-classes} kills the recorder, fills and locks its disk,
 * damages its record, prints the table and writes it to reports/faults.md. Ends with 1 if a promise was broken.
 */
final class FaultsRun {
    private static final long SEED = 20261125;
    private static final int DAMAGES = 500;

    private final Path place;
    private final List<String> rows = new ArrayList<>();
    private boolean good = true;

    private FaultsRun(Path place) {
        this.place = place;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        int kills = Integer.getInteger("faults.kills", 1000);
        Path place = Files.createTempDirectory("strawbed-faults");
        FaultsRun run = new FaultsRun(place);
        try {
            String report = run.report(kills);
            Path file = Path.of("reports", "faults.md");
            Files.createDirectories(Path.of("reports"));
            Files.writeString(file, report);
            System.out.println(report);
            System.out.println("Written to " + file + ".");
        } finally {
            delete(place);
        }
        System.exit(run.good ? 0 : 1);
    }

    private String report(int kills) throws IOException, InterruptedException {
        KilledNights.Tally killed = new KilledNights(folder("killed"), SEED).run(kills);
        good &= killed.isGood();
        rows.add("| the recorder killed while it works | " + killed.kills + " | " + killed.factsFound + " | "
                + killed.factsLost + " | " + killed.halfStatements + " | " + killed.killsBeforeStart
                + " of the kills before the start was over; " + killed.factsPromised + " facts and "
                + killed.soundsPromised + " sounds were promised; " + killed.soundsLost + " sounds lost, "
                + killed.soundsUnnamed + " named by nothing, " + killed.rescued
                + " of the last moment put among the open statements; " + killed.findings.size()
                + " findings in the record |");
        disk("the disk filled while it records, then room made", FullDiskStory.class, Way.NAMESPACE, Way.MOUNT);
        disk("no file may grow over some megabytes", FullDiskStory.class, Way.FILE_LIMIT);
        disk("the disk made read-only", ReadOnlyDiskStory.class, Way.NAMESPACE, Way.MOUNT);
        DamagedRecords damaged = new DamagedRecords(folder("damaged"), SEED);
        damage("one bit of record.db flipped", damaged.flipBytes(DAMAGES));
        damage("record.db cut off", damaged.cut(DAMAGES));
        return head() + String.join("\n", rows) + "\n"
                + killed.findings.stream().map(found -> "\n- " + found + "\n").reduce("", String::concat);
    }

    private void disk(String what, Class<?> story, Way... ways) throws IOException, InterruptedException {
        Path folder = folder(what.replace(' ', '-'));
        Optional<Way> way = SmallDisk.way(folder, ways);
        if (way.isEmpty()) {
            rows.add("| " + what + " | skipped | | | | this machine does not let a test do that |");
            return;
        }
        SmallDisk.Outcome outcome = SmallDisk.run(way.get(), story, folder);
        good &= outcome.code() == 0;
        String printed = outcome.printed().strip().replaceAll("\\s+", " ");
        String saved = printed.matches("saved \\d+, .*") ? printed.replaceAll("saved (\\d+), .*", "$1") : "";
        rows.add("| " + what + " | 1 | " + saved + (outcome.code() == 0 ? " | 0 | 0 | " : " | ? | ? | BROKEN: ")
                + printed + " |");
    }

    private void damage(String what, DamagedRecords.Tally tally) {
        good &= tally.missed() == 0;
        rows.add("| " + what + " | " + tally.done() + " | | " + tally.missed() + " changed unnoticed | | "
                + tally.told() + " told, " + tally.harmless() + " changed nothing that is read |");
    }

    private static String head() throws IOException, InterruptedException {
        return "# What the record survives\n\nMade by `mvn -B -Pfaults process-test-classes` on "
                + LocalDate.now(Clock.systemUTC()) + " from commit " + Commit.described() + ", seed " + SEED
                + ", with Java "
                + System.getProperty("java.version") + " on " + System.getProperty("os.name")
                + ". A kill ends the program only: what the system holds in memory survives it, so this says nothing of"
                + " power cuts.\n\n"
                + "| what was injected | runs | facts saved | facts lost | half statements | what was found |\n"
                + "|---|---:|---:|---:|---:|---|\n";
    }

    private Path folder(String name) throws IOException {
        return Files.createDirectories(place.resolve(name));
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
