package strawbed.app;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.text.CalfNames;
import strawbed.text.Messages;

/** The command {@code strawbed calves}: who is in the record. */
@Command(name = "calves", description = "Lists the calves of the record.", mixinStandardHelpOptions = true)
final class CalvesCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(names = "--json", description = "Print one JSON object a line for each calf.")
    boolean json;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Herd herd = RecordReading.herd(program.settings());
        CalfNames names = new CalfNames(new Messages(Locale.US));
        for (CalfRecord calf : herd.calves()) {
            program.out().println(json ? JsonLine.of(object(calf)) : names.of(calf, herd) + line(calf));
        }
        if (herd.calves().isEmpty() && !json) {
            program.out()
                    .println("No calves yet in " + program.settings().data()
                            + ". Say \"new calf\" and its number to open one.");
        }
        return 0;
    }

    private static Map<String, @Nullable Object> object(CalfRecord calf) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        object.put("calf", calf.number().orElse(null));
        object.put("id", calf.id().toString());
        object.put("dam", calf.dam().orElse(null));
        object.put("sex", calf.sex().map(sex -> sex.word()).orElse(null));
        object.put("born", calf.bornAbout().map(Object::toString).orElse(null));
        object.put("alive", calf.isAlive());
        return object;
    }

    private static String line(CalfRecord calf) {
        return (calf.isAlive() ? "" : ", died") + "  " + calf.id();
    }
}
