package strawbed.app;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.account.CalfAccount;
import strawbed.account.Line;
import strawbed.account.Part;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.Farm;
import strawbed.protocol.Units;
import strawbed.text.CalfNames;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** The command {@code strawbed calf}: all that is known, judged and assumed of one calf, with reasons. */
@Command(
        name = "calf",
        description = "Tells all that is known of a calf, what follows from it, and why.",
        mixinStandardHelpOptions = true)
final class CalfCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(paramLabel = "CALF", description = "The calf's number, or its id as \"strawbed calves\" shows it.")
    String calf = "";

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "As it stood, or will stand, at this time, such as 2026-03-03T05:30; else now.")
    @Nullable
    String at;

    @Option(names = "--json", description = "Print one JSON object.")
    boolean json;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        Instant now = at == null ? settings.clock().instant() : DemoCommand.time(at, settings.zone());
        Herd herd = RecordReading.around(settings, calf, now, now);
        CalfRecord wanted = RecordReading.calf(herd, calf);
        Messages messages = new Messages(Locale.US);
        List<Part> parts = CalfAccount.of(wanted, herd, now, messages, settings.zone());
        if (json) {
            program.out().println(JsonLine.of(object(wanted, herd, now, parts)));
        } else {
            String time =
                    Figures.written(messages, settings.zone(), Units.AS_SPOKEN).dayAndClock(now);
            String name = new CalfNames(messages).of(wanted, herd);
            String title = name.substring(0, 1).toUpperCase(Locale.US) + name.substring(1);
            String protocol = Farm.of(herd).protocolFor(wanted).version();
            print(title + " at " + time + ", judged by protocol " + protocol, parts, program.out());
        }
        return 0;
    }

    private static void print(String title, List<Part> parts, PrintWriter out) {
        out.println(title);
        for (Part part : parts) {
            out.println();
            out.println(part.title());
            for (Line line : part.lines()) {
                out.println(String.format(Locale.ROOT, "  %-28s %s", line.label(), line.text()));
                line.reasons().forEach(reason -> out.println("      " + reason));
            }
        }
    }

    private static Map<String, @Nullable Object> object(CalfRecord calf, Herd herd, Instant now, List<Part> parts) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("calf", calf.number().orElse(null));
        object.put("id", calf.id().toString());
        object.put("at", now.toString());
        object.put("protocol", Farm.of(herd).protocolFor(calf).version());
        object.put(
                "parts",
                parts.stream()
                        .map(part -> Map.of(
                                "title",
                                part.title(),
                                "lines",
                                part.lines().stream().map(CalfCommand::object).toList()))
                        .toList());
        return object;
    }

    private static Map<String, Object> object(Line line) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("label", line.label());
        object.put("text", line.text());
        object.put("reasons", line.reasons());
        return object;
    }
}
