package strawbed.app;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.journal.RecordParts;
import strawbed.journal.RecordParts.Naming;
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
        long listed = RecordReading.read(program.settings(), record -> list(record, program.out()))
                .orElse(0L);
        if (listed == 0 && !json) {
            program.out()
                    .println("No calves yet in " + program.settings().data()
                            + ". Say \"new calf\" and its number to open one.");
        }
        return 0;
    }

    /** By portions, as a big record has more calves than fit in a small memory. */
    private long list(RecordParts record, PrintWriter out) {
        CalfNames names = new CalfNames(new Messages(Locale.US));
        long listed = 0;
        for (List<CalfId> portion : record.calvesInPortions()) {
            List<CalfRecord> calves = Herd.of(record.ofCalves(portion)).calves();
            Herd sisters = json ? Herd.of(List.of()) : sisters(record, calves);
            for (CalfRecord calf : calves) {
                out.println(json ? JsonLine.of(object(calf)) : names.of(calf, sisters) + line(calf));
            }
            listed += calves.size();
        }
        return listed;
    }

    /** All calves of the dams by which calves without a number are called. */
    private static Herd sisters(RecordParts record, List<CalfRecord> calves) {
        Map<String, Instant> dams = new HashMap<>();
        for (CalfRecord calf : calves) {
            if (calf.number().isEmpty()) {
                calf.dam().ifPresent(dam -> dams.put(dam, Instant.MIN));
            }
        }
        return Herd.of(record.ofCalves(record.calvesNaming(Naming.DAM, dams)));
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
