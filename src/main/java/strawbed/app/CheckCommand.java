package strawbed.app;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import strawbed.audio.MicrophoneException;
import strawbed.audio.MicrophoneSource;
import strawbed.audio.SpeakerException;
import strawbed.audio.SpeakerSink;
import strawbed.hearing.FarmGrammar;
import strawbed.hearing.Phrasebook;
import strawbed.print.SystemPrinters;
import strawbed.protocol.file.ProtocolFile;
import strawbed.protocol.file.ProtocolReading;
import strawbed.speech.SpeechModel;
import strawbed.statement.StatementReader;

/** The command {@code strawbed check}: whether all parts are ready, each line OK or what to do. */
@Command(
        name = "check",
        description =
                "Looks at model, grammar, microphone, record, backup, printer, protocol and disk: each line is OK or says"
                        + " what to do. The record is read whole: its file, its chain of facts, every fact. Then it tells"
                        + " how the last day's sounds were.",
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    /** A night of speech is about 100 MB. */
    private static final long ENOUGH_DISK = 500_000_000;

    @ParentCommand
    @Nullable
    Main main;

    @Override
    public Integer call() {
        Settings settings = Main.of(main).settings();
        boolean good = modelAndGrammar(settings);
        good &= line("microphone", CheckCommand::microphone);
        good &= line("speaker", CheckCommand::speaker);
        good &= line("sound lost", () -> MicrophoneCounts.told(settings.data()));
        good &= line("record", () -> RecordTelling.record(settings));
        good &= line("backup", () -> RecordTelling.backup(settings));
        good &= line("station file", () -> station(settings));
        good &= line("printer", () -> PrintTelling.check(settings, new SystemPrinters()));
        good &= line("protocol", () -> protocol(settings));
        good &= line("disk", () -> disk(settings));
        SoundTelling.lastDay(settings).ifPresent(Main.of(main).out()::println);
        return good ? 0 : Failures.FAILED;
    }

    private boolean line(String part, Supplier<String> look) {
        String outcome;
        boolean good = true;
        try {
            outcome = "OK, " + look.get();
        } catch (RuntimeException failure) {
            outcome = failure.getMessage() == null ? failure.toString() : failure.getMessage();
            good = false;
        }
        Main.of(main).out().println(part + ": " + outcome);
        return good;
    }

    /** One model for both lines; without it the grammar's words cannot be looked up. */
    private boolean modelAndGrammar(Settings settings) {
        SpeechModel model;
        try {
            model = Ears.load(settings);
        } catch (RuntimeException failure) {
            return line("speech model", () -> {
                throw failure;
            });
        }
        try (model) {
            boolean loaded = line("speech model", model::name);
            return line("grammar", () -> grammar(settings, model)) && loaded;
        }
    }

    private static String grammar(Settings settings, SpeechModel model) {
        Phrasebook phrasebook = Phrasebook.read(settings.grammar(), PreparedSentences.text());
        FarmGrammar farm = phrasebook.with(List.of());
        Set<String> known =
                farm.grammar().rules().stream().map(rule -> rule.id().name()).collect(Collectors.toSet());
        List<String> missing = StatementReader.factRules().stream()
                .filter(rule -> !known.contains(rule))
                .sorted()
                .toList();
        if (!missing.isEmpty()) {
            throw new BadInputException("No file of the grammar has the rules " + missing
                    + ", so that their facts cannot be said. Put them back.");
        }
        List<String> unknown = farm.vocabulary().unknownWords(model);
        if (!unknown.isEmpty()) {
            throw Ears.unknownWords(unknown);
        }
        String standIns = phrasebook.lexicon().words().stream()
                .map(word ->
                        word + " as \"" + phrasebook.lexicon().standIn(word).orElseThrow() + "\"")
                .collect(Collectors.joining(", "));
        return "version " + phrasebook.version() + "; heard by stand-ins: " + standIns;
    }

    private static String microphone() {
        List<String> names = MicrophoneSource.names();
        try (MicrophoneSource source = MicrophoneSource.open(null)) {
            Optional<String> warning = source.warning();
            return source.name() + warning.map(text -> ". " + text).orElse("");
        } catch (MicrophoneException failure) {
            String others = names.isEmpty() ? "" : " Found: " + String.join(", ", names) + ".";
            throw new BadInputException(failure.getMessage() + others);
        }
    }

    /** Nothing depends on a speaker, so that its lack is no fault. */
    private static String speaker() {
        try {
            List<String> names = SpeakerSink.names();
            return names.isEmpty() ? "none here; what is read back is shown only" : String.join(", ", names);
        } catch (SpeakerException silent) {
            return silent.getMessage() + " What is read back is shown only.";
        }
    }

    private static String station(Settings settings) {
        StationFile station = StationFile.in(settings.data());
        String backups = station.backupFolder()
                .map(folder -> "a backup each day to " + folder + ", the newest " + station.backupsKept() + " kept")
                .orElse("no daily backup");
        String days = station.soundsKeptDays().map(count -> count + " days").orElse("");
        String room = station.soundsKeptMegabytes().map(count -> count + " MB").orElse("");
        String sounds = days + (days.isEmpty() || room.isEmpty() ? "" : ", at most ") + room;
        return backups + "; sounds kept " + (sounds.isEmpty() ? "for ever" : sounds);
    }

    private static String protocol(Settings settings) {
        Path file = FarmProtocol.file(settings);
        if (!FarmProtocol.isThere(file)) {
            return "no file yet: "
                    + FarmProtocol.summary(RecordReading.protocols(settings).latest()) + "; the recorder writes " + file
                    + " when it next listens";
        }
        ProtocolReading reading = ProtocolFile.read(file);
        if (reading instanceof ProtocolReading.Broken broken) {
            throw new BadInputException(
                    FarmProtocol.head(file, broken) + "Mend it:\n" + String.join("\n", FarmProtocol.lines(broken)));
        }
        if (reading instanceof ProtocolReading.Good good) {
            return FarmProtocol.summary(good.protocol());
        }
        throw new AssertionError(reading);
    }

    private static String disk(Settings settings) {
        Path folder = settings.data().toAbsolutePath();
        while (folder != null && !Files.isDirectory(folder)) {
            folder = folder.getParent();
        }
        File place = Optional.ofNullable(folder).orElse(Path.of(".")).toFile();
        if (!Files.isWritable(place.toPath())) {
            throw new BadInputException("The folder " + place + " cannot be written to. Give another with --data.");
        }
        long free;
        try {
            free = Files.getFileStore(place.toPath()).getUsableSpace();
        } catch (IOException e) {
            throw new BadInputException(
                    "The free space of " + place + " cannot be read: " + e.getMessage() + ". Check the disk.");
        }
        if (free < ENOUGH_DISK) {
            throw new BadInputException("Only " + free / 1_000_000 + " MB are free at " + place
                    + ". Make room: a night of speech takes about 100 MB.");
        }
        return free / 1_000_000 + " MB free at " + place;
    }
}
