package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.OpenStatement;

/** From the damaged file to the new record and its list. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RescuedRecordIT extends DamagedRecord {
    private Path target() {
        return temporary.resolve("rescued");
    }

    private RecordRescue rescue() {
        return new RecordRescue(target(), CLOCK, ZONE, ids);
    }

    private SqliteEventJournal openRescued() {
        return SqliteEventJournal.openReadOnly(target(), CLOCK, ZONE, ids);
    }

    private void saveFew(int count) {
        try (SqliteEventJournal journal = open()) {
            saved = journal.append(randomFacts(count));
        }
    }

    private String list() throws IOException {
        return Files.readString(target().resolve("rescue.txt"), StandardCharsets.UTF_8);
    }

    /** Lets SQLite write the file with pages of another size. */
    private void paginate(int size) throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            statement.execute("PRAGMA journal_mode = DELETE");
            statement.execute("PRAGMA page_size = " + size);
            statement.execute("VACUUM");
        }
        assertThat(pageSize()).isEqualTo(size);
    }

    @Test
    void facts_statements_and_ends_come_out_as_they_were() throws IOException, SQLException {
        saveManyFacts();
        List<OpenStatement> open;
        try (SqliteEventJournal journal = openReadOnly()) {
            open = journal.openStatements();
        }
        assertThat(open).hasSize(STATEMENTS * 3 / 4);
        byte[] before = Files.readAllBytes(database());
        Rescued rescued = rescue().from(database(), false);
        assertThat(rescued.isWhole()).isTrue();
        assertThat(rescued.facts()).isEqualTo(FACTS);
        assertThat(rescued.statements()).isEqualTo(STATEMENTS);
        assertThat(rescued.open()).isEqualTo(open.size());
        try (SqliteEventJournal journal = openRescued()) {
            assertThat(journal.all()).isEqualTo(saved);
            assertThat(journal.openStatements()).isEqualTo(open);
            assertThat(journal.verify().findings()).isEmpty();
        }
        assertThat(ends(target().resolve("record.db")))
                .isEqualTo(ends(database()))
                .hasSize(STATEMENTS / 4);
        assertThat(Files.readAllBytes(database())).isEqualTo(before);
    }

    private static List<String> ends(Path file) throws SQLException {
        List<String> ends = new ArrayList<>();
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = raw.createStatement();
                ResultSet rows =
                        statement.executeQuery("SELECT statement || settled_at || how FROM statement_settled")) {
            while (rows.next()) {
                ends.add(rows.getString(1));
            }
        }
        ends.sort(null);
        return ends;
    }

    @Test
    void nothing_is_written_beside_the_damaged_file() throws IOException {
        saveFew(30);
        Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
        Path copy = Files.copy(database(), elsewhere.resolve("old.db"));
        rescue().from(copy, false);
        try (Stream<Path> files = Files.list(elsewhere)) {
            assertThat(files).containsExactly(copy);
        }
    }

    @Test
    void a_changed_fact_is_left_out_and_listed_and_taken_only_when_asked_for() throws IOException, SQLException {
        saveFew(30);
        execute("DROP TRIGGER event_is_never_changed");
        execute("UPDATE event SET zone = 'Europe/Berlin' WHERE sequence = 12");
        execute("UPDATE event SET json = '[\"no fact\"]' WHERE sequence = 20");
        dropOldCopies();
        Rescued rescued = rescue().from(database(), false);
        assertThat(rescued.facts()).isEqualTo(28);
        assertThat(rescued.leftOut()).isEqualTo(2);
        assertThat(rescued.missing()).isEmpty();
        assertThat(rescued.isWhole()).isFalse();
        assertThat(list())
                .contains(
                        "Facts that were found and left out: 2",
                        "Number 12, found on page ",
                        ": it does not fit its link in the chain.",
                        "    id: " + saved.get(11).id(),
                        "    zone: Europe/Berlin",
                        "Number 20, found on page ",
                        "    json: [\"no fact\"]");
        try (SqliteEventJournal journal = openRescued()) {
            assertThat(journal.all().stream().map(RecordedEvent::id))
                    .doesNotContain(saved.get(11).id(), saved.get(19).id())
                    .hasSize(28);
        }
        RecordRescue.Plan asked = RecordRescue.plan(database(), true);
        assertThat(asked.facts().taken()).hasSize(29);
        assertThat(asked.facts().changed()).containsExactly(12L);
    }

    @Test
    void a_changed_fact_whose_link_was_removed_is_left_out_as_the_links_beside_it_do_not_fit() throws SQLException {
        saveFew(30);
        execute("DROP TRIGGER event_is_never_changed");
        execute("DROP TRIGGER event_chain_is_never_removed");
        execute("UPDATE event SET zone = 'Europe/Berlin' WHERE sequence = 12");
        execute("DELETE FROM event_chain WHERE sequence = 12");
        dropOldCopies();
        RecordRescue.Plan plan = RecordRescue.plan(database(), false);
        assertThat(plan.facts().unproven()).isEmpty();
        assertThat(plan.facts().leftOut())
                .singleElement()
                .satisfies(left -> assertThat(left.what()).startsWith("Number 12, found on page "));
        assertThat(plan.facts().taken())
                .extracting(RecordedEvent::id)
                .doesNotContain(saved.get(11).id())
                .hasSize(29);
    }

    /** SQLite leaves the bytes of a changed or removed row where they are, from where the chain would prove them. */
    private void dropOldCopies() throws SQLException {
        execute("VACUUM");
    }

    @Test
    void lost_places_are_listed_by_number_and_what_follows_moves_up() throws IOException, SQLException {
        saveFew(30);
        execute("DROP TRIGGER event_is_never_removed");
        execute("DROP TRIGGER event_chain_is_never_removed");
        execute("DELETE FROM event_chain WHERE sequence IN (5, 6)");
        execute("DELETE FROM event WHERE sequence IN (5, 6)");
        dropOldCopies();
        Rescued rescued = rescue().from(database(), false);
        assertThat(rescued.missing()).containsExactly(new Places(5, 6));
        assertThat(list()).contains("Lost facts: 2", "No row was found of number 5 to 6.");
        try (SqliteEventJournal journal = openRescued()) {
            assertThat(journal.all().stream().map(RecordedEvent::id))
                    .containsExactlyElementsOf(saved.stream()
                            .filter(fact -> fact.sequence() != 5 && fact.sequence() != 6)
                            .map(RecordedEvent::id)
                            .toList());
            assertThat(journal.verify().findings()).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {512, 1024, 2048, 4096, 8192, 16384, 32768, 65536})
    void the_size_of_pages_is_found_where_the_head_of_the_file_is_lost(int size) throws IOException, SQLException {
        saveManyFacts();
        paginate(size);
        byte[] bytes = Files.readAllBytes(database());
        assertThat(RecordRescue.plan(damaged(bytes), false).facts().taken()).isEqualTo(saved);
        noise(bytes, 1, Math.min(size, 4096), new Random(SEED));
        RecordRescue.Plan plan = RecordRescue.plan(damaged(bytes), false);
        assertThat(plan.facts().taken()).isEqualTo(saved);
        assertThat(plan.facts().unproven()).isEmpty();
        assertThat(plan.statements().taken()).hasSize(STATEMENTS);
        assertThat(String.join(" ", plan.found().told()))
                .contains("of " + size + " bytes were looked at", "found by trying");
    }

    @Test
    void rows_with_and_without_an_operator_are_read() throws IOException, SQLException {
        saveFew(10);
        execute("DROP TRIGGER event_is_never_replaced");
        String columns = "recorded_at, occurred_at, zone, calf, type, version, json, source, words, verdict, grammar,"
                + " model, sound";
        String id = "019bb5c0-0000-7000-8000-0000000000";
        execute("INSERT INTO event SELECT 11, '" + id + "11', " + columns + ", NULL FROM event WHERE sequence = 3");
        execute("INSERT INTO event SELECT 12, '" + id + "12', " + columns + ", 'Ann' FROM event WHERE sequence = 3");
        RecordRescue.Plan plan = RecordRescue.plan(database(), false);
        assertThat(plan.facts().taken()).hasSize(12).startsWith(saved.toArray(new RecordedEvent[0]));
        assertThat(plan.facts().unproven()).containsExactly(11L, 12L);
        assertThat(plan.facts().taken().get(11).provenance().operator()).isEqualTo("Ann");
        assertThat(plan.facts().leftOut()).isEmpty();
    }

    @Test
    void an_older_record_without_a_chain_is_rescued_unproven() throws IOException, SQLException {
        saveFew(10);
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            statement.execute("PRAGMA journal_mode = DELETE");
            statement.execute("DROP TABLE event_chain");
            statement.execute("DROP TABLE station");
            statement.execute("VACUUM");
        }
        Rescued rescued = rescue().from(database(), false);
        assertThat(rescued.isWhole()).isTrue();
        assertThat(rescued.unproven()).containsExactly(new Places(1, 10));
        assertThat(list()).contains("No link of the chain was found", "1 to 10");
    }

    @Test
    void an_empty_record_gives_an_empty_one() {
        open().close();
        Rescued rescued = rescue().from(database(), false);
        assertThat(rescued.facts()).isZero();
        assertThat(rescued.isWhole()).isTrue();
    }

    @Test
    void what_is_no_record_is_refused_and_nothing_is_made() throws IOException, SQLException {
        byte[] noise = new byte[50_000];
        new Random(SEED).nextBytes(noise);
        byte[] text = "A letter about calves.\n".repeat(900).getBytes(StandardCharsets.UTF_8);
        for (byte[] bytes : List.of(noise, text, new byte[0], new byte[8192])) {
            Path file = damaged(bytes);
            assertRefused(
                    () -> rescue().from(file, false),
                    Reason.NOT_A_RECORD,
                    "there is no row of a record",
                    "it is no file of SQLite");
        }
        Path other = temporary.resolve("other.db");
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + other);
                Statement statement = raw.createStatement()) {
            statement.execute("CREATE TABLE cheese (name TEXT, weight INTEGER)");
            statement.execute("INSERT INTO cheese VALUES ('a round one', 4)");
        }
        assertRefused(() -> rescue().from(other, false), Reason.NOT_A_RECORD, "there is no row of a record");
        assertRefused(
                () -> rescue().from(temporary.resolve("none.db"), false), Reason.NOT_A_RECORD, "There is no file");
        assertRefused(() -> rescue().from(temporary, false), Reason.NOT_A_RECORD, "There is no file");
        assertThat(target()).doesNotExist();
    }

    @Test
    void a_folder_that_holds_anything_is_refused_and_stays_as_it_is() throws IOException {
        saveFew(3);
        byte[] before = Files.readAllBytes(database());
        assertRefused(
                () -> new RecordRescue(folder, CLOCK, ZONE, ids).from(database(), false),
                Reason.EXISTS,
                "is not empty");
        assertThat(Files.readAllBytes(database())).isEqualTo(before);
        Path file = Files.writeString(temporary.resolve("a file"), "kept");
        assertRefused(
                () -> new RecordRescue(file, CLOCK, ZONE, ids).from(database(), false), Reason.EXISTS, "is not empty");
        assertThat(file).hasContent("kept");
    }

    @Test
    void an_empty_folder_is_taken() throws IOException {
        saveFew(3);
        Files.createDirectory(target());
        assertThat(rescue().from(database(), false).facts()).isEqualTo(3);
        assertThat(Set.of("record.db", "rescue.txt"))
                .allSatisfy(name -> assertThat(target().resolve(name)).isRegularFile());
    }

    @Test
    void a_damaged_text_cannot_pass_for_a_line_of_the_list() throws IOException, SQLException {
        saveFew(3);
        execute("DROP TRIGGER event_is_never_changed");
        execute("UPDATE event SET verdict = 'x' || char(10) || 'Lost facts: 0' WHERE sequence = 2");
        rescue().from(database(), false);
        assertThat(Arrays.asList(list().split("\n")))
                .doesNotContain("Lost facts: 0")
                .contains("    verdict: x Lost facts: 0");
    }
}
