package strawbed.app;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.print.PrintUse;
import strawbed.print.Printers;

/** What a person is told of printers and waiting pages. */
final class PrintTelling {
    private PrintTelling() {}

    /**
     * The line of {@code strawbed check}.
     *
     * @throws BadInputException if something must be done
     */
    static String check(Settings settings, Printers printers) {
        PrintDesk desk = new PrintDesk(settings, printers);
        Map<PrintUse, String> chosen = StationFile.in(settings.data()).printers();
        PrintQueue.Contents contents = desk.queue().contents();
        List<String> troubles = new ArrayList<>(contents.damaged());
        if (!chosen.isEmpty()) {
            List<Printers.Known> known = desk.porter().printers();
            chosen.values().stream()
                    .distinct()
                    .sorted()
                    .map(name -> trouble(name, known))
                    .flatMap(Optional::stream)
                    .forEach(troubles::add);
        }
        contents.waiting().stream().map(PrintDesk::sentence).forEach(troubles::add);
        if (!troubles.isEmpty()) {
            throw new BadInputException(String.join(" ", troubles));
        }
        String goes = Arrays.stream(PrintUse.values())
                .filter(chosen::containsKey)
                .map(use -> PrintDesk.word(use) + " go to " + chosen.get(use))
                .collect(Collectors.joining(", "));
        return (goes.isEmpty() ? "none chosen" : goes) + "; no page waits";
    }

    /** Why a chosen printer would take nothing. */
    static Optional<String> trouble(String name, List<Printers.Known> known) {
        return known.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .map(Printers.Known::trouble)
                .orElseGet(() -> Optional.of("The printer " + name + " is gone"
                        + (known.isEmpty() ? ", as this computer knows no printer now" : "")
                        + ". Set it up again, or choose another with \"strawbed printer use\"."));
    }

    /** Printers with what they are chosen for, then the jobs. */
    static List<String> list(Settings settings, Printers printers) {
        PrintDesk desk = new PrintDesk(settings, printers);
        Map<PrintUse, String> chosen = StationFile.in(settings.data()).printers();
        List<String> lines = new ArrayList<>();
        List<Printers.Known> known = desk.porter().printers();
        lines.add("Printers:");
        known.forEach(one -> lines.add("  " + one.name() + marks(one.name(), chosen) + ": "
                + one.trouble().orElse("ready, as far as is known")));
        if (known.isEmpty()) {
            lines.add("  none. Set one up in the system's settings (Debian: packages cups and cups-bsd).");
        }
        chosen.values().stream()
                .distinct()
                .filter(name -> known.stream().noneMatch(one -> one.name().equals(name)))
                .sorted()
                .forEach(name -> lines.add("  " + name + marks(name, chosen) + ": "
                        + trouble(name, known).orElse("")));
        PrintQueue.Contents contents = desk.queue().contents();
        lines.add("Pages:");
        contents.jobs().forEach(job -> lines.add("  " + line(job, settings.zone())));
        contents.damaged().forEach(damage -> lines.add("  " + damage));
        if (contents.jobs().isEmpty() && contents.damaged().isEmpty()) {
            lines.add("  none");
        }
        return lines;
    }

    private static String marks(String name, Map<PrintUse, String> chosen) {
        String uses = Arrays.stream(PrintUse.values())
                .filter(use -> name.equals(chosen.get(use)))
                .map(PrintDesk::word)
                .collect(Collectors.joining(" and "));
        return uses.isEmpty() ? "" : " (for " + uses + ")";
    }

    private static String line(PrintJob job, ZoneId zone) {
        String head = job.number() + "  " + job.what() + ", asked for " + at(job.askedAt(), zone) + ": ";
        Instant last = job.lastTry();
        String tried = last == null ? "" : " Last tried " + at(last, zone) + ".";
        return head
                + switch (job.state()) {
                    case WAITING -> "waits for " + job.printer() + ". " + PrintDesk.fault(job) + tried;
                    case HANDED_OVER -> "handed over to " + job.printer() + (last == null ? "" : " " + at(last, zone));
                    case DROPPED -> "given up";
                };
    }

    private static String at(Instant time, ZoneId zone) {
        return DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.US).format(time.atZone(zone));
    }
}
