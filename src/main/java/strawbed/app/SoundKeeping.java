package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;

/**
 * Removes old sounds, where the farm set so. Never one of an open statement, never one of the last day, never a file
 * whose name is not one of ours. What is removed is in the record before it is gone.
 */
final class SoundKeeping {
    /** Of a sound this young somebody may still be asked. Common practice, no published source. */
    private static final Duration YOUNG = Duration.ofDays(1);

    private static final long MEGABYTE = 1_000_000;

    private SoundKeeping() {}

    private record Kept(String name, Instant at, long bytes) {}

    /**
     * Removes what the farm no longer keeps.
     *
     * @return what a person must be told, in lines; mostly nothing
     */
    static List<String> clear(EventJournal journal, SoundFolder sounds, StationFile station, Clock clock) {
        if (station.soundsKeptDays().isEmpty() && station.soundsKeptMegabytes().isEmpty()) {
            return List.of();
        }
        try {
            List<Kept> old = old(all(sounds), journal, station, clock.instant());
            if (old.isEmpty()) {
                return List.of();
            }
            long bytes = old.stream().mapToLong(Kept::bytes).sum();
            // Noted first: a removal that power cuts short is noted again, but none is ever left out.
            journal.append(List.of(new NewEvent(
                    null,
                    new Event.SoundsRemoved(old.size(), bytes),
                    clock.instant(),
                    Provenance.of(Provenance.Source.COMMAND))));
            for (Kept sound : old) {
                Files.deleteIfExists(sounds.file(sound.name()));
            }
            return List.of(old.size() + (old.size() == 1 ? " old sound (" : " old sounds (") + bytes / MEGABYTE
                    + " MB) removed, as " + StationFile.NAME + " says.");
        } catch (IOException | JournalException failure) {
            return List.of("Old sounds could not be removed: " + failure.getMessage()
                    + " It is tried again at the next start.");
        }
    }

    /** The oldest first. */
    private static List<Kept> all(SoundFolder sounds) throws IOException {
        List<Kept> all = new ArrayList<>();
        // Names of version 7 sort by time.
        for (String name : sounds.names()) {
            Optional<Instant> at = SoundFolder.namedAt(name);
            if (at.isPresent() && Files.isRegularFile(sounds.file(name))) {
                all.add(new Kept(name, at.get(), Files.size(sounds.file(name))));
            }
        }
        return all;
    }

    private static List<Kept> old(List<Kept> all, EventJournal journal, StationFile station, Instant now) {
        Set<String> open = journal.openStatements().stream()
                .map(statement -> statement.statement().sound())
                .collect(Collectors.toSet());
        long room = station.soundsKeptMegabytes().map(most -> most * MEGABYTE).orElse(Long.MAX_VALUE);
        long kept = all.stream().mapToLong(Kept::bytes).sum();
        List<Kept> old = new ArrayList<>();
        for (Kept sound : all) {
            boolean tooOld = station.soundsKeptDays()
                    .map(days -> sound.at().isBefore(now.minus(Duration.ofDays(days))))
                    .orElse(false);
            boolean young = sound.at().isAfter(now.minus(YOUNG));
            if ((tooOld || kept > room) && !young && !open.contains(sound.name())) {
                old.add(sound);
                kept -= sound.bytes();
            }
        }
        return old;
    }
}
