package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** A second program, and its sudden end. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class KilledProgramIT {
    private static final long SEED = 20261124;
    private static final int RUNS = 20;

    @TempDir
    Path folder;

    @Test
    void every_fact_that_was_reported_saved_is_there_after_a_kill() throws IOException, InterruptedException {
        Random random = new Random(SEED);
        long before = 0;
        for (int run = 0; run < RUNS; run++) {
            long reported = before + 1 + random.nextInt(60);
            long last = 0;
            Process program = start();
            try (BufferedReader printed = program.inputReader(StandardCharsets.UTF_8)) {
                while (last < reported) {
                    last = Long.parseLong(printed.readLine());
                }
                // Through its handle, because the process itself would close the stream with what is still in it.
                assertThat(program.toHandle().destroyForcibly()).isTrue();
                // A line cut short by the kill shows a smaller number, or none.
                last = Math.max(
                        last,
                        printed.lines()
                                .filter(line -> !line.isEmpty())
                                .mapToLong(Long::parseLong)
                                .max()
                                .orElse(0));
            } finally {
                program.destroyForcibly().waitFor();
            }
            try (SqliteEventJournal journal = open()) {
                List<RecordedEvent> all = journal.all();
                assertThat(all.size())
                        .as("seed %s, run %s: facts saved, of which %s were reported", SEED, run, last)
                        .isGreaterThanOrEqualTo((int) last);
                assertThat(all.size() % AppendUntilKilled.AT_ONCE)
                        .as("seed %s, run %s: facts of a half transaction", SEED, run)
                        .isZero();
                assertThat(all.get(all.size() - 1).sequence()).isEqualTo(all.size());
                before = all.size();
            }
        }
    }

    @Test
    void a_second_program_is_told_who_writes() throws IOException, InterruptedException {
        Process program = start();
        try (BufferedReader printed = program.inputReader(StandardCharsets.UTF_8)) {
            assertThat(printed.readLine()).isEqualTo("1");
            assertThatThrownBy(this::open)
                    .isInstanceOfSatisfying(
                            JournalException.class, e -> assertThat(e.reason()).isEqualTo(Reason.BUSY))
                    .hasMessageContaining("process " + program.pid() + ", started at 20");
        } finally {
            program.destroyForcibly().waitFor();
        }
        open().close();
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        AppendUntilKilled.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private SqliteEventJournal open() {
        Clock clock = Clock.systemUTC();
        return SqliteEventJournal.open(
                folder, clock, ZoneId.of("UTC"), new TimeOrderedIds(clock.withZone(ZoneOffset.UTC), new Random(SEED)));
    }
}
