package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import strawbed.calf.Herd;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/** A program that records, makes its disk read-only as a stick's switch does, and then uses what it recorded. */
final class ReadOnlyDiskStory {
    private ReadOnlyDiskStory() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        Path folder = Path.of(arguments[0]);
        Path data = folder.resolve("data");
        Clock clock = Clock.systemUTC();
        TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(20261125));
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids)) {
            ScriptedNight night = new ScriptedNight(
                    new Recorder(
                            journal,
                            Herd.of(journal.all()),
                            new SoundFolder(data, ids),
                            clock,
                            ids,
                            () -> "g",
                            () -> "m"),
                    clock);
            night.hears("new calf twelve heifer");
            night.hears("confirm entry");
        }
        Process mount = new ProcessBuilder("mount", "-o", "remount,ro", folder.toString())
                .inheritIO()
                .start();
        assertThat(mount.waitFor()).isZero();
        assertThat(Files.isWritable(data)).isFalse();
        Map<String, byte[]> before = bytes(data);

        CommandRun recorder = CommandRun.of("demo", "--data", data.toString());
        assertThat(recorder.code()).as(recorder.err()).isEqualTo(Failures.BAD_INPUT);
        assertThat(recorder.err()).contains("may only be read").doesNotContain("Exception");

        assertThat(works("calves", data)).contains("12");
        assertThat(works("due", data)).contains("12");
        assertThat(works("calf 12", data)).contains("12");
        assertThat(works("export --format json", data)).contains("CalfOpened");
        assertThat(RecordTelling.record(new Settings(data, Optional.empty(), clock, ZoneOffset.UTC)))
                .contains("chain whole");
        assertThat(bytes(data)).usingRecursiveComparison().isEqualTo(before);
        System.out.println("read on a read-only disk");
    }

    private static String works(String command, Path data) {
        CommandRun run =
                CommandRun.of(Stream.concat(Stream.of(command.split(" ", -1)), Stream.of("--data", data.toString()))
                        .toArray(String[]::new));
        assertThat(run.code()).as("%s: %s", command, run.err()).isZero();
        return run.out();
    }

    private static Map<String, byte[]> bytes(Path data) throws IOException {
        Map<String, byte[]> bytes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(data)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bytes.put(data.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
        return bytes;
    }
}
