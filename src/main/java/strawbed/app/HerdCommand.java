package strawbed.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.care.BirthPeriod;
import strawbed.care.Farm;
import strawbed.care.HerdReport;
import strawbed.exchange.HerdSheet;
import strawbed.exchange.NewFile;
import strawbed.herd.HerdContents;
import strawbed.journal.OpenStatement;
import strawbed.print.PrintUse;
import strawbed.report.HerdPaper;
import strawbed.report.html.HtmlHerdWriter;
import strawbed.report.pdf.PdfHerdWriter;
import strawbed.report.pdf.SheetPaper;
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
    private static final String PDF = "pdf";
    private static final String HTML = "html";
    private static final List<String> FORMATS = List.of(TEXT, CSV, PDF, HTML);

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
            paramLabel = "FORMAT",
            description = "text to read, csv for spreadsheets, pdf to print, or html for a browser; else text.")
    String format = TEXT;

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4, for pdf; else letter.")
    String paper = "letter";

    @Option(names = "--why", description = "Also tell what each figure counts and what others found; for text.")
    boolean why;

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "A new file; else the terminal, or for pdf and html the folder herd of the record.")
    @Nullable
    Path file;

    @Mixin
    PrintOption print = new PrintOption();

    /** What the record has for the report. */
    private record Known(Herd herd, List<OpenStatement> open) {}

    /** The period and the one before it, and how many statements of the period nobody confirmed. */
    private record Told(List<HerdReport> reports, int unconfirmed) {}

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        if (!FORMATS.contains(format)) {
            throw new BadInputException("There is no format \"" + format + "\". Use text, csv, pdf or html.");
        }
        if (print.print && !format.equals(PDF)) {
            throw new BadInputException("Only a PDF goes to the printer. Use --format pdf with --print.");
        }
        SheetPaper sheet = PaperOption.paper(paper);
        Instant now = settings.clock().instant();
        HerdReport.Days days = days(now.atZone(settings.zone()).toLocalDate());
        Told told = told(settings, days, now);
        switch (format) {
            case CSV -> write(out -> HerdSheet.write(told.reports(), out), program);
            case PDF -> print(new PdfHerdWriter().write(paper(told, settings, now), sheet, now), days, program);
            case HTML ->
                print(
                        new HtmlHerdWriter().write(paper(told, settings, now)).getBytes(StandardCharsets.UTF_8),
                        days,
                        program);
            default -> write(out -> out.append(text(told.reports(), phrases(settings))), program);
        }
        return 0;
    }

    private static HerdReportPhrases phrases(Settings settings) {
        return new HerdReportPhrases(new Messages(Locale.US), settings.zone());
    }

    private static HerdPaper paper(Told told, Settings settings, Instant now) {
        return HerdContents.of(
                told.reports().get(0),
                told.reports().stream().skip(1).findFirst(),
                told.unconfirmed(),
                now,
                new Messages(Locale.US),
                settings.zone(),
                StationFile.farmName(settings));
    }

    private void print(byte[] content, HerdReport.Days days, Main program) {
        Path written = file == null
                ? program.settings()
                        .data()
                        .resolve("herd")
                        .resolve("herd-" + days.first() + "-" + days.last() + "." + format)
                : file;
        PrintedFile.write(written, content, "The herd's report");
        program.out().println(written);
        print.send(program, written, "the herd's report", PrintUse.SHEETS);
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

    private String text(List<HerdReport> reports, HerdReportPhrases phrases) {
        List<String> parts = new ArrayList<>();
        phrases.sections(reports.get(0)).forEach(section -> parts.add(HerdReportPhrases.shown(section)));
        reports.stream()
                .skip(1)
                .map(phrases::before)
                .map(HerdReportPhrases::shown)
                .forEach(parts::add);
        if (why) {
            parts.add(HerdReportPhrases.shown(phrases.meanings()));
        }
        parts.add(String.join(System.lineSeparator(), phrases.notes()));
        return String.join(System.lineSeparator().repeat(2), parts) + System.lineSeparator();
    }

    /** The period, and the one before it where that is wanted. */
    private Told told(Settings settings, HerdReport.Days days, Instant now) {
        List<HerdReport.Days> all = new ArrayList<>(List.of(days));
        if (compare) {
            long length = ChronoUnit.DAYS.between(days.first(), days.last()) + 1;
            all.add(new HerdReport.Days(
                    days.first().minusDays(length), days.first().minusDays(1)));
        }
        Instant first = all.get(all.size() - 1).period(settings.zone()).from();
        Known known = RecordReading.read(
                        settings, record -> new Known(HerdReading.bornSince(record, first), record.openStatements()))
                .orElseGet(() -> new Known(Herd.of(List.of()), List.of()));
        Farm farm = Farm.of(known.herd());
        BirthPeriod period = days.period(settings.zone());
        return new Told(
                all.stream()
                        .map(each -> HerdReport.of(known.herd(), farm, each, settings.zone(), now))
                        .toList(),
                (int) known.open().stream()
                        .map(open -> open.statement().from())
                        .filter(period::contains)
                        .count());
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
