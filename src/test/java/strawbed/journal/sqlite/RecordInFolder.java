package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.CalfId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.RandomEvents;

/** A new data folder for each test, and what tests do with the record in it. */
abstract class RecordInFolder {
    static final long SEED = 20261124;
    static final Instant NOW = Instant.parse("2026-11-24T08:05:00.123456789Z");
    static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    static final ZoneId ZONE = ZoneId.of("America/Chicago");
    static final CalfId CALF = CalfId.of("019bb5c0-0000-7000-8000-00000000002a");

    @TempDir
    Path temporary;

    Path folder;
    Supplier<UUID> ids;

    @BeforeEach
    void choose_a_new_folder() {
        folder = temporary.resolve("data");
        ids = new TimeOrderedIds(Clock.fixed(NOW, ZoneOffset.UTC), new Random(SEED));
    }

    SqliteEventJournal open() {
        return open(ids);
    }

    SqliteEventJournal open(Instant now) {
        return SqliteEventJournal.open(folder, Clock.fixed(now, ZONE), ZONE, ids);
    }

    SqliteEventJournal open(Supplier<UUID> chosen) {
        return SqliteEventJournal.open(folder, CLOCK, ZONE, chosen);
    }

    SqliteEventJournal openReadOnly() {
        return SqliteEventJournal.openReadOnly(folder, CLOCK, ZONE, ids);
    }

    Connection connectionOfNewRecord() {
        open().close();
        return RecordFile.in(folder).connect(CLOCK, ids);
    }

    Path database() {
        return folder.resolve("record.db");
    }

    Connection raw() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + database());
    }

    void execute(String sql) throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    static List<NewEvent> randomFacts(int count) {
        RandomEvents events = new RandomEvents(new Random(SEED));
        List<NewEvent> facts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            facts.add(new NewEvent(
                    i % 5 == 0 ? null : CALF,
                    events.next(),
                    NOW.minusSeconds(i),
                    Provenance.of(Provenance.Source.BUTTON)));
        }
        return facts;
    }

    static void assertRefused(ThrowingCallable action, Reason reason, String... parts) {
        assertThatThrownBy(action)
                .isInstanceOfSatisfying(
                        JournalException.class, e -> assertThat(e.reason()).isEqualTo(reason))
                .hasMessageContainingAll(parts)
                .hasMessageEndingWith(".");
    }
}
