package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.app.SmallDisk.Way;
import strawbed.event.NewEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/** Real disks that are full or read-only, as far as this machine lets a test make them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class DiskFaultsIT {
    @TempDir
    Path folder;

    @Test
    void a_disk_that_fills_up_hurts_nothing_is_told_each_time_and_passes() throws Exception {
        Optional<Way> way = SmallDisk.way(folder, Way.NAMESPACE, Way.MOUNT);
        assumeThat(way)
                .as("skipped: this machine allows neither a mount name space nor a mount")
                .isPresent();
        SmallDisk.Outcome outcome = SmallDisk.run(way.orElseThrow(), FullDiskStory.class, folder);
        assertThat(outcome.code()).as(outcome.printed()).isZero();
        assertThat(outcome.printed()).matches("(?s).*saved \\d+, refused [1-9].*");
    }

    @Test
    void a_queue_of_pages_on_a_full_disk_keeps_what_it_promised_and_tells_the_rest() throws Exception {
        Optional<Way> way = SmallDisk.way(folder, Way.NAMESPACE, Way.MOUNT);
        assumeThat(way)
                .as("skipped: this machine allows neither a mount name space nor a mount")
                .isPresent();
        SmallDisk.Outcome outcome = SmallDisk.run(way.orElseThrow(), FullQueueStory.class, folder);
        assertThat(outcome.code()).as(outcome.printed()).isZero();
        assertThat(outcome.printed()).matches("(?s).*queued \\d+, refused [1-9].*");
    }

    @Test
    void a_file_that_may_not_grow_hurts_nothing() throws Exception {
        assumeThat(SmallDisk.way(folder, Way.FILE_LIMIT))
                .as("skipped: there is no shell with ulimit -f here")
                .isPresent();
        SmallDisk.Outcome outcome = SmallDisk.run(Way.FILE_LIMIT, FullDiskStory.class, folder);
        assertThat(outcome.code()).as(outcome.printed()).isZero();
        int saved = Integer.parseInt(outcome.printed().replaceAll("(?s).*saved (\\d+), refused [1-9].*", "$1"));
        Clock clock = Clock.systemUTC();
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                folder.resolve("data"), clock, ZoneOffset.UTC, new TimeOrderedIds(clock, new Random(1)))) {
            assertThat(journal.all()).hasSize(saved).isNotEmpty();
            assertThat(journal.append(journal.all().stream()
                            .limit(1)
                            .map(one -> new NewEvent(one.calf(), one.event(), one.occurredAt(), one.provenance()))
                            .toList()))
                    .as("without the limit")
                    .hasSize(1);
            assertThat(journal.verify().findings()).isEmpty();
        }
    }

    @Test
    void a_read_only_disk_is_told_to_the_recorder_and_can_be_read() throws IOException, InterruptedException {
        Optional<Way> way = SmallDisk.way(folder, Way.NAMESPACE, Way.MOUNT);
        assumeThat(way)
                .as("skipped: this machine allows neither a mount name space nor a mount")
                .isPresent();
        SmallDisk.Outcome outcome = SmallDisk.run(way.orElseThrow(), ReadOnlyDiskStory.class, folder);
        assertThat(outcome.code()).as(outcome.printed()).isZero();
        assertThat(folder.toFile().list()).as("it was on its own disk").isEmpty();
    }
}
