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
import picocli.CommandLine.ParentCommand;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.care.BirthPeriod;
import strawbed.care.CareWindow;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.HerdFigures;
import strawbed.care.HerdImmunity;
import strawbed.care.Settled;
import strawbed.care.StoredColostrum;
import strawbed.protocol.Units;
import strawbed.text.CalfNames;
import strawbed.text.DuePhrases;
import strawbed.text.Figures;
import strawbed.text.HerdPhrases;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.StockPhrases;

/** The command {@code strawbed due}: what is due for the calves, most urgent first. */
@Command(
        name = "due",
        description = "Lists what is due, most urgent for the calf first.",
        mixinStandardHelpOptions = true)
final class DueCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "As it stood, or will stand, at this time, such as 2026-03-03T05:30; else now.")
    @Nullable
    String at;

    @Option(names = "--why", description = "Tell the rule of each item, its source, and what is assumed.")
    boolean why;

    @Option(names = "--json", description = "Print one JSON object a line for each item.")
    boolean json;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        Instant now = at == null ? settings.clock().instant() : DemoCommand.time(at, settings.zone());
        Herd herd = RecordReading.recent(settings, now);
        DuePhrases phrases = new DuePhrases(new Messages(Locale.US), settings.zone());
        List<DueItem> items = DueList.open(herd, now);
        if (json) {
            items.forEach(item -> program.out().println(JsonLine.of(object(item, herd, phrases, now))));
        } else {
            print(items, herd, phrases, now, settings, program.out());
            printStock(herd, now, settings, program.out());
            printHerd(herd, now, settings, program.out());
        }
        return 0;
    }

    private void print(
            List<DueItem> items, Herd herd, DuePhrases phrases, Instant now, Settings settings, PrintWriter out) {
        Messages messages = new Messages(Locale.US);
        String time =
                Figures.written(messages, settings.zone(), Units.AS_SPOKEN).dayAndClock(now);
        out.println(
                items.isEmpty()
                        ? "Nothing is due at " + time + "."
                        : "Due at " + time + ", most urgent for the calf first:");
        CalfNames names = new CalfNames(messages);
        for (DueItem item : items) {
            out.println(line(name(item, herd, names), phrases, item, now));
            if (why) {
                phrases.why(item, now).forEach(sentence -> out.println("      " + sentence));
            }
        }
    }

    private void printStock(Herd herd, Instant now, Settings settings, PrintWriter out) {
        List<StoredColostrum> stock = StoredColostrum.of(herd, now);
        if (stock.isEmpty()) {
            return;
        }
        Messages messages = new Messages(Locale.US);
        StockPhrases phrases = new StockPhrases(
                messages, settings.zone(), Farm.of(herd).protocol().units());
        out.println();
        out.println(messages.text(MessageKey.STOCK_TITLE));
        for (StoredColostrum colostrum : stock) {
            out.println(
                    String.format(Locale.ROOT, "  %-22s %s", phrases.name(colostrum), phrases.stands(colostrum, now)));
            if (why) {
                phrases.why(colostrum).forEach(sentence -> out.println("      " + sentence));
            }
        }
    }

    private void printHerd(Herd herd, Instant now, Settings settings, PrintWriter out) {
        Messages messages = new Messages(Locale.US);
        Farm farm = Farm.of(herd);
        BirthPeriod period = CareWindow.figures(now);
        HerdFigures figures = HerdFigures.of(herd, farm, period, now);
        out.println();
        if (figures.born() == 0) {
            out.println(messages.text(MessageKey.HERD_NONE_BORN));
            return;
        }
        out.println(messages.text(MessageKey.HERD_TITLE));
        HerdPhrases phrases = new HerdPhrases(messages, settings.zone());
        HerdImmunity immunity = HerdImmunity.of(herd, farm, period);
        phrases.lines(figures, immunity)
                .forEach((label, text) -> out.println(String.format(Locale.ROOT, "  %-26s %s", label, text)));
        if (why) {
            phrases.why(immunity).forEach(sentence -> out.println("      " + sentence));
        }
    }

    /** The same columns wherever items are listed. */
    static String line(String calf, DuePhrases phrases, DueItem item, Instant now) {
        return String.format(Locale.ROOT, "  %-22s %-28s %s", calf, phrases.what(item), phrases.when(item, now));
    }

    private static String name(DueItem item, Herd herd, CalfNames names) {
        return names.of(calf(item, herd), herd);
    }

    private static CalfRecord calf(DueItem item, Herd herd) {
        return herd.calf(item.calf()).orElseThrow(() -> new AssertionError("no calf " + item.calf()));
    }

    private static Map<String, @Nullable Object> object(DueItem item, Herd herd, DuePhrases phrases, Instant now) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        Instant limit = item.hardLimit();
        object.put("calf", calf(item, herd).number().orElse(null));
        object.put("id", item.calf().toString());
        object.put("what", word(item.kind()));
        object.put("state", word(item.state()));
        object.put("from", item.from().toString());
        object.put("due_at", item.dueAt().toString());
        object.put("late_after", item.times().lateAfter().toString());
        object.put("hard_limit", limit == null ? null : limit.toString());
        object.put("counted_from", word(item.ground().basis()));
        Timed<?> asked = item.ground().event();
        object.put("asked_by", asked == null ? null : asked.id().toString());
        object.put(
                "settled_by",
                item.settled() instanceof Settled.Done done ? done.by().id().toString() : null);
        object.put("why", String.join(" ", phrases.why(item, now)));
        object.put("protocol", item.ground().protocol().version());
        return object;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
