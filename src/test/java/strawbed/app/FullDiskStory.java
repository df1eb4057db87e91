package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.logging.Level;
import java.util.logging.Logger;
import strawbed.calf.Herd;
import strawbed.dialog.Prompt;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.testkit.MemoryJournal;

/** A program that records on a small disk, fills it, goes on, and makes room; ends with an exception if facts suffer. */
final class FullDiskStory {
    private static final int ROUNDS = 6;

    private final Path folder;
    private final Path data;
    private final Clock clock = Clock.systemUTC();
    private final TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(20261125));

    private FullDiskStory(Path folder) {
        this.folder = folder;
        this.data = folder.resolve("data");
    }

    public static void main(String[] arguments) throws IOException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        FullDiskStory story = new FullDiskStory(Path.of(arguments[0]));
        if (arguments[1].equals(SmallDisk.Way.FILE_LIMIT.name())) {
            story.untilAFileIsTooLarge();
        } else {
            story.untilTheDiskIsFull();
        }
    }

    private SqliteEventJournal open() {
        return SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids);
    }

    private void untilTheDiskIsFull() throws IOException {
        List<RecordedEvent> saved;
        int refused = 0;
        try (SqliteEventJournal journal = open()) {
            SoundFolder sounds = new SoundFolder(data, ids);
            ScriptedNight night = new ScriptedNight(
                    new Recorder(journal, Herd.of(journal.all()), sounds, clock, ids, () -> "g", () -> "m"), clock);
            night.hears("new calf twelve heifer");
            assertThat(night.hears("confirm entry")).contains(new Prompt.Saved(2, "12"));
            night.hears("calf twelve fed two quarts");
            Path ballast = fill();

            for (int round = 0; round < ROUNDS; round++) {
                List<RecordedEvent> before = journal.all();
                List<Prompt> prompts = night.hears("confirm entry");
                boolean grew = journal.all().size() > before.size();
                assertThat(prompts.stream().anyMatch(Prompt.Saved.class::isInstance))
                        .isEqualTo(grew);
                assertThat(prompts.stream().anyMatch(Prompt.NotSaved.class::isInstance))
                        .isNotEqualTo(grew);
                assertThat(journal.all()).startsWith(before.toArray(RecordedEvent[]::new));
                refused += grew ? 0 : 1;
                if (grew) {
                    night.hears("calf twelve navel dipped");
                }
            }
            assertThat(refused).isPositive();
            assertThat(night.hears("did you see the game"))
                    .as("neither its sound nor its words have room")
                    .filteredOn(Prompt.NotKept.class::isInstance)
                    .hasSize(2);
            saved = journal.all();
            refusesWhole(journal, "3000 facts were not saved", () -> journal.append(many()));
            refusesWhole(
                    journal,
                    "Nothing was imported",
                    () -> journal.importAll(new MemoryJournal(Instant.EPOCH).append(many())));
            assertThat(journal.all()).isEqualTo(saved);
            assertThat(journal.verify().findings()).isEmpty();

            Files.delete(ballast);
            assertThat(night.hears("confirm entry")).hasAtLeastOneElementOfType(Prompt.Saved.class);
            assertThat(journal.openStatements()).singleElement().satisfies(open -> {
                assertThat(open.statement().words()).contains("game");
                assertThat(sounds.file(open.statement().sound())).exists();
            });
            night.hears("new calf thirteen bull");
            assertThat(night.hears("confirm entry")).contains(new Prompt.Saved(2, "13"));
            saved = journal.all();
        }
        isWhole(saved);
        print(saved.size(), refused);
        startsOnAFullDisk(saved);
    }

    /** A start is either refused with a sentence, or all is there. */
    private void startsOnAFullDisk(List<RecordedEvent> saved) throws IOException {
        Path ballast = fill();
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.all()).isEqualTo(saved);
        } catch (JournalException failure) {
            assertThat(failure.reason()).isEqualTo(Reason.FULL);
            assertThat(failure).hasMessageContaining("Free some space");
        }
        assertThatThrownBy(() -> SqliteEventJournal.open(folder.resolve("other"), clock, ZoneOffset.UTC, ids))
                .as("a new record")
                .isInstanceOfSatisfying(
                        JournalException.class, failure -> assertThat(failure).hasMessageMatching("(?s)[A-Z].*\\."));
        Files.delete(ballast);
        isWhole(saved);
        SqliteEventJournal.open(folder.resolve("other"), clock, ZoneOffset.UTC, ids)
                .close();
    }

    private void untilAFileIsTooLarge() {
        int refused = 0;
        int saved = 0;
        try (SqliteEventJournal journal = open()) {
            while (refused < ROUNDS) {
                try {
                    saved += journal.append(many()).size();
                } catch (JournalException failure) {
                    refused++;
                }
                assertThat(journal.all()).hasSize(saved);
            }
            assertThat(journal.verify().findings()).isEmpty();
        }
        print(saved, refused);
    }

    private void isWhole(List<RecordedEvent> saved) {
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings()).isEmpty();
            assertThat(journal.all()).isEqualTo(saved);
            assertThat(journal.verify().findings()).isEmpty();
        }
    }

    private static void refusesWhole(SqliteEventJournal journal, String what, Runnable work) {
        int before = journal.all().size();
        assertThatThrownBy(work::run)
                .isInstanceOfSatisfying(
                        JournalException.class,
                        failure -> assertThat(failure.reason()).isEqualTo(Reason.FULL))
                .hasMessageContainingAll(what, "Free some space");
        assertThat(journal.all()).hasSize(before);
    }

    private static List<NewEvent> many() {
        return Collections.nCopies(
                3000,
                new NewEvent(null, new Event.FeedRefused(), Instant.EPOCH, Provenance.of(Provenance.Source.COMMAND)));
    }

    /** Takes all room to the last byte. */
    private Path fill() throws IOException {
        Path ballast = folder.resolve("ballast");
        for (int size : new int[] {65_536, 4096, 1}) {
            try (OutputStream out =
                    Files.newOutputStream(ballast, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
                byte[] block = new byte[size];
                for (boolean hasRoom = true; hasRoom; ) {
                    hasRoom = takes(out, block);
                }
            }
        }
        return ballast;
    }

    private static boolean takes(OutputStream out, byte[] block) {
        try {
            out.write(block);
            return true;
        } catch (IOException full) {
            return false;
        }
    }

    private static void print(int saved, int refused) {
        System.out.println("saved " + saved + ", refused " + refused);
    }
}
