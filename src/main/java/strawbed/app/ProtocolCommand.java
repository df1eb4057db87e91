package strawbed.app;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.protocol.Allowed;
import strawbed.protocol.NearNames;
import strawbed.protocol.Protocol;
import strawbed.protocol.Section;
import strawbed.protocol.Setting;
import strawbed.protocol.file.ProtocolFile;
import strawbed.protocol.file.ProtocolReading;
import strawbed.text.Messages;
import strawbed.text.SettingPhrases;

/** The command {@code strawbed protocol}: what the farm does for its calves, and whether its file can be used. */
@Command(
        name = "protocol",
        description = "Shows the farm's protocol. It is changed in the file protocol.toml of the data folder, together"
                + " with the herd veterinarian.",
        mixinStandardHelpOptions = true)
final class ProtocolCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(names = "--json", description = "Print one JSON object.")
    boolean json;

    @Override
    public Integer call() {
        return show(json);
    }

    @Command(description = "Shows the protocol in force: settings, values, what is changed from the usual.")
    int show(@Option(names = "--json", description = "Print one JSON object.") boolean asJson) {
        Settings settings = settings();
        Protocol inForce = RecordReading.protocols(settings).latest();
        if (json || asJson) {
            out().println(JsonLine.of(object(inForce)));
            return 0;
        }
        out().println("Protocol in force: " + FarmProtocol.summary(inForce) + ".");
        otherInFile(settings, inForce).ifPresent(out()::println);
        for (Section section : Section.values()) {
            out().println();
            out().println(section.title() + " [" + section.key() + "]");
            section.settings().forEach(setting -> out().println(line(setting, inForce)));
        }
        return 0;
    }

    @Command(description = "Checks a protocol's file and changes nothing: OK, or every fault with its line.")
    int check(
            @Parameters(arity = "0..1", paramLabel = "FILE", description = "Another file than the farm's own.")
                    @Nullable
                    Path given) {
        Path file = given == null ? FarmProtocol.file(settings()) : given;
        if (!FarmProtocol.isThere(file)) {
            throw new BadInputException("There is no file " + file + ". Write one with \"strawbed protocol write"
                    + (given == null ? "" : " " + given) + "\".");
        }
        ProtocolReading reading = ProtocolFile.read(file);
        if (reading instanceof ProtocolReading.Broken broken) {
            PrintWriter err = Main.of(main).err();
            err.println(FarmProtocol.head(file, broken) + "Nothing was changed.");
            FarmProtocol.lines(broken).forEach(err::println);
            return Failures.BAD_INPUT;
        }
        if (reading instanceof ProtocolReading.Good good) {
            Protocol protocol = good.protocol();
            out().println(file + ": OK, " + FarmProtocol.summary(protocol) + ".");
            protocol.changed().forEach(setting -> out().println(line(setting, protocol)));
            return 0;
        }
        throw new AssertionError(reading);
    }

    @Command(description = "Tells what a setting does and why, where its usual value comes from, and what it may be.")
    int explain(@Parameters(paramLabel = "SETTING", description = "Such as first_dip_minutes.") String name) {
        Setting setting = Setting.find(NearNames.plain(name)).orElseThrow(() -> unknown(name));
        Protocol inForce = RecordReading.protocols(settings()).latest();
        out().println(setting.key() + ", in [" + setting.section().key() + "]");
        out().println("  what it does: " + setting.reason());
        out().println("  source:       " + setting.source() + ".");
        out().println("  may be:       " + setting.allowed().words() + ".");
        out().println("  usual:        " + value(setting, Protocol.usual()));
        out().println("  this farm:    " + value(setting, inForce) + (inForce.isChanged(setting) ? "  (changed)" : ""));
        return 0;
    }

    @Command(description = "Writes a file with the usual values and a comment on each. Never over another file.")
    int write(
            @Parameters(arity = "0..1", paramLabel = "FILE", description = "Another file than the farm's own.")
                    @Nullable
                    Path given) {
        Path file = given == null ? FarmProtocol.file(settings()) : given;
        ProtocolFile.write(file, Protocol.usual());
        out().println("Written: " + file + ". Change it together with the herd veterinarian, then check it with"
                + " \"strawbed protocol check" + (given == null ? "" : " " + given) + "\".");
        return 0;
    }

    /** What the file says where that is not in force, so that nobody takes a change for done. */
    private static Optional<String> otherInFile(Settings settings, Protocol inForce) {
        Path file = FarmProtocol.file(settings);
        if (!FarmProtocol.isThere(file)) {
            return Optional.empty();
        }
        ProtocolReading reading = ProtocolFile.read(file);
        if (reading instanceof ProtocolReading.Broken broken) {
            return Optional.of(FarmProtocol.head(file, broken) + "See them with \"strawbed protocol check\".");
        }
        if (reading instanceof ProtocolReading.Good good) {
            return good.protocol().equals(inForce)
                    ? Optional.empty()
                    : Optional.of(file + " has another one, " + FarmProtocol.summary(good.protocol())
                            + ". It comes into force when the recorder next starts.");
        }
        throw new AssertionError(reading);
    }

    private static BadInputException unknown(String name) {
        List<String> near = NearNames.of(
                name, Arrays.stream(Setting.values()).map(Setting::key).toList());
        return new BadInputException("There is no setting \"" + name + "\". "
                + (near.isEmpty()
                        ? "\"strawbed protocol\" lists them all."
                        : "Did you mean " + String.join(", ", near) + "?"));
    }

    /** As in the file, and where that has a unit in its name also as people say it. */
    private String value(Setting setting, Protocol protocol) {
        String value = protocol.value(setting);
        String words = new SettingPhrases(new Messages(Locale.US), settings().zone()).value(setting, protocol);
        return words.equals(value) ? value : value + "  (" + words + ")";
    }

    private static String line(Setting setting, Protocol protocol) {
        boolean isChanged = protocol.isChanged(setting);
        return String.format(
                Locale.ROOT,
                "%s %-34s %s%s",
                isChanged ? " *" : "  ",
                setting.key(),
                protocol.value(setting).isEmpty() ? "none" : protocol.value(setting),
                isChanged ? "  (usual: " + setting.allowed().usual() + ")" : "");
    }

    private static Map<String, ?> object(Protocol protocol) {
        Map<String, Map<String, Map<String, ?>>> sections = new LinkedHashMap<>();
        for (Section section : Section.values()) {
            Map<String, Map<String, ?>> settings = new LinkedHashMap<>();
            for (Setting setting : section.settings()) {
                Map<String, Object> of = new LinkedHashMap<>();
                of.put("value", json(setting, protocol));
                of.put("usual", json(setting, Protocol.usual()));
                of.put("changed", protocol.isChanged(setting));
                settings.put(setting.key(), of);
            }
            sections.put(section.key(), settings);
        }
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("version", protocol.version());
        object.put("changed", protocol.changed().stream().map(Setting::key).toList());
        object.put("sections", sections);
        return object;
    }

    /** The same kinds as in the file: numbers, words and lists of them. */
    private static Object json(Setting setting, Protocol protocol) {
        String value = protocol.value(setting);
        if (setting.allowed() instanceof Allowed.Amount) {
            return new BigDecimal(value);
        }
        if (setting.allowed() instanceof Allowed.Ascending) {
            return Allowed.parts(value).stream().map(BigDecimal::new).toList();
        }
        return setting.allowed() instanceof Allowed.Words ? Allowed.parts(value) : value;
    }

    private Settings settings() {
        return Main.of(main).settings();
    }

    private PrintWriter out() {
        return Main.of(main).out();
    }
}
