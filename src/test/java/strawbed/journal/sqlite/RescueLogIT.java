package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;

/** A record of which the last facts are in the write-ahead log only, as after a power cut. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RescueLogIT extends DamagedRecord {
    private static final int IN_FILE = 60;
    private static final int IN_LOG = 25;
    private static final int TOGETHER = 40;

    private byte[] file = new byte[0];
    private byte[] log = new byte[0];

    /** How long the log was after each fact that went into it alone. */
    private final List<Integer> lengths = new ArrayList<>();

    @BeforeEach
    void copy_a_record_while_it_is_open() throws IOException {
        List<RecordedEvent> all = new ArrayList<>();
        try (SqliteEventJournal journal = open()) {
            all.addAll(journal.append(manyFacts(IN_FILE)));
        }
        Path beside = folder.resolve("record.db-wal");
        try (SqliteEventJournal journal = open()) {
            for (int i = 0; i < IN_LOG; i++) {
                all.addAll(journal.append(manyFacts(i + 1).subList(i, i + 1)));
                lengths.add((int) Files.size(beside));
            }
            all.addAll(journal.append(manyFacts(TOGETHER)));
            file = Files.readAllBytes(database());
            log = Files.readAllBytes(beside);
        }
        saved = List.copyOf(all);
        // What is in the file alone shows that the facts meant to be in the log are there only.
        assertThat(rescued(null).facts().taken()).hasSize(IN_FILE);
    }

    private RecordRescue.Plan rescued(byte @Nullable [] withLog) throws IOException {
        Path damaged = damaged(file);
        if (withLog != null) {
            Files.write(damaged.resolveSibling("damaged.db-wal"), withLog);
        }
        return RecordRescue.plan(damaged, false);
    }

    @Test
    void what_is_in_the_log_is_rescued() throws IOException {
        RecordRescue.Plan plan = rescued(log);
        assertThat(plan.facts().taken()).isEqualTo(saved);
        assertThat(plan.facts().leftOut()).isEmpty();
        assertThat(plan.facts().missing()).isEmpty();
        // One change for each fact saved alone, and one for those saved together.
        assertThat(String.join(" ", plan.found().told()))
                .containsPattern("Its write-ahead log has \\d+ pages; \\d+ were laid over the file's, of "
                        + (IN_LOG + 1) + " finished changes\\.");
    }

    @Test
    void a_log_damaged_in_its_middle_gives_all_facts_from_before() throws IOException {
        for (int fact = 0; fact < IN_LOG; fact++) {
            byte[] damaged = log.clone();
            damaged[lengths.get(fact) - 1000] ^= 0x10;
            RecordRescue.Plan plan = rescued(damaged);
            String when = "fact " + fact + " of the log is damaged";
            assertThat(plan.facts().taken()).as(when).containsAll(saved.subList(0, IN_FILE + fact));
            assertHonest(plan, IN_FILE + fact, when);
            assertThat(String.join(" ", plan.found().told())).as(when).contains("on the log is damaged");
        }
    }

    @Test
    void what_lies_behind_the_damage_is_taken_where_the_chain_proves_it() throws IOException {
        byte[] damaged = log.clone();
        damaged[lengths.get(2) - 1000] ^= 0x10;
        RecordRescue.Plan plan = rescued(damaged);
        assertThat(plan.facts().taken()).containsAll(saved.subList(IN_FILE + IN_LOG, saved.size()));
        assertThat(plan.facts().unproven()).isEmpty();
    }

    @Test
    void a_change_that_was_never_finished_is_not_rescued() throws IOException {
        // The log runs on behind the last change with older pages, or none: cut within the last change.
        RecordRescue.Plan whole = rescued(log);
        assertThat(whole.facts().taken()).hasSize(saved.size());
        byte[] cut = Arrays.copyOf(log, lengths.get(IN_LOG - 1) + 3 * (24 + 4096) + 100);
        RecordRescue.Plan plan = rescued(cut);
        assertThat(plan.facts().taken()).isEqualTo(saved.subList(0, IN_FILE + IN_LOG));
        assertThat(plan.facts().leftOut()).isEmpty();
        assertThat(plan.facts().missing()).isEmpty();
        assertThat(String.join(" ", plan.found().told())).contains("never finished");
    }

    @Test
    void a_log_that_lost_its_head_is_read_as_far_as_the_chain_proves_it() throws IOException {
        byte[] damaged = log.clone();
        Arrays.fill(damaged, 0, 32, (byte) 0x55);
        RecordRescue.Plan plan = rescued(damaged);
        assertThat(plan.facts().taken()).isEqualTo(saved);
        assertThat(String.join(" ", plan.found().told())).contains("From its page 1 on the log is damaged");
    }

    @Test
    void pages_of_an_older_log_are_not_laid_over() throws IOException {
        byte[] older = log.clone();
        // Another salt in the head, with its checksum: what follows was left behind by the log before.
        older[16] ^= 1;
        ByteBuffer head = ByteBuffer.wrap(older);
        assertThat(head.getInt(0) & ~1).isEqualTo(0x377f0682);
        head.order((head.getInt(0) & 1) == 1 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        int first = 0;
        int second = 0;
        for (int at = 0; at < 24; at += 8) {
            first += head.getInt(at) + second;
            second += head.getInt(at + 4) + first;
        }
        head.order(ByteOrder.BIG_ENDIAN).putInt(24, first).putInt(28, second);
        RecordRescue.Plan plan = rescued(older);
        assertThat(plan.facts().taken()).isEqualTo(saved.subList(0, IN_FILE));
        assertThat(String.join(" ", plan.found().told()))
                .contains("0 were laid over")
                .doesNotContain("damaged");
    }

    @Test
    void without_the_log_it_is_told_that_there_is_none() throws IOException {
        RecordRescue.Plan plan = rescued(null);
        assertThat(plan.facts().taken()).isEqualTo(saved.subList(0, IN_FILE));
        assertThat(String.join(" ", plan.found().told())).contains("There is no write-ahead log beside it");
        assertThat(String.join(" ", rescued(new byte[0]).found().told())).contains("Its write-ahead log is empty.");
    }
}
