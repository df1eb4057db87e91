package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.SqliteEventJournal;

/** Changes bytes of a sound record, or cuts it off, by a seed, and looks whether that is noticed. */
final class DamagedRecords {
    private static final int FACTS = 200;

    private final Path data;
    private final Random random;
    private final Clock clock = Clock.systemUTC();

    DamagedRecords(Path data, long seed) {
        this.data = data;
        this.random = new Random(seed);
    }

    /**
     * What was found.
     *
     * @param told how many damages were told as a finding or refused with a sentence
     * @param harmless how many changed nothing of what is read
     * @param missed how many changed a fact and were not told
     */
    record Tally(int done, int told, int harmless, int missed) {}

    Tally flipBytes(int times) throws IOException {
        return damage(times, sound -> {
            byte[] flipped = sound.clone();
            flipped[random.nextInt(flipped.length)] ^= (byte) (1 << random.nextInt(8));
            return flipped;
        });
    }

    Tally cut(int times) throws IOException {
        return damage(times, sound -> Arrays.copyOf(sound, random.nextInt(sound.length)));
    }

    private interface Damage {
        byte[] of(byte[] sound);
    }

    private Tally damage(int times, Damage damage) throws IOException {
        Path record = data.resolve("record.db");
        List<RecordedEvent> saved = save(record);
        byte[] sound = Files.readAllBytes(record);
        int told = 0;
        int harmless = 0;
        for (int i = 0; i < times; i++) {
            Files.write(record, damage.of(sound));
            try (SqliteEventJournal journal = SqliteEventJournal.openReadOnly(data, clock, ZoneOffset.UTC, ids())) {
                if (!journal.verify().isSound()) {
                    told++;
                } else if (journal.all().equals(saved)) {
                    harmless++;
                }
            } catch (JournalException failure) {
                told++;
            }
        }
        Files.write(record, sound);
        return new Tally(times, told, harmless, times - told - harmless);
    }

    private List<RecordedEvent> save(Path record) throws IOException {
        NewEvent fact =
                new NewEvent(null, new Event.FeedRefused(), clock.instant(), Provenance.of(Provenance.Source.COMMAND));
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids())) {
            for (int i = journal.all().size(); i < FACTS; i++) {
                journal.append(List.of(fact));
            }
            return journal.all();
        } finally {
            Files.deleteIfExists(record.resolveSibling("record.db-shm"));
        }
    }

    private TimeOrderedIds ids() {
        return new TimeOrderedIds(clock, random);
    }
}
