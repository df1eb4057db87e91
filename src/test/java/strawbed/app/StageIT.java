package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.AudioSource;
import strawbed.audio.Sound;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.OpenStatement;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.text.Messages;
import strawbed.voice.FreeTtsVoice;

/** What the recorder does with the record, and tells, each time it starts. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StageIT {
    private static final Instant NOW = Instant.parse("2026-03-02T03:00:00Z");
    private static final ZoneId BARN = ZoneId.of("America/Chicago");

    @TempDir
    Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    /** Starts the recorder and ends it; gives what it told. */
    private String started() {
        Settings settings = new Settings(data(), Optional.empty(), Clock.fixed(NOW, BARN), BARN);
        StringWriter err = new StringWriter();
        Stage.open(settings, NOW, new PrintWriter(err, true)).close();
        return err.toString();
    }

    private SqliteEventJournal record(Instant now, ZoneId zone) {
        Clock clock = Clock.fixed(now, zone);
        return SqliteEventJournal.open(data(), clock, zone, new TimeOrderedIds(clock, new Random(1)));
    }

    @Test
    void a_record_that_lost_facts_is_told_and_the_recording_goes_on() throws IOException {
        RecordThatLostFacts.in(data());
        assertThat(started()).contains(RecordThatLostFacts.TOLD, "put it back beside record.db");
        assertThat(started()).as("at each start").contains("Facts up to number 7 were saved");
    }

    @Test
    void a_sound_that_power_cut_off_is_told_and_waits_among_the_open_statements() {
        Clock then = Clock.fixed(NOW.minusSeconds(600), ZoneOffset.UTC);
        SoundFolder sounds = new SoundFolder(data(), new TimeOrderedIds(then, new Random(2)));
        String name = sounds.newName();
        sounds.write(name, Sound.of(new short[Sound.RATE], 0));
        assertThat(started()).contains("1 sound was being recorded when the program ended");
        try (SqliteEventJournal journal = record(NOW, BARN)) {
            assertThat(journal.openStatements())
                    .extracting(OpenStatement::statement)
                    .singleElement()
                    .satisfies(open -> assertThat(open.sound()).isEqualTo(name));
        }
        assertThat(started()).as("once").doesNotContain("1 sound was");
    }

    @Test
    void a_clock_before_the_newest_fact_and_another_zone_are_noted_and_told() {
        Instant ahead = NOW.plus(Duration.ofMinutes(50));
        try (SqliteEventJournal journal = record(ahead, ZoneOffset.UTC)) {
            journal.append(List.of(
                    new NewEvent(null, new Event.FeedRefused(), ahead, Provenance.of(Provenance.Source.COMMAND))));
        }
        // It also notes the farm's protocol, whose time is that of this start.
        String told = started();
        try (SqliteEventJournal journal = record(NOW, BARN)) {
            assertThat(journal.all())
                    .extracting(RecordedEvent::event)
                    .contains(new Event.ClockChanged(ahead, NOW), new Event.ZoneChanged(ZoneOffset.UTC, BARN));
        }
        assertThat(told).contains("clock went back", "America/Chicago");
    }

    /** The file is made big by what SQLite leaves behind of a table that is gone. */
    @Test
    void on_a_big_record_older_calves_come_after_the_fresh_ones() throws Exception {
        try (SqliteEventJournal journal = record(NOW.minus(Duration.ofDays(20)), BARN)) {
            journal.append(List.of(opened("777", NOW.minus(Duration.ofDays(20)))));
        }
        try (SqliteEventJournal journal = record(NOW.minusSeconds(3600), BARN)) {
            journal.append(List.of(opened("12", NOW.minusSeconds(3600))));
        }
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + data().resolve("record.db"));
                Statement statement = raw.createStatement()) {
            statement.executeUpdate("CREATE TABLE filler (bytes BLOB)");
            statement.executeUpdate("INSERT INTO filler VALUES (zeroblob(101000000))");
            statement.executeUpdate("DROP TABLE filler");
        }
        Settings settings = new Settings(data(), Optional.empty(), Clock.fixed(NOW, BARN), BARN);
        StringWriter err = new StringWriter();
        try (Stage stage = Stage.open(settings, NOW, new PrintWriter(err, true))) {
            assertThat(stage.herd().openNumbers()).containsExactly("12");
            stage.choose("Marta");
            for (int i = 0; i < 600 && stage.herd().openNumbers().size() < 2; i++) {
                assertThat(stage.tick()).isEmpty();
                Thread.sleep(100);
            }
            assertThat(stage.herd().openNumbers()).containsExactly("12", "777");
            assertThat(stage.herd().barn())
                    .as("also what was saved while they were read")
                    .extracting(RecordedEvent::event)
                    .contains(new Event.OperatorChosen("Marta"));
        }
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void what_is_said_while_the_speech_model_loads_is_answered_when_it_is_there() throws InterruptedException {
        try (SqliteEventJournal journal = record(NOW.minusSeconds(3600), BARN)) {
            journal.append(List.of(opened("12", NOW.minusSeconds(3600))));
        }
        Settings settings = new Settings(data(), Optional.empty(), Clock.fixed(NOW, BARN), BARN);
        StringWriter err = new StringWriter();
        Sound said = new FreeTtsVoice().speak("calf twelve fed three quarts");
        try (LoadingEars loading = Ears.beginLoading(settings);
                Stage stage = Stage.openWithKeys(
                        settings, NOW, new PrintWriter(err, true), new Messages(Locale.US), loading)) {
            assertThat(stage.isComing()).as("it is quicker than any model").isTrue();
            assertThat(stage.whyDeaf()).isEmpty();
            for (int at = 0; at < said.length(); at += AudioSource.BLOCK) {
                assertThat(stage.accept(said.slice(at, Math.min(said.length(), at + AudioSource.BLOCK))))
                        .isEmpty();
            }
            assertThat(stage.finish()).isEmpty();
            Optional<Stage.Answer> answer = Optional.empty();
            for (int i = 0; i < 600 && answer.isEmpty(); i++) {
                Thread.sleep(100);
                answer = stage.late();
            }
            assertThat(answer.orElseThrow().heard().meaning().words())
                    .containsExactly("calf", "twelve", "fed", "three", "quarts");
            assertThat(stage.isComing()).isFalse();
            assertThat(stage.pending()).isPresent();
            assertThat(stage.late()).isEmpty();
        }
        assertThat(err.toString()).isEmpty();
    }

    private static NewEvent opened(String number, Instant at) {
        return new NewEvent(
                new CalfId(new UUID(1, Integer.parseInt(number))),
                new Event.CalfOpened(number, null),
                at,
                Provenance.of(Provenance.Source.COMMAND));
    }
}
