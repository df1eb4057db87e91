package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.calf.Herd;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/** What a barn tells of its people and animals is nobody else's on the same computer. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OwnersOnlyIT {
    @TempDir
    Path folder;

    private Path data;

    OwnersOnlyIT() {
        data = Path.of("none");
    }

    @BeforeEach
    void a_folder_that_everybody_may_read() throws IOException {
        data = folder.resolve("data");
        assumeThat(folder.getFileSystem().supportedFileAttributeViews())
                .as("this disk knows no rights")
                .contains("posix");
        Files.createDirectory(data);
        Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-xr-x"));
        Path probe = Files.writeString(folder.resolve("probe"), "");
        assumeThat(wide(probe)).as("this user's own files are narrow anyhow").isTrue();
    }

    private static boolean wide(Path place) {
        try {
            return Files.getPosixFilePermissions(place, LinkOption.NOFOLLOW_LINKS).stream()
                    .map(PosixFilePermission::name)
                    .anyMatch(name -> !name.startsWith("OWNER"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> wideOnes() throws IOException {
        try (Stream<Path> all = Files.walk(data)) {
            return all.filter(place -> !place.equals(data))
                    .filter(OwnersOnlyIT::wide)
                    .map(place -> data.relativize(place).toString())
                    .toList();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(data)) {
            return all.map(place -> data.relativize(place).toString()).toList();
        }
    }

    private void recordANight() {
        Clock clock = Clock.systemUTC();
        TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(1));
        Settings settings = new Settings(data, Optional.empty(), clock, ZoneOffset.UTC);
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids)) {
            FarmProtocol.adopt(journal, settings);
            SoundFolder sounds = new SoundFolder(data, ids);
            FoundSounds.adopt(journal, sounds);
            ScriptedNight night = new ScriptedNight(
                    new Recorder(journal, Herd.of(journal.all()), sounds, clock, ids, () -> "g", () -> "m"), clock);
            night.hears("new calf twelve heifer");
            night.hears("confirm entry");
            night.hears("did you see the game");
            assertThat(journal.all()).hasSizeGreaterThan(2);
            try {
                assertThat(wideOnes()).as("while it records").isEmpty();
                assertThat(names()).contains("record.db-wal", "record.db-shm", "record.lock");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private void run(String... words) {
        StringWriter err = new StringWriter();
        String[] all = Stream.concat(Stream.of(words), Stream.of("--data", data.toString()))
                .toArray(String[]::new);
        assertThat(Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), all))
                .as(err.toString())
                .isZero();
    }

    @Test
    void after_real_use_no_file_may_be_read_by_others() throws IOException {
        recordANight();
        assertThat(wideOnes()).as("before the next start could narrow it").isEmpty();
        Path backup = data.resolve("backup.db");
        run("backup", backup.toString());
        run("export", "--format", "json", "-o", data.resolve("all.jsonl").toString());
        run("card", "12");
        run("rescue", "--to", data.resolve("rescued").toString());
        run("restore", backup.toString(), "--replace");
        assertThat(wideOnes()).as("before the next start could narrow it").isEmpty();
        recordANight();
        assertThat(wideOnes()).isEmpty();
        assertThat(names())
                .contains(
                        "record.db", "record.db-head", "protocol.toml", "backups.jsonl", "all.jsonl", "sounds", "cards")
                .contains("rescued/rescue.txt", "rescued/record.db")
                .anyMatch(name -> name.startsWith("sounds/"))
                .anyMatch(name -> name.startsWith("cards/card-"))
                .anyMatch(name -> name.startsWith("record-replaced-"));
    }

    @Test
    void what_an_older_program_left_wide_is_narrowed_at_the_next_start() throws IOException {
        recordANight();
        for (String name : List.of("record.db", "record.db-head", "record.lock")) {
            Files.setPosixFilePermissions(data.resolve(name), PosixFilePermissions.fromString("rw-r--r--"));
        }
        Files.setPosixFilePermissions(data.resolve("sounds"), PosixFilePermissions.fromString("rwxr-xr-x"));
        assertThat(wideOnes()).hasSize(4);
        recordANight();
        assertThat(wideOnes()).isEmpty();
    }
}
