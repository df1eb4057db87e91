package strawbed.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Consumer;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.bench.BarnSound;
import strawbed.testkit.SpokenSentence;
import strawbed.voice.FreeTtsVoice;

/**
 * From the end of speech to the words on the screen, by a real capture line and the real window: a part of
 * {@link StationRun}.
 */
final class WordsPart {
    /** What {@link strawbed.audio.Endpointer} waits for after each utterance: its 16 quiet frames of 20 ms. */
    private static final Duration ENDING = Duration.ofMillis(320);

    /** Speech has ended where it stays this far below its own level, in dB: softer ends of words are not missed. */
    private static final double BELOW_SPEECH = 25;

    /** What follows sooner may be a part of the sentence before it. */
    private static final long APART_MILLIS = 2_300;

    /** Blocks on their way from the line. */
    private static final long ON_THE_WAY_MILLIS = 300;

    private static final Duration PATIENCE = Duration.ofSeconds(8);

    private final int count;
    private final Consumer<String> lines;
    private final FreeTtsVoice voice = new FreeTtsVoice();

    WordsPart(int count, Consumer<String> lines) {
        this.count = count;
        this.lines = lines;
    }

    void measure(StationRoom room, Path place) throws IOException, InterruptedException {
        Path data = place.resolve("words");
        StationRecord.make(data, Clock.system(SpokenSentence.ZONE), new TreeSet<>(SpokenSentence.OPEN_CALVES));
        Waits waits = Waits.NONE;
        try (StationChild station = room.start(data, System.getProperty("java.class.path"), List.of());
                StationLine line = new StationLine(room.pulse())) {
            station.answers();
            line.listens();
            for (String words : sentences()) {
                waits = said(words, waits, room, place, station, line);
            }
            tell(waits);
            station.end();
        }
    }

    /** The table in an order by chance, as often as it takes. */
    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        Random random = new Random(120);
        while (sentences.size() < count) {
            List<String> table = new ArrayList<>(
                    SpokenSentence.all().stream().map(SpokenSentence::words).toList());
            Collections.shuffle(table, random);
            sentences.addAll(table);
        }
        return sentences.subList(0, count);
    }

    private Waits said(String words, Waits before, StationRoom room, Path place, StationChild station, StationLine line)
            throws IOException, InterruptedException {
        station.tell(StationWatcher.NEXT);
        station.await(StationWatcher.NEXT);
        Thread.sleep(APART_MILLIS);
        Sound sound = voice.speak(words);
        Path file = place.resolve("said.wav");
        WavFile.write(file, sound);
        line.loudAbove(BarnSound.amplitude(BarnSound.speechLevel(sound) - BELOW_SPEECH));
        int code = room.pulse().play(file).waitFor();
        Thread.sleep(ON_THE_WAY_MILLIS);
        Instant end = line.lastLoud()
                .orElseThrow(() -> new IOException("Nothing of \"" + words + "\" came by the line; paplay ended with "
                        + code + ". Try it again when the machine is idle."));
        return before.plus(seen(station, end), end);
    }

    /** Until the first answer after the end of speech, or until none is to be expected. */
    private static List<Waits.Seen> seen(StationChild station, Instant end) throws InterruptedException {
        List<Waits.Seen> seen = new ArrayList<>();
        Instant until = end.plus(PATIENCE);
        while (true) {
            Optional<String> line = station.next(Duration.between(Instant.now(), until));
            if (line.isEmpty()) {
                return seen;
            }
            line.flatMap(Waits.Seen::of).ifPresent(seen::add);
            if (seen.stream().anyMatch(one -> !one.at().isBefore(end))) {
                return seen;
            }
        }
    }

    private void tell(Waits waits) {
        lines.accept("## From the end of speech to the words on the screen");
        lines.accept("");
        lines.accept(count + " sentences of the table of spoken ones by the program's own voice, into a capture line"
                + " with a hush of -65 dB; 40 calves are known. Speech ends with the last 10 ms that are within "
                + (int) BELOW_SPEECH + " dB of its level, as a second listener on the same line gets them (to about 20"
                + " ms); words are there when the window has painted them. Computing: the same without the "
                + ENDING.toMillis() + " ms of quiet that end an utterance.");
        lines.accept("");
        lines.accept("| what | n | median | 95% within | longest |");
        lines.accept("|---|---|---|---|---|");
        lines.accept("| words on the screen | " + Waits.cells(waits.words()) + " |");
        lines.accept("| computing | " + Waits.cells(computing(waits.words())) + " |");
        lines.accept("| not understood: \"say again\" | " + Waits.cells(waits.again()) + " |");
        lines.accept("| no answer in " + PATIENCE.toSeconds() + " s | " + waits.nothing() + " | | | |");
        lines.accept("| answered only in a pause before the end | " + waits.early() + " | | | |");
        lines.accept("");
    }

    private static List<Duration> computing(List<Duration> waits) {
        return waits.stream().map(wait -> wait.minus(ENDING)).toList();
    }
}
