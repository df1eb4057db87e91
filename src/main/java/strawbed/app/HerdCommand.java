package strawbed.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.care.Farm;
import strawbed.care.HerdReport;
import strawbed.exchange.HerdSheet;
import strawbed.exchange.NewFile;
import strawbed.text.HerdReportPhrases;
import strawbed.text.Messages;

/** The command {@code strawbed herd}: the herd's figures of a period. */
@Command(
        name = "herd",
        description = "Tells the herd's figures of the calves born in a period, whole, by week, weekday, shift and age"
                + " of the dam: for the owner and the herd's veterinarian.",
        mixinStandardHelpOptions = true)
final class HerdCommand implements Callable<Integer> {
    private static final int USUAL_DAYS = 30;
    private static final String TEXT = "text";
    private static final String CSV = "csv";

    @ParentCommand
    @Nullable
    Main main;

    @Option(names = "--from", paramLabel = "DATE", description = "The first day of births, as 2026-02-01.")
    @Nullable
    String from;

    @Option(names = "--to", paramLabel = "DATE", description = "The last day of births; else today.")
    @Nullable
    String to;

    @Option(names = "--compare", description = "Also tell the period of as many days before it.")
    boolean compare;

    @Option(
            names = "--format",
            paramLabel = "text|csv",
            description = "Text to read, or a CSV for spreadsheets; else text.")
    String format = TEXT;

    @Option(names = "-o", paramLabel = "FILE", description = "A new file; else the terminal.")
    @Nullable
    Path file;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        if (!format.equals(TEXT) && !format.equals(CSV)) {
            throw new BadInputException("There is no format \"" + format + "\". Use text or csv.");
        }
        Instant now = settings.clock().instant();
        HerdReport.Days days = days(now.atZone(settings.zone()).toLocalDate());
        List<HerdReport> reports = reports(settings, days, now);
        write(content(reports, settings), program);
        return 0;
    }

    private void write(NewFile.Content content, Main program) {
        if (file != null) {
            NewFile.write(file, content);
            program.out().println(file);
            return;
        }
        PrintWriter out = program.documents();
        try {
            content.writeTo(out);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        out.flush();
    }

    private NewFile.Content content(List<HerdReport> reports, Settings settings) {
        return format.equals(CSV)
                ? out -> HerdSheet.write(reports, out)
                : out -> out.append(text(reports, new HerdReportPhrases(new Messages(Locale.US), settings.zone())));
    }

    private static String text(List<HerdReport> reports, HerdReportPhrases phrases) {
        List<String> parts = new ArrayList<>();
        phrases.sections(reports.get(0)).forEach(section -> parts.add(HerdReportPhrases.shown(section)));
        reports.stream()
                .skip(1)
                .map(phrases::before)
                .map(HerdReportPhrases::shown)
                .forEach(parts::add);
        parts.add(String.join(System.lineSeparator(), phrases.notes()));
        return String.join(System.lineSeparator().repeat(2), parts) + System.lineSeparator();
    }

    /** The period, and the one before it where that is wanted. */
    private List<HerdReport> reports(Settings settings, HerdReport.Days days, Instant now) {
        List<HerdReport.Days> all = new ArrayList<>(List.of(days));
        if (compare) {
            long length = ChronoUnit.DAYS.between(days.first(), days.last()) + 1;
            all.add(new HerdReport.Days(
                    days.first().minusDays(length), days.first().minusDays(1)));
        }
        Instant first = all.get(all.size() - 1).period(settings.zone()).from();
        Herd herd = RecordReading.read(settings, record -> HerdReading.bornSince(record, first))
                .orElseGet(() -> Herd.of(List.of()));
        Farm farm = Farm.of(herd);
        return all.stream()
                .map(each -> HerdReport.of(herd, farm, each, settings.zone(), now))
                .toList();
    }

    private HerdReport.Days days(LocalDate today) {
        LocalDate last = to == null ? today : date("--to", to);
        LocalDate first = from == null ? last.minusDays(USUAL_DAYS - 1) : date("--from", from);
        if (last.isBefore(first)) {
            throw new BadInputException("The period would end on " + last + ", before its first day " + first
                    + ". Give --from a day that is not after --to.");
        }
        return new HerdReport.Days(first, last);
    }

    private static LocalDate date(String option, String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 1900 && date.getYear() <= 9998) {
                return date;
            }
        } catch (DateTimeException e) {
            throw new BadInputException(
                    option + " \"" + text + "\" is no date. Give year, month and day, as 2026-02-01.");
        }
        throw new BadInputException(option + " " + text + " is not in the years 1900 to 9998. Give another date.");
    }
}
