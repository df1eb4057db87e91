package strawbed.app;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import strawbed.print.PrintUse;
import strawbed.station.Choices;

/**
 * What this computer does with record and sounds, from {@code station.properties} in the data folder. Not in the
 * protocol, which is about calves and the same on all computers of a farm.
 *
 * @param farmName as it stands on paper; may be empty
 * @param backupFolder where a backup goes each day, another disk best; empty for nowhere
 * @param backupsKept how many of them stay
 * @param soundsKeptDays sounds older than this many days are removed; empty for never
 * @param soundsKeptMegabytes the oldest sounds beyond this many million bytes are removed; empty for never
 * @param printers the printer for each use that one was chosen for
 * @param choices how the station listens, speaks and looks
 */
record StationFile(
        String farmName,
        Optional<Path> backupFolder,
        int backupsKept,
        Optional<Integer> soundsKeptDays,
        Optional<Integer> soundsKeptMegabytes,
        Map<PrintUse, String> printers,
        Choices choices) {
    static final String NAME = "station.properties";

    /** What holds without a file: no second place, and no sound is removed. */
    static final StationFile USUAL =
            new StationFile("", Optional.empty(), 14, Optional.empty(), Optional.empty(), Map.of(), Choices.USUAL);

    private static final int MOST = 1_000_000;

    /** A line at the head of a sheet. */
    private static final int LONGEST_FARM_NAME = 60;

    StationFile {
        printers = Map.copyOf(printers);
    }

    /** The farm's name for paper. A broken file stops no card; whoever starts or checks the program is told of it. */
    static String farmName(Settings settings) {
        try {
            return in(settings.data()).farmName();
        } catch (BadInputException broken) {
            return "";
        }
    }

    /** The line that names the printer for this use. */
    static String printerLine(PrintUse use) {
        return switch (use) {
            case CARDS -> "printer.cards";
            case SHEETS -> "printer.sheets";
        };
    }

    Optional<String> printer(PrintUse use) {
        return Optional.ofNullable(printers.get(use));
    }

    /**
     * The file of a data folder; what it leaves out is as usual.
     *
     * @throws BadInputException if it cannot be read, or has a line that means nothing
     */
    static StationFile in(Path data) {
        Path file = data.resolve(NAME);
        if (!Files.exists(file)) {
            return USUAL;
        }
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            lines.load(reader);
        } catch (IOException | IllegalArgumentException e) {
            throw new BadInputException(
                    file + " cannot be read: " + e.getMessage() + ". Mend it, or remove it to do as usual.");
        }
        Map<String, String> left = new TreeMap<>();
        lines.stringPropertyNames().forEach(name -> left.put(name, lines.getProperty(name)));
        Map<PrintUse, String> printers = new EnumMap<>(PrintUse.class);
        for (PrintUse use : PrintUse.values()) {
            Optional.ofNullable(taken(file, left, printerLine(use), StationFile::printerName))
                    .ifPresent(name -> printers.put(use, name));
        }
        StationFile read = new StationFile(
                Optional.ofNullable(taken(file, left, "farm.name", StationFile::nameOfFarm))
                        .orElse(""),
                Optional.ofNullable(taken(file, left, "backup.folder", StationFile::folder)),
                Optional.ofNullable(taken(file, left, "backups.kept", StationFile::count))
                        .orElse(USUAL.backupsKept()),
                Optional.ofNullable(taken(file, left, "sounds.kept-days", StationFile::count)),
                Optional.ofNullable(taken(file, left, "sounds.kept-megabytes", StationFile::count)),
                printers,
                StationChoices.read(new StationChoices.Lines() {
                    @Override
                    public <T> Optional<T> taken(String name, Function<String, T> meaning) {
                        return Optional.ofNullable(StationFile.taken(file, left, name, meaning));
                    }
                }));
        if (!left.isEmpty()) {
            throw new BadInputException(file + " has the line \""
                    + left.keySet().iterator().next()
                    + "\", which means nothing. It may have farm.name, backup.folder, backups.kept, sounds.kept-days,"
                    + " sounds.kept-megabytes, printer.cards, printer.sheets, "
                    + StationChoices.names() + ".");
        }
        return read;
    }

    private static <T> @Nullable T taken(
            Path file, Map<String, String> left, String name, Function<String, T> meaning) {
        String text = left.remove(name);
        if (text == null) {
            return null;
        }
        try {
            return meaning.apply(text.strip());
        } catch (IllegalArgumentException e) {
            throw new BadInputException(
                    file + ": " + name + " cannot be \"" + text + "\": " + e.getMessage() + ". Mend it.");
        }
    }

    private static Path folder(String text) {
        try {
            Path folder = Path.of(text);
            if (folder.isAbsolute()) {
                return folder;
            }
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("no folder has such a name", e);
        }
        throw new IllegalArgumentException("write the whole path, from the root on");
    }

    private static String nameOfFarm(String text) {
        if (text.length() > LONGEST_FARM_NAME || text.codePoints().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("write at most " + LONGEST_FARM_NAME + " letters on one line");
        }
        return text;
    }

    private static String printerName(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("write a printer's name, as \"strawbed printer\" lists them");
        }
        return text;
    }

    private static int count(String text) {
        int count;
        try {
            count = Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("write a whole number", e);
        }
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("write a number from 1 to " + MOST);
        }
        return count;
    }
}
