package strawbed.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.audio.Sound;
import strawbed.audio.WavSource;
import strawbed.calf.CalfRecord;
import strawbed.dialog.Prompt;

/** The command {@code strawbed demo}: an invented night, through the code that a microphone uses. */
@Command(
        name = "demo",
        description = "Replays the sound of an invented night: shows what is heard, read back and saved, what is due,"
                + " and writes the cards.",
        mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
    private static final String NIGHT = "/demo-data/night.wav";

    /** What a person takes in at a glance; the cards have the rest. */
    private static final int SHOWN_DUE = 12;

    @ParentCommand
    @Nullable
    Main main;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "When the night ends, such as 2026-03-03T05:30; else now.")
    @Nullable
    String at;

    @Option(names = "--out", paramLabel = "DIR", description = "Where the cards go; else strawbed-demo.")
    Path out = Path.of("strawbed-demo");

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        Path scratch = folder();
        try {
            Path night = night(scratch);
            Duration length = length(night);
            Instant end = at == null ? settings.clock().instant() : time(at, settings.zone());
            SourceClock clock = new SourceClock(end.minus(length), settings.zone());
            Path data = program.data == null ? scratch.resolve("record") : settings.data();
            replay(night, length, settings.withData(data).withClock(clock), clock, program.out(), program.err());
        } finally {
            delete(scratch);
        }
        return 0;
    }

    private void replay(
            Path night, Duration length, Settings settings, SourceClock clock, PrintWriter screen, PrintWriter err) {
        long started = System.nanoTime();
        screen.println("An invented night in a calving barn, " + length.toSeconds()
                + " seconds of speech. Each line: when, what was heard, what Strawbed says.");
        screen.println();
        try (WavSource source = WavSource.open(night);
                Stage stage = Stage.open(settings, clock.instant(), err)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                Sound sound = block.get();
                clock.moveTo(sound.start().plus(sound.duration()));
                stage.accept(sound).ifPresent(answer -> show(answer, stage, settings.zone(), screen));
                stage.tick().forEach(prompt -> show(prompt, stage, screen));
            }
            stage.finish().ifPresent(answer -> show(answer, stage, settings.zone(), screen));
            stage.stop().forEach(prompt -> show(prompt, stage, screen));
            due(stage, clock.instant(), screen);
            cards(stage, screen);
        }
        double seconds = (System.nanoTime() - started) / 1e9;
        screen.println(String.format(
                Locale.ROOT,
                "%nThe night's %d seconds took %.1f seconds to hear, confirm, save and print.",
                length.toSeconds(),
                seconds));
    }

    private static void show(Stage.Answer answer, Stage stage, ZoneId zone, PrintWriter screen) {
        String when = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT)
                .format(answer.heard().speech().start().atZone(zone));
        screen.println(when + "  heard  " + HeardText.words(answer.heard()));
        answer.prompts().forEach(prompt -> show(prompt, stage, screen));
        if (!answer.prompts().isEmpty()) {
            stage.answers().ofSound(answer.heard()).ifPresent(advice -> screen.println("          sound  " + advice));
        }
    }

    private static void show(Prompt prompt, Stage stage, PrintWriter screen) {
        screen.println("          says   " + stage.answers().shown(prompt, stage.herd()));
    }

    private static void due(Stage stage, Instant now, PrintWriter screen) {
        screen.println();
        screen.println("Due now and next, most urgent first:");
        List<String> due = stage.answers().due(stage.herd(), now);
        due.stream().limit(SHOWN_DUE).forEach(screen::println);
        if (due.size() > SHOWN_DUE) {
            screen.println("  and " + (due.size() - SHOWN_DUE) + " more");
        }
    }

    private void cards(Stage stage, PrintWriter screen) {
        screen.println();
        screen.println("Cards:");
        for (CalfRecord calf : stage.herd().calves()) {
            screen.println("  " + stage.answers().shown(stage.print(calf.id(), out), stage.herd()));
        }
    }

    private static Path folder() {
        try {
            return Files.createTempDirectory("strawbed-demo");
        } catch (IOException e) {
            throw new BadInputException("No folder for the demo's record can be made in "
                    + System.getProperty("java.io.tmpdir") + ". Make room there, or give a folder with --data.");
        }
    }

    private static Path night(Path folder) {
        Path file = folder.resolve("night.wav");
        try (InputStream sound = DemoCommand.class.getResourceAsStream(NIGHT)) {
            if (sound == null) {
                throw new IllegalStateException("the demo night is not in the program");
            }
            Files.copy(sound, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    private static Duration length(Path night) {
        Duration length = Duration.ZERO;
        try (WavSource source = WavSource.open(night)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                length = block.get().start().plus(block.get().duration());
            }
        }
        return length;
    }

    static Instant time(String text, ZoneId zone) {
        try {
            return text.endsWith("Z")
                    ? Instant.parse(text)
                    : LocalDateTime.parse(text).atZone(zone).toInstant();
        } catch (DateTimeParseException e) {
            throw new BadInputException(
                    "\"" + text + "\" is not a time. Give date and time such as 2026-03-03T05:30, in the farm's zone.");
        }
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
