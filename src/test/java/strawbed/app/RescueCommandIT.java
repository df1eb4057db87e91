package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collections;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;

/** The command that rescues a record, as a person uses it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RescueCommandIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-24T08:05:00Z"), ZoneOffset.UTC);
    private static final int FACTS = 200;
    private static final int PAGE = 4096;

    @TempDir
    Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    private Path record() {
        return data().resolve("record.db");
    }

    private Path target() {
        return folder.resolve("rescued");
    }

    private CommandRun rescue(String... more) {
        String[] all = {"rescue", "--to", target().toString(), "--data", data().toString()};
        String[] words = Arrays.copyOf(all, all.length + more.length);
        System.arraycopy(more, 0, words, all.length, more.length);
        return CommandRun.of(words);
    }

    private void save() {
        NewEvent fact =
                new NewEvent(null, new Event.FeedRefused(), CLOCK.instant(), Provenance.of(Provenance.Source.COMMAND));
        try (EventJournal journal = SqliteEventJournal.open(
                data(), CLOCK, ZoneOffset.UTC, new TimeOrderedIds(Clock.systemUTC(), new Random()))) {
            journal.append(Collections.nCopies(FACTS, fact));
        }
    }

    /** Overwrites the last page of the file that holds facts. */
    private void damage() throws IOException {
        byte[] bytes = Files.readAllBytes(record());
        for (int page = bytes.length / PAGE - 1; page > 0; page--) {
            String text = new String(bytes, page * PAGE, PAGE, StandardCharsets.ISO_8859_1);
            if (bytes[page * PAGE] == 0x0d && text.contains("FeedRefused")) {
                new Random(1).ints(PAGE, 0, 256).forEach(new NoiseAt(bytes, page * PAGE)::put);
                Files.write(record(), bytes);
                return;
            }
        }
        throw new AssertionError("no page of facts was found");
    }

    private static final class NoiseAt {
        private final byte[] bytes;
        private int at;

        NoiseAt(byte[] bytes, int at) {
            this.bytes = bytes;
            this.at = at;
        }

        void put(int value) {
            bytes[at++] = (byte) value;
        }
    }

    private String telling() {
        return RecordTelling.record(new Settings(target(), Optional.empty(), CLOCK, ZoneOffset.UTC));
    }

    @Test
    void a_whole_record_is_rescued_with_code_0() {
        save();
        CommandRun run = rescue();
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .contains(
                        "There is no write-ahead log beside it.",
                        "Rescued from " + record() + " into " + target().resolve("record.db") + ": 200 facts.",
                        "Nothing was lost.",
                        "The facts have new numbers and a new chain; their ids, times and words are the old ones.",
                        "Sounds are not copied: copy the folder " + data().resolve("sounds") + " to "
                                + target().resolve("sounds") + " by hand.");
        assertThat(telling()).startsWith("200 facts, chain whole (");
    }

    @Test
    void what_was_lost_is_told_with_code_1_and_the_rest_is_there() throws IOException {
        save();
        damage();
        byte[] before = Files.readAllBytes(record());
        CommandRun run = rescue(record().toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .containsPattern("Lost: \\d+ facts?, number \\d+ to \\d+\\.")
                .contains("All that is left of what is lost or left out is in " + target().resolve("rescue.txt"));
        assertThat(target().resolve("rescue.txt"))
                .content()
                .contains("Rescued from " + record(), "Lost facts: ", "No row was found of number ");
        assertThat(telling()).containsPattern("^1\\d\\d facts, chain whole");
        assertThat(Files.readAllBytes(record())).isEqualTo(before);
    }

    @Test
    void bad_input_gives_code_2_and_makes_nothing() throws IOException {
        CommandRun none = rescue();
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("There is no file " + record()).doesNotContain("Exception");
        Path letter = Files.writeString(folder.resolve("letter.txt"), "About calves. ".repeat(1000));
        CommandRun noRecord = rescue(letter.toString());
        assertThat(noRecord.code()).isEqualTo(2);
        assertThat(noRecord.err()).contains("there is no row of a record, and it is no file of SQLite");
        assertThat(target()).doesNotExist();
        save();
        assertThat(CommandRun.of("rescue", "--data", data().toString()).code()).isEqualTo(2);
        assertThat(rescue().code()).isZero();
        CommandRun taken = rescue();
        assertThat(taken.code()).isEqualTo(2);
        assertThat(taken.err()).contains(target() + " is not empty", "never replaces anything");
    }

    @Test
    void check_names_the_command_where_the_file_is_damaged() throws IOException {
        save();
        damage();
        Settings settings = new Settings(data(), Optional.empty(), CLOCK, ZoneOffset.UTC);
        assertThatThrownBy(() -> RecordTelling.record(settings)).hasMessageContaining("\"strawbed rescue --to DIR\"");
    }

    @Test
    void the_help_says_that_the_damaged_file_is_only_read() {
        assertThat(CommandRun.of("rescue", "--help").out().replaceAll("\\s+", " "))
                .contains("The damaged file is only read.", "--with-changed", "a new or an empty folder");
    }
}
