package strawbed.app;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.account.CalfAccount;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.BirthPeriod;
import strawbed.care.CareWindow;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.HerdFigures;
import strawbed.care.HerdImmunity;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.Commit;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/**
 * The bench of a big record: {@code mvn -B -Pbench-scale process-test-classes} makes the record of ten years of a large
 * herd, asks what the program asks of it, prints the table and writes it to reports/scale.md. On a busy machine the
 * figures are too high.
 */
final class ScaleRun {
    private static final long SEED = 150_000;
    private static final double DAYS = 3652.5;
    private static final int PORTION = 20_000;
    private static final int QUESTIONS = 200;
    private static final int APPENDS = 2000;
    private static final int SOUNDS = 15_000;
    private static final double NANOS_PER_MILLI = 1e6;
    private static final Instant FROM = Instant.parse("2016-03-01T06:00:00Z");

    private final int calves;
    private final Path place;
    private final List<String> rows = new ArrayList<>();

    private ScaleRun(int calves, Path place) {
        this.calves = calves;
        this.place = place;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException, SQLException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        int calves = Integer.getInteger("scale.calves", 150_000);
        Path place = Files.createTempDirectory("strawbed-scale");
        ScaleRun run = new ScaleRun(calves, place);
        try {
            run.measure();
        } finally {
            // Also what was measured before something failed.
            run.write(Path.of("reports", "scale.md"));
            delete(place);
        }
    }

    private void write(Path file) throws IOException, InterruptedException {
        String report = head() + String.join("\n", rows) + "\n";
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, report);
        System.out.println(report);
        System.out.println("Written to " + file + ".");
    }

    private void measure() throws IOException, InterruptedException, SQLException {
        Path data = place.resolve("data");
        Instant now = make(data);
        starts(data, now);
        questions(data, now);
        append(data, now);
        commands(data);
        migration(data, now);
    }

    /** The record, imported in portions; gives the time of its last fact. */
    private Instant make(Path data) throws IOException {
        SimulatedHerd herd = new SimulatedHerd(calves, calves / DAYS, FROM, SEED);
        long begin = System.nanoTime();
        long facts = 0;
        int opened = 0;
        Instant last = FROM;
        Deque<String> sounds = new ArrayDeque<>();
        try (SqliteEventJournal journal = open(data, FROM)) {
            while (opened < calves && herd.hasNext()) {
                List<RecordedEvent> portion = new ArrayList<>();
                // The record ends with the last birth: the herd lives on.
                while (portion.size() < PORTION && opened < calves && herd.hasNext()) {
                    RecordedEvent event = herd.next();
                    portion.add(event);
                    opened += event.event() instanceof Event.CalfOpened ? 1 : 0;
                    keepNewest(sounds, event.provenance().sound());
                    last = event.recordedAt();
                }
                facts += journal.importAll(portion).size();
            }
        }
        row(String.format(Locale.ROOT, "made: %,d calves, %,d facts", opened, facts), seconds(begin), "");
        size(data, "record.db");
        Path folder = Files.createDirectories(data.resolve("sounds"));
        for (String sound : sounds) {
            Files.createFile(folder.resolve(sound));
        }
        row("sounds in the folder, all named by facts", String.format(Locale.ROOT, "%,d", sounds.size()), "");
        return last;
    }

    private static void keepNewest(Deque<String> sounds, @Nullable String sound) {
        if (sound != null && !sound.equals(sounds.peekLast())) {
            sounds.add(sound);
            if (sounds.size() > SOUNDS) {
                sounds.remove();
            }
        }
    }

    /** Each in a program of its own, from its start to its end. */
    private void starts(Path data, Instant now) throws IOException, InterruptedException {
        String at = now.toString();
        Path empty = Files.createDirectories(place.resolve("empty"));
        open(empty, now).close();
        for (List<String> row : new StartsRun(place, now).rows(data, empty)) {
            row(row.get(0), row.get(1), row.get(2));
        }
        for (int i = 1; i <= 3; i++) {
            String how = ", a program of its own, time " + i;
            command("`due`" + how, "", "256m", data, "due", "--at", at);
            command("`calf`" + how, "", "256m", data, "calf", "1250", "--at", at);
        }
    }

    /** Asked again and again in this program: the first in a fresh journal, then the median and the 95th of 100. */
    private void questions(Path data, Instant now) throws IOException, InterruptedException {
        try (EventJournal journal = SqliteEventJournal.openReadOnly(data, clock(now), SimulatedHerd.ZONE, ids(now))) {
            Herd[] recent = {Herd.of(List.of())};
            repeat("recent calves read", "", 20, i -> recent[0] = HerdReading.recent(journal, now, now));
            row(
                    "  of these calves",
                    String.format(Locale.ROOT, "%,d", recent[0].calves().size()),
                    "");
            repeat("due list of the recent calves", "under 50 ms", 100, i -> DueList.open(recent[0], now));
            repeat("herd figures and immunity of the last month", "", 50, i -> figures(recent[0], now));
            Random random = new Random(SEED);
            Messages messages = new Messages(Locale.US);
            repeat("one calf read and judged, any number, of any year", "under 20 ms", QUESTIONS, i -> {
                String number = String.valueOf(1 + random.nextInt(Math.min(2000, calves / 2)));
                Herd around = HerdReading.around(journal, number, now, now);
                CalfRecord calf = RecordReading.calf(around, number);
                return CalfAccount.of(calf, around, now, messages, SimulatedHerd.ZONE);
            });
        }
    }

    private static Object figures(Herd recent, Instant now) {
        Farm farm = Farm.of(recent);
        BirthPeriod period = CareWindow.figures(now);
        return List.of(HerdFigures.of(recent, farm, period, now), HerdImmunity.of(recent, farm, period));
    }

    /** As the recorder does it for a confirmed statement of three facts. */
    private void append(Path data, Instant now) throws IOException, InterruptedException {
        Provenance spoken = new Provenance(
                Provenance.Source.VOICE,
                List.of("calf", "twelve", "heifer", "navel", "dipped", "three", "quarts", "fed"),
                "understood",
                "5c1f0b7e9d2a",
                "model-en-us",
                null,
                null);
        try (EventJournal journal = open(data, now)) {
            CalfId calf = journal.calvesRecorded(now.minus(Duration.ofDays(1)), now)
                    .iterator()
                    .next();
            List<NewEvent> facts = Stream.of(
                            new Event.SexNoted(Term.Sex.FEMALE),
                            new Event.NavelDipped(Term.NavelAgent.IODINE, null),
                            new Event.ColostrumFed(
                                    new Volume(BigDecimal.valueOf(3), VolumeUnit.QUART),
                                    Term.FeedingMethod.BOTTLE,
                                    null))
                    .map(fact -> new NewEvent(calf, fact, now, spoken))
                    .toList();
            repeat("three facts saved, with full sync and chain", "", APPENDS, i -> journal.append(facts));
        }
    }

    private void commands(Path data) throws IOException, InterruptedException {
        command(
                "`card`",
                "",
                "256m",
                data,
                "card",
                "1250",
                "-o",
                place.resolve("card.pdf").toString());
        command("`check`, whole", "", "512m", data, "check");
        Path backup = place.resolve("backup.db");
        command("`backup`, looked through", "", "512m", data, "backup", backup.toString());
        Path lines = place.resolve("record.jsonl");
        command("`export --format json`", "", "256m", data, "export", "--format", "json", "-o", lines.toString());
        size(place, "record.jsonl");
        Path sheet = place.resolve("events.csv");
        command("`export --format csv`", "", "1g", data, "export", "--format", "csv", "-o", sheet.toString());
        size(place, "events.csv");
        Path calfRows = place.resolve("calves.csv");
        command(
                "`export --format csv --rows calves`",
                "",
                "8g",
                data,
                "export",
                "--format",
                "csv",
                "--rows",
                "calves",
                "-o",
                calfRows.toString());
        Path ade = place.resolve("ade.json");
        command(
                "`export --format ade`",
                "",
                "12g",
                data,
                "export",
                "--format",
                "ade",
                "--farm",
                "org.example.willowbank",
                "-o",
                ade.toString());
        size(place, "ade.json");
        Files.deleteIfExists(sheet);
        Files.deleteIfExists(calfRows);
        Files.deleteIfExists(ade);
        Path fresh = place.resolve("restored");
        command("`restore` into an empty folder", "", "512m", fresh, "restore", backup.toString());
        command("`restore` over the same record", "", "512m", fresh, "restore", backup.toString());
        delete(fresh);
        Path imported = place.resolve("imported");
        command("`import` of the JSON Lines into an empty folder", "", "12g", imported, "import", lines.toString());
        delete(imported);
        Files.delete(lines);
        Path rescued = place.resolve("rescued");
        command("`rescue` of the whole record", "", "12g", data, "rescue", "--to", rescued.toString());
        delete(rescued);
        Files.delete(backup);
    }

    /** From schema 3, with the copy that is made before it. */
    private void migration(Path data, Instant now) throws IOException, InterruptedException, SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("record.db"));
                Statement statement = connection.createStatement()) {
            List<String> later = new ArrayList<>();
            try (var found = statement.executeQuery(
                    "SELECT name FROM sqlite_schema WHERE type = 'index'"
                            + " AND (name LIKE 'event\\_by\\_%' ESCAPE '\\' OR name IN ('event_of_barn', 'open_statement_by_sound'))")) {
                while (found.next()) {
                    later.add(found.getString(1));
                }
            }
            for (String index : later) {
                statement.executeUpdate("DROP INDEX " + index);
            }
            statement.executeUpdate("DELETE FROM flyway_schema_history WHERE version IN ('4', '5')");
            statement.executeUpdate("VACUUM");
        }
        size(data, "record.db", " without indexes");
        long begin = System.nanoTime();
        open(data, now).close();
        row("migration from schema 3, with its backup", seconds(begin), "");
    }

    /** How it is asked the i-th time. */
    private interface Question {
        Object ask(int i) throws IOException;
    }

    private void repeat(String what, String goal, int times, Question question) throws IOException {
        long[] nanos = new long[times];
        int answered = 0;
        for (int i = 0; i < times; i++) {
            long begin = System.nanoTime();
            answered += question.ask(i) == null ? 0 : 1;
            nanos[i] = System.nanoTime() - begin;
        }
        if (answered != times) {
            throw new IllegalStateException(what + " gave no answer");
        }
        double first = nanos[0] / NANOS_PER_MILLI;
        Arrays.sort(nanos);
        row(
                what,
                String.format(
                        Locale.ROOT,
                        "first %,.1f ms; of %d: median %,.1f, 95th %,.1f, longest %,.1f ms",
                        first,
                        times,
                        nanos[times / 2] / NANOS_PER_MILLI,
                        nanos[times * 95 / 100] / NANOS_PER_MILLI,
                        nanos[times - 1] / NANOS_PER_MILLI),
                goal);
    }

    private void command(String what, String goal, String heap, Path data, String... arguments)
            throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of("--data", data.toString()));
        all.addAll(List.of(arguments));
        child(what, goal, heap, Main.class, all.toArray(String[]::new));
    }

    private void child(String what, String goal, String heap, Class<?> program, String... arguments)
            throws IOException, InterruptedException {
        Path printed = place.resolve("printed.txt");
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap,
                "-Duser.timezone=America/Chicago",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        line.addAll(List.of(arguments));
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        int code = process.waitFor();
        String time = seconds(begin) + ", heap of " + heap;
        if (code != 0) {
            List<String> said = Files.readAllLines(printed).stream()
                    .filter(told -> !told.contains(": OK, "))
                    .toList();
            time += "; ended with " + code + ": " + String.join(" / ", said.subList(0, Math.min(8, said.size())));
        }
        row(what, time, goal);
    }

    private void size(Path folder, String file) throws IOException {
        size(folder, file, "");
    }

    private void size(Path folder, String file, String how) throws IOException {
        Path measured = folder.resolve(file);
        row(
                "size of " + file + how,
                Files.exists(measured)
                        ? String.format(Locale.ROOT, "%,d MB", Files.size(measured) / 1_000_000)
                        : "was not made",
                "");
    }

    private void row(String what, String figure, String goal) {
        String line = "| " + what + " | " + figure + " | " + goal + " |";
        System.out.println(line);
        rows.add(line);
    }

    private String head() throws IOException, InterruptedException {
        return "# How a big record behaves\n\nMade by `mvn -B -Pbench-scale process-test-classes` on "
                + LocalDate.now(Clock.systemUTC()) + " from commit " + Commit.described() + ", seed " + SEED
                + ", on a machine of " + Runtime.getRuntime().availableProcessors() + " cores with Java "
                + System.getProperty("java.version") + ". "
                + String.format(
                        Locale.ROOT,
                        "When it ended, %.1f programs were running or waiting for a core.",
                        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage())
                + " The herd is invented: ten years, with numbers that come again. Files are in the system's memory"
                + " from being made; a computer that was just switched on reads them from its disk first.\n\n"
                + "| what | measured | goal |\n|---|---|---|\n";
    }

    private static String seconds(long begin) {
        return String.format(Locale.ROOT, "%,.2f s", (System.nanoTime() - begin) / 1e9);
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static Clock clock(Instant now) {
        return Clock.fixed(now, SimulatedHerd.ZONE);
    }

    private static TimeOrderedIds ids(Instant now) {
        return new TimeOrderedIds(clock(now), new SecureRandom());
    }

    private static SqliteEventJournal open(Path data, Instant now) {
        return SqliteEventJournal.open(data, clock(now), SimulatedHerd.ZONE, ids(now));
    }
}
