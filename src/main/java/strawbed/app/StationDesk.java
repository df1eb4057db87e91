package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.audio.AudioException;
import strawbed.audio.MicrophoneException;
import strawbed.audio.MicrophoneSource;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.entry.EntryGroup;
import strawbed.journal.OpenStatement;
import strawbed.station.Act;
import strawbed.station.Choices;
import strawbed.station.Meaning;
import strawbed.text.DuePhrases;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** What the station has at hand beside the record: settings, kept sounds, printers, words. Owned by the loop's thread. */
final class StationDesk implements CardSender {
    private final Settings settings;
    private final PrintWork printing;
    private final Messages messages;
    private final DuePhrases due;
    private final IntFunction<String> keyNames;
    private final double systemsDotsPerInch;
    private final Consumer<Choices> changed;
    private Choices choices;
    private volatile List<String> microphones = List.of();

    /**
     * @param keyNames how a key is called, by its code
     * @param systemsDotsPerInch of the screen, until it is measured
     * @param changed is told when people chose otherwise
     */
    StationDesk(
            Settings settings,
            PrintWork printing,
            Messages messages,
            Choices choices,
            IntFunction<String> keyNames,
            double systemsDotsPerInch,
            Consumer<Choices> changed) {
        this.settings = settings;
        this.printing = printing;
        this.messages = messages;
        this.due = new DuePhrases(messages, settings.zone());
        this.choices = choices;
        this.keyNames = keyNames;
        this.systemsDotsPerInch = systemsDotsPerInch;
        this.changed = changed;
    }

    Choices choices() {
        return choices;
    }

    Messages messages() {
        return messages;
    }

    DuePhrases due() {
        return due;
    }

    Instant now() {
        return settings.clock().instant();
    }

    PrintWork printing() {
        return printing;
    }

    List<String> microphones() {
        return microphones;
    }

    /** How the keys are called that people chose. */
    Map<Integer, String> keyNames() {
        Map<Integer, String> names = new HashMap<>();
        choices.pedal().keySet().forEach(code -> names.put(code, keyNames.apply(code)));
        return names;
    }

    /**
     * The sound of an open statement.
     *
     * @throws BadInputException if it has none, or the file is gone
     */
    Sound sound(OpenStatement open) {
        if (!open.statement().hasSound()) {
            throw new BadInputException(messages.text(MessageKey.STATION_NO_SOUND_KEPT));
        }
        Path file = new SoundFolder(settings.data(), UUID::randomUUID)
                .file(open.statement().sound());
        try {
            return WavFile.read(file);
        } catch (AudioException gone) {
            throw new BadInputException(messages.text(MessageKey.STATION_NO_SOUND_KEPT) + " " + gone.getMessage());
        }
    }

    @Override
    public Optional<Answers.Said> send(Path file, CalfRecord calf, Herd herd) {
        return printing.send(file, calf, herd);
    }

    /** Writes the sheet for the next shift and sends it to its printer; tells where it is. */
    String printHandover(Herd herd, List<OpenStatement> open) {
        Path written = HandoverPrinting.write(settings, herd, open, messages);
        return printing.sendSheet(written);
    }

    /**
     * Takes what people chose.
     *
     * @param told is told a line for them
     * @throws BadInputException if the settings cannot be written
     */
    void set(Act act, Consumer<String> told) {
        if (act instanceof Act.Set set) {
            StationEdit.set(settings.data(), set.line(), set.value());
            if (set.line().equals(StationChoices.LANGUAGE)) {
                told.accept(messages.text(MessageKey.STATION_NEXT_START));
            }
        } else if (act instanceof Act.Speak speak) {
            StationEdit.set(settings.data(), StationChoices.UNSPOKEN, unspoken(speak));
        } else if (act instanceof Act.AddOperator add) {
            StationEdit.set(
                    settings.data(),
                    StationChoices.OPERATORS,
                    Stream.concat(choices.operators().stream(), Stream.of(add.name()))
                            .collect(Collectors.joining(", ")));
        } else if (act instanceof Act.Stretch stretch) {
            double dots = choices.dotsPerInch().orElse(systemsDotsPerInch) * (1 + stretch.steps() / 100.0);
            StationEdit.set(settings.data(), StationChoices.DOTS_PER_INCH, String.format(Locale.ROOT, "%.2f", dots));
        } else if (act instanceof Act.Learn learn) {
            told.accept(learn(learn.meaning(), learn.code()));
        }
        choices = StationFile.in(settings.data()).choices();
        changed.accept(choices);
    }

    private String unspoken(Act.Speak speak) {
        Set<EntryGroup> silent = EnumSet.noneOf(EntryGroup.class);
        silent.addAll(choices.unspoken());
        if (speak.spoken()) {
            silent.remove(speak.group());
        } else {
            silent.add(speak.group());
        }
        return silent.stream().map(StationChoices::word).collect(Collectors.joining(", "));
    }

    private String learn(Meaning meaning, int code) {
        if (code <= 0) {
            return messages.text(MessageKey.STATION_PEDAL_VOLUME);
        }
        Meaning before = choices.pedal().get(code);
        if (before != null && before != meaning) {
            write(before, code, false);
        }
        write(meaning, code, true);
        return before == null || before == meaning
                ? messages.text(MessageKey.STATION_PEDAL_LEARNT, keyNames.apply(code), messages.word(meaning))
                : messages.text(
                        MessageKey.STATION_PEDAL_TAKEN,
                        keyNames.apply(code),
                        messages.word(before),
                        messages.word(meaning));
    }

    private void write(Meaning meaning, int code, boolean with) {
        List<String> codes = new ArrayList<>();
        choices.pedal().forEach((key, means) -> {
            if (means == meaning && key != code) {
                codes.add(Integer.toString(key));
            }
        });
        if (with) {
            codes.add(Integer.toString(code));
        }
        codes.sort(null);
        StationEdit.set(settings.data(), StationChoices.line(meaning), String.join(", ", codes));
    }

    /** Looks which microphones are there, beside the work, as it may take two seconds. */
    void lookForMicrophones() {
        Thread looking = new Thread(
                () -> {
                    try {
                        microphones = MicrophoneSource.names();
                    } catch (MicrophoneException silent) {
                        // The page then offers the usual one only, and the sign tells what is wrong with that.
                        microphones = List.of();
                    }
                },
                "looking for microphones");
        looking.setDaemon(true);
        looking.start();
    }
}
