package strawbed.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.audio.WavFile;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.Finding;
import strawbed.journal.sqlite.SqliteEventJournal;

/**
 * Kills {@link NightUntilKilled} over and over on the same data folder, at points chosen by a seed, and looks after each
 * kill whether every promise was kept. The kill is the system's, at once (POSIX signal 9).
 */
final class KilledNights {
    /** Kills in one folder; then a new one, so that a record's first minutes are killed too. */
    private static final int IN_ONE_FOLDER = 50;

    private final Path place;
    private final long seed;
    private final Random random;
    private final Tally tally = new Tally();
    private final Set<String> savedIds = new HashSet<>();
    private final Set<String> heardSounds = new HashSet<>();

    KilledNights(Path place, long seed) {
        this.place = place;
        this.seed = seed;
        this.random = new Random(seed);
    }

    /** What was found, over all kills. */
    static final class Tally {
        int kills;
        int killsBeforeStart;
        long factsPromised;
        long factsFound;
        long factsLost;
        long halfStatements;
        long soundsPromised;
        long soundsLost;
        long soundsUnnamed;
        long rescued;
        final List<String> findings = new ArrayList<>();

        boolean isGood() {
            return factsLost + halfStatements + soundsLost + soundsUnnamed == 0 && findings.isEmpty();
        }

        @Override
        public String toString() {
            return kills + " kills, " + killsBeforeStart + " of them before the start was over; facts: "
                    + factsPromised + " promised, " + factsFound + " found, " + factsLost + " lost, " + halfStatements
                    + " statements half there; sounds: " + soundsPromised + " promised, " + soundsLost + " lost, "
                    + soundsUnnamed + " named by nothing, " + rescued + " rescued at the next start; findings: "
                    + findings;
        }
    }

    Tally run(int kills) throws IOException, InterruptedException {
        Path data = place;
        for (int i = 0; i < kills; i++) {
            if (i % IN_ONE_FOLDER == 0) {
                tally.factsFound += i == 0 ? 0 : count(data);
                data = place.resolve("data-" + i / IN_ONE_FOLDER);
                savedIds.clear();
                heardSounds.clear();
            }
            kill(data);
            look(data, i);
        }
        tally.factsFound += count(data);
        return tally;
    }

    private void kill(Path data) throws IOException, InterruptedException {
        boolean inItsStart = random.nextInt(5) == 0;
        int lines = 1 + random.nextInt(25);
        Process program = new ProcessBuilder(
                        SmallDisk.java(NightUntilKilled.class, data.toString(), String.valueOf(random.nextLong())))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> printed = new ArrayList<>();
        try (BufferedReader out = program.inputReader(StandardCharsets.UTF_8)) {
            for (int i = 0; i < lines && !inItsStart; i++) {
                String line = out.readLine();
                if (line == null) {
                    throw new AssertionError(
                            "seed " + seed + ": the program ended by itself with " + program.waitFor());
                }
                printed.add(line);
            }
            long pause = TimeUnit.MICROSECONDS.toNanos(random.nextInt(inItsStart ? 1_500_000 : 30_000));
            LockSupport.parkNanos(pause);
            // Through its handle, because the process itself would close the stream with what is still in it.
            if (!program.toHandle().destroyForcibly()) {
                throw new AssertionError("it cannot be killed");
            }
            printed.addAll(whole(out));
        } finally {
            program.destroyForcibly().waitFor();
        }
        tally.kills++;
        tally.killsBeforeStart += printed.isEmpty() ? 1 : 0;
        for (String line : printed) {
            if (line.startsWith("saved ")) {
                savedIds.add(line.substring(6));
                tally.factsPromised++;
            } else if (line.startsWith("heard ")) {
                heardSounds.add(line.substring(6));
                tally.soundsPromised++;
            }
        }
    }

    /** The lines that are left; the kill can cut the last one short, and that is no promise. */
    private static List<String> whole(BufferedReader out) {
        String rest = out.lines().collect(Collectors.joining("\n"));
        return rest.lines()
                .filter(line -> line.matches("saved .{36}|heard .{36}\\.wav"))
                .toList();
    }

    private void look(Path data, int run) throws IOException {
        Clock clock = Clock.systemUTC();
        TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(seed + run));
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids)) {
            SoundFolder sounds = new SoundFolder(data, ids);
            Set<String> namedBefore = journal.named(sounds.names());
            FoundSounds.adopt(journal, sounds);
            for (Finding finding : Stream.concat(journal.findings().stream(), journal.verify().findings().stream())
                    .toList()) {
                tally.findings.add("seed " + seed + ", run " + run + ": " + finding.text());
            }
            facts(journal.all());
            Set<String> named = journal.named(sounds.names());
            tally.rescued += named.size() - namedBefore.size();
            tally.soundsLost += heardSounds.stream()
                    .filter(sound -> !Files.exists(sounds.file(sound)))
                    .count();
            tally.soundsUnnamed += sounds.names().stream()
                    .filter(sound -> !named.contains(sound))
                    .count();
            for (String sound : sounds.names()) {
                if (!WavFile.hasSamples(sounds.file(sound))) {
                    tally.findings.add("the sound " + sound + " is empty");
                }
            }
        }
    }

    private void facts(List<RecordedEvent> all) {
        Set<String> found = all.stream().map(fact -> fact.id().toString()).collect(Collectors.toSet());
        tally.factsLost += savedIds.stream().filter(id -> !found.contains(id)).count();
        Set<EventId> withdrawn = all.stream()
                .map(RecordedEvent::event)
                .filter(Event.EventWithdrawn.class::isInstance)
                .map(event -> ((Event.EventWithdrawn) event).event())
                .collect(Collectors.toSet());
        Map<String, List<RecordedEvent>> statements = new LinkedHashMap<>();
        for (RecordedEvent fact : all) {
            String sound = fact.provenance().sound();
            if (sound != null) {
                statements.computeIfAbsent(sound, key -> new ArrayList<>()).add(fact);
            }
        }
        for (List<RecordedEvent> statement : statements.values()) {
            long undone = statement.stream()
                    .filter(fact -> withdrawn.contains(fact.id()))
                    .count();
            boolean isWhole = statement.size() == told(statement);
            tally.halfStatements += isWhole && (undone == 0 || undone == statement.size()) ? 0 : 1;
        }
    }

    /** How many facts the words tell; one more opens a calf that was not on the list. */
    private static int told(List<RecordedEvent> statement) {
        List<String> words = statement.get(0).provenance().words();
        boolean opensBesides = statement.get(0).event() instanceof Event.CalfOpened && !words.contains("new");
        return (words.contains("quarts") ? 1 : 2) + (opensBesides ? 1 : 0);
    }

    private static long count(Path data) {
        Clock clock = Clock.systemUTC();
        try (SqliteEventJournal journal = SqliteEventJournal.openReadOnly(
                data, clock, ZoneOffset.UTC, new TimeOrderedIds(clock, new Random(1)))) {
            return journal.all().size();
        }
    }
}
