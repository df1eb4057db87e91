package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ImportIT extends RecordInFolder {
    private List<RecordedEvent> other(int count) {
        List<RecordedEvent> events;
        folder = temporary.resolve("other");
        try (SqliteEventJournal journal = open()) {
            events = journal.append(randomFacts(count));
        }
        folder = temporary.resolve("data");
        return events;
    }

    @Test
    void a_whole_record_comes_out_the_same_in_an_empty_one() {
        List<RecordedEvent> events = other(200);
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.importAll(events)).as("seed %s", SEED).isEqualTo(events);
            assertThat(journal.all()).isEqualTo(events);
            assertThat(journal.importAll(events)).isEmpty();
        }
        try (SqliteEventJournal journal = openReadOnly()) {
            assertThat(journal.all()).isEqualTo(events);
        }
    }

    @Test
    void into_a_record_what_is_missing_is_appended_with_its_id_and_instants() {
        List<RecordedEvent> events = other(10);
        try (SqliteEventJournal journal = open()) {
            List<RecordedEvent> own = journal.append(randomFacts(3));
            journal.importAll(events.subList(4, 6));
            List<RecordedEvent> added = journal.importAll(events);

            assertThat(added).extracting(RecordedEvent::sequence).containsExactly(6L, 7L, 8L, 9L, 10L, 11L, 12L, 13L);
            assertThat(added)
                    .extracting(RecordedEvent::id)
                    .doesNotContain(events.get(4).id(), events.get(5).id());
            assertThat(added.get(7).recordedAt()).isEqualTo(events.get(9).recordedAt());
            assertThat(added.get(7).event()).isEqualTo(events.get(9).event());
            assertThat(journal.all()).hasSize(13).startsWith(own.toArray(RecordedEvent[]::new));
            assertThat(journal.append(randomFacts(1)).get(0).sequence()).isEqualTo(14);
            assertThat(journal.verify().isSound())
                    .as("what was imported is chained too")
                    .isTrue();
        }
    }

    @Test
    void another_fact_under_a_known_id_changes_nothing() {
        List<RecordedEvent> events = new ArrayList<>(other(5));
        RecordedEvent last = events.get(4);
        try (SqliteEventJournal journal = open()) {
            journal.importAll(List.of(last));
            List<RecordedEvent> before = journal.all();
            events.set(
                    4,
                    new RecordedEvent(
                            last.id(),
                            5,
                            last.recordedAt(),
                            last.occurredAt().plusNanos(1),
                            last.zone(),
                            last.calf(),
                            new Event.DamNursed(),
                            last.provenance()));
            assertRefused(
                    () -> journal.importAll(events), Reason.CONFLICT, last.id().toString());
            assertThat(journal.all()).isEqualTo(before);
        }
    }

    @Test
    void a_record_opened_for_reading_imports_nothing() {
        List<RecordedEvent> events = other(1);
        open().close();
        try (SqliteEventJournal journal = openReadOnly()) {
            assertRefused(() -> journal.importAll(events), Reason.READ_ONLY, "nothing was imported");
        }
    }
}
