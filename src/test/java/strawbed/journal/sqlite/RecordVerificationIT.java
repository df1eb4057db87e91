package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;

/** Somebody, or the disk, changes the file behind the program's back. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordVerificationIT extends RecordInFolder {
    private static final int FACTS = 12;

    private List<RecordedEvent> saved = List.of();

    @BeforeEach
    void save_some_facts() {
        List<RecordedEvent> all = new ArrayList<>();
        try (SqliteEventJournal journal = open()) {
            all.addAll(journal.append(randomFacts(FACTS / 2)));
            all.addAll(journal.append(randomFacts(FACTS / 2)));
        }
        saved = List.copyOf(all);
    }

    private RecordHealth verify() {
        try (SqliteEventJournal journal = openReadOnly()) {
            return journal.verify();
        }
    }

    private List<String> findings() {
        return verify().findings().stream().map(Finding::what).toList();
    }

    /** Works as a careful forger does: takes the triggers away and puts them back. */
    private void tamper(String... changes) throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            List<String> triggers = new ArrayList<>();
            List<String> names = new ArrayList<>();
            try (ResultSet rows =
                    statement.executeQuery("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")) {
                while (rows.next()) {
                    names.add(rows.getString(1));
                    triggers.add(rows.getString(2));
                }
            }
            for (String name : names) {
                statement.executeUpdate("DROP TRIGGER " + name);
            }
            for (String change : changes) {
                assertThat(statement.executeUpdate(change)).as(change).isPositive();
            }
            for (String trigger : triggers) {
                statement.executeUpdate(trigger);
            }
        }
    }

    @Test
    void a_record_that_nobody_touched_is_sound() {
        RecordHealth health = verify();
        assertThat(health.findings()).isEmpty();
        assertThat(health.facts()).isEqualTo(FACTS);
        assertThat(health.last()).isEqualTo(FACTS);
        assertThat(health.isChained()).isTrue();
        assertThat(health.head()).matches("[0-9a-f]{64}");
    }

    @Test
    void an_empty_record_is_sound() {
        folder = temporary.resolve("empty");
        open().close();
        assertThat(verify()).isEqualTo(new RecordHealth(0, true, 0, null, List.of()));
    }

    @Test
    void a_changed_byte_in_what_a_row_tells_is_found() throws SQLException {
        for (long place = 1; place <= FACTS; place++) {
            String json = jsonOf(place);
            // One more blank means the same to every reader of JSON.
            tamper("UPDATE event SET json = replace(json, '{', '{ ') WHERE sequence = " + place);
            assertThat(findings())
                    .containsExactly("Number " + place + " of the record is not as it was saved: it or its link was"
                            + " changed afterwards.");
            restoreJson(place, json);
            assertThat(findings()).isEmpty();
        }
    }

    private String jsonOf(long place) throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement();
                ResultSet row = statement.executeQuery("SELECT json FROM event WHERE sequence = " + place)) {
            return row.getString(1);
        }
    }

    private void restoreJson(long place, String json) throws SQLException {
        tamper("UPDATE event SET json = '" + json.replace("'", "''") + "' WHERE sequence = " + place);
    }

    @Test
    void every_column_is_in_the_chain() throws SQLException {
        for (String column : List.of(
                "id",
                "recorded_at",
                "occurred_at",
                "zone",
                "calf",
                "type",
                "source",
                "verdict",
                "grammar",
                "model",
                "sound",
                "operator")) {
            folder = temporary.resolve(column);
            save_some_facts();
            tamper("UPDATE event SET " + column + " = coalesce(" + column + ", '') || 'x' WHERE sequence = 4");
            assertThat(findings())
                    .as(column)
                    .anySatisfy(what -> assertThat(what).startsWith("Number 4 of the record is not as it was saved"));
        }
        for (String column : List.of("version = version + 1", "words = '[]'")) {
            folder = temporary.resolve(column.substring(0, 5));
            save_some_facts();
            tamper("UPDATE event SET " + column + " WHERE sequence = 4");
            assertThat(findings())
                    .as(column)
                    .anySatisfy(what -> assertThat(what).startsWith("Number 4 of the record is not as it was saved"));
        }
    }

    @Test
    void a_removed_row_is_found() throws SQLException {
        tamper("DELETE FROM event WHERE sequence = 7");
        assertThat(findings()).containsExactly("Number 7 of the record is gone.");
    }

    @Test
    void rows_removed_with_their_links_are_found() throws SQLException {
        tamper("DELETE FROM event_chain WHERE sequence IN (3, 4, 5)", "DELETE FROM event WHERE sequence IN (3, 4, 5)");
        assertThat(findings()).containsExactly("Number 3 of the record is gone, and all up to number 5.");
    }

    @Test
    void a_removed_row_is_found_also_when_all_later_ones_are_moved_up() throws SQLException {
        tamper(
                "DELETE FROM event_chain WHERE sequence = 7",
                "DELETE FROM event WHERE sequence = 7",
                "UPDATE event_chain SET sequence = sequence + 1000 WHERE sequence > 7",
                "UPDATE event_chain SET sequence = sequence - 1001 WHERE sequence > 1000",
                "UPDATE event SET sequence = sequence + 1000 WHERE sequence > 7",
                "UPDATE event SET sequence = sequence - 1001 WHERE sequence > 1000");
        assertThat(findings())
                .containsExactly("Number 7 of the record does not follow on the one before: between them something was"
                        + " taken out or put in, or facts were swapped.");
    }

    @Test
    void an_inserted_row_is_found() throws SQLException {
        tamper("INSERT INTO event SELECT 13, '019bb5c0-0000-7000-8000-00000000002b', recorded_at, occurred_at, zone,"
                + " calf, type, version, json, source, words, verdict, grammar, model, sound, operator FROM event"
                + " WHERE sequence = 1");
        assertThat(findings())
                .containsExactly("Number 13 of the record has no link in the chain: it was not saved by Strawbed, or"
                        + " its link was removed.");
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(1));
            assertThat(journal.verify().findings())
                    .as("what is saved later hides nothing")
                    .extracting(Finding::sequence)
                    .containsExactly(13L);
        }
    }

    @Test
    void an_inserted_row_with_a_copied_link_is_found() throws SQLException {
        tamper(
                "INSERT INTO event SELECT 13, '019bb5c0-0000-7000-8000-00000000002b', recorded_at, occurred_at, zone,"
                        + " calf, type, version, json, source, words, verdict, grammar, model, sound, operator FROM event"
                        + " WHERE sequence = 12",
                "INSERT INTO event_chain SELECT 13, station, previous, hash FROM event_chain WHERE sequence = 12");
        assertThat(verify().findings())
                .isNotEmpty()
                .extracting(Finding::sequence)
                .containsOnly(13L);
    }

    @Test
    void two_swapped_rows_are_found() throws SQLException {
        tamper(swap("event", 5, 9));
        assertThat(verify().findings()).extracting(Finding::sequence).containsExactly(5L, 9L);
        assertThat(findings()).allSatisfy(what -> assertThat(what).contains("is not as it was saved"));
    }

    @Test
    void two_rows_swapped_with_their_links_are_found() throws SQLException {
        List<String> both = new ArrayList<>(List.of(swap("event_chain", 5, 9)));
        both.addAll(List.of(swap("event", 5, 9)));
        tamper(both.toArray(String[]::new));
        assertThat(verify().findings()).extracting(Finding::sequence).containsExactly(5L, 6L, 9L, 10L);
        assertThat(findings()).allSatisfy(what -> assertThat(what).contains("does not follow on the one before"));
    }

    private static String[] swap(String table, int one, int other) {
        String place = "UPDATE " + table + " SET sequence = ";
        return new String[] {
            place + "1000 WHERE sequence = " + one,
            place + one + " WHERE sequence = " + other,
            place + other + " WHERE sequence = 1000"
        };
    }

    @Test
    void a_record_cut_at_its_end_is_found_once_there_was_a_backup() throws SQLException {
        new RecordBackup(folder).write(temporary.resolve("copy.db"), CLOCK);
        tamper("DELETE FROM event_chain WHERE sequence > 10", "DELETE FROM event WHERE sequence > 10");
        assertThat(findings())
                .singleElement()
                .asString()
                .contains("copy.db", "ends with number 12 of the record, which is gone here");
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(4));
        }
        assertThat(findings()).singleElement().asString().contains("which is another one here");
    }

    @Test
    void a_trigger_taken_away_is_found() throws SQLException {
        execute("DROP TRIGGER event_is_never_changed");
        execute("CREATE TRIGGER quiet AFTER INSERT ON event BEGIN SELECT 1; END");
        assertThat(findings())
                .containsExactly(
                        "The record's trigger event_is_never_changed is gone: somebody removed it.",
                        "The record has a trigger quiet that Strawbed did not make.");
    }

    @Test
    void another_station_is_found() throws SQLException {
        tamper("UPDATE station SET id = '019bb5c0-0000-7000-8000-0000000000ff'");
        assertThat(findings())
                .singleElement()
                .asString()
                .matches("Facts are chained to a station [0-9a-f-]{36}, which is not the record's\\.");
    }

    @Test
    void a_row_that_cannot_be_read_is_named_and_stops_nothing() throws SQLException {
        tamper(
                "UPDATE event SET json = '{\"nonsense\":1}' WHERE sequence = 2",
                "UPDATE event SET zone = 'Barn/Nowhere' WHERE sequence = 8");
        assertThat(findings())
                .anyMatch(what -> what.startsWith("Number 2 of the record was not read"))
                .anyMatch(what ->
                        what.startsWith("Number 8 of the record was not read") && what.contains("Barn/Nowhere"));
        assertThat(verify().facts()).isEqualTo(FACTS);
    }

    @Test
    void a_flipped_bit_is_found_or_changes_nothing_that_is_read() throws IOException {
        byte[] sound = Files.readAllBytes(database());
        Random random = new Random(SEED);
        int found = 0;
        for (int i = 0; i < 20; i++) {
            byte[] flipped = sound.clone();
            int place = random.nextInt(sound.length);
            flipped[place] ^= (byte) (1 << random.nextInt(8));
            Files.write(database(), flipped);
            try (SqliteEventJournal journal = openReadOnly()) {
                if (journal.verify().isSound()) {
                    assertThat(journal.all())
                            .as("seed %s, byte %s", SEED, place)
                            .isEqualTo(saved);
                } else {
                    found++;
                }
            } catch (JournalException e) {
                assertThat(e.getMessage()).as("seed %s, byte %s", SEED, place).matches("(?s)[A-Z].{30,}\\.");
                found++;
            }
        }
        assertThat(found).as("of 20 flips, seed %s", SEED).isPositive();
    }

    @Test
    void a_flipped_bit_in_any_fact_is_found() throws IOException {
        byte[] sound = Files.readAllBytes(database());
        int from = indexOf(sound, saved.get(FACTS - 1).id().toString());
        Random random = new Random(SEED);
        for (int i = 0; i < 40; i++) {
            byte[] flipped = sound.clone();
            // The row's id and what stands behind it: the times, the zone.
            flipped[from + random.nextInt(90)] ^= (byte) (1 << random.nextInt(8));
            Files.write(database(), flipped);
            try (SqliteEventJournal journal = openReadOnly()) {
                assertThat(journal.verify().isSound())
                        .as("seed %s, flip %s", SEED, i)
                        .isFalse();
            } catch (JournalException e) {
                assertThat(e.getMessage()).contains("damaged");
            }
        }
    }

    private static int indexOf(byte[] bytes, String text) {
        int place = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(text);
        assertThat(place).isNotNegative();
        return place;
    }
}
