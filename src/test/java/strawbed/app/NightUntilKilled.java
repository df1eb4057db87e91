package strawbed.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import strawbed.calf.Herd;
import strawbed.dialog.Prompt;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/**
 * A program that records for ever, and prints what it has told a person: "saved" and the id of a fact, "heard" and the
 * file of a sound. Each line once it was told, so that a line is a promise.
 */
final class NightUntilKilled {
    private static final String[] DIGITS = {
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
    };

    private final SqliteEventJournal journal;
    private final Recorder recorder;
    private final ScriptedNight night;
    private final Random random;
    private final List<String> soundsMade;
    private long told;

    private NightUntilKilled(
            SqliteEventJournal journal,
            Recorder recorder,
            ScriptedNight night,
            Random random,
            List<String> soundsMade) {
        this.journal = journal;
        this.recorder = recorder;
        this.night = night;
        this.random = random;
        this.soundsMade = soundsMade;
        this.told = journal.all().size();
    }

    public static void main(String[] arguments) {
        Logger.getLogger("").setLevel(Level.SEVERE);
        Path data = Path.of(arguments[0]);
        Random random = new Random(Long.parseLong(arguments[1]));
        Clock clock = Clock.systemUTC();
        TimeOrderedIds ids = new TimeOrderedIds(clock, random);
        List<String> soundsMade = new ArrayList<>();
        SoundFolder sounds = new SoundFolder(data, () -> {
            UUID id = ids.get();
            soundsMade.add(id + ".wav");
            return id;
        });
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, ZoneOffset.UTC, ids)) {
            FoundSounds.adopt(journal, sounds);
            Recorder recorder = new Recorder(journal, Herd.of(journal.all()), sounds, clock, ids, () -> "g", () -> "m");
            NightUntilKilled night =
                    new NightUntilKilled(journal, recorder, new ScriptedNight(recorder, clock), random, soundsMade);
            System.out.println("started");
            while (!System.out.checkError()) {
                night.step();
            }
        }
    }

    private void step() {
        switch (random.nextInt(12)) {
            case 0, 1 -> says("new calf " + digits(1000 + random.nextInt(9000)) + " heifer", false);
            case 2, 3 -> says("calf " + aCalf() + " bull navel dipped", false);
            case 4 -> says("calf " + aCalf() + " fed two quarts", false);
            case 5 -> says("did you see the game", false);
            case 6 -> {
                says("did you see", false);
                says("did you see the game", true);
            }
            case 7 -> says("cancel entry", false);
            case 8 -> says("undo last entry", false);
            default -> says("confirm entry", false);
        }
    }

    private void says(String words, boolean goesOn) {
        int before = soundsMade.size();
        List<Prompt> prompts = night.hears(words, goesOn);
        if (prompts.stream()
                .anyMatch(prompt -> prompt instanceof Prompt.NotSaved || prompt instanceof Prompt.NotKept)) {
            throw new AssertionError("nothing stood in the way: " + prompts);
        }
        List<RecordedEvent> all = journal.all();
        StringBuilder promised = new StringBuilder();
        for (RecordedEvent fact : all.subList((int) told, all.size())) {
            promised.append("saved ").append(fact.id()).append('\n');
        }
        told = all.size();
        soundsMade
                .subList(before, soundsMade.size())
                .forEach(sound -> promised.append("heard ").append(sound).append('\n'));
        System.out.print(promised);
        System.out.flush();
    }

    private String aCalf() {
        List<String> open = List.copyOf(recorder.herd().openNumbers());
        return open.isEmpty()
                ? digits(7000 + random.nextInt(1000))
                : digits(Integer.parseInt(open.get(random.nextInt(open.size()))));
    }

    private static String digits(int number) {
        List<String> words = new ArrayList<>();
        for (char digit : String.valueOf(number).toCharArray()) {
            words.add(DIGITS[digit - '0']);
        }
        return String.join(" ", words);
    }
}
