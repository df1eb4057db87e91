package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.care.CareWindow;
import strawbed.handover.Shift;
import strawbed.journal.OpenStatement;
import strawbed.print.PrintUse;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;

/** The command {@code strawbed handover}: what the next shift must know, as a PDF. */
@Command(
        name = "handover",
        description =
                "Writes the handover sheet of a shift as a PDF: what is late and due, the calves born, what nobody"
                        + " confirmed, the stock, the cautions.",
        mixinStandardHelpOptions = true)
final class HandoverCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(
            names = "--from",
            paramLabel = "TIME",
            description = "When the shift began, such as 2026-03-02T17:30; else 12 hours before it hands over.")
    @Nullable
    String from;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "When it hands over, such as 2026-03-03T05:30; else now.")
    @Nullable
    String at;

    @Option(names = "--paper", paramLabel = "PAPER", description = "letter or a4; else letter.")
    String paper = "letter";

    @Option(
            names = "-o",
            paramLabel = "FILE",
            description = "Where the sheet goes; else the folder handovers of the record.")
    @Nullable
    Path file;

    @Mixin
    PrintOption print = new PrintOption();

    /** What the record has for the sheet. */
    private record Known(Herd herd, List<OpenStatement> open) {}

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        SheetPaper size = PaperOption.paper(paper);
        Shift shift = shift(settings);
        Known known = RecordReading.read(
                        settings,
                        record -> new Known(
                                HerdReading.recent(record, shift.now(), shift.now()),
                                at == null ? record.openStatements() : record.openStatementsAt(shift.now())))
                .orElseThrow(() -> new BadInputException("There is no record in " + settings.data()
                        + ", so there is nothing to hand over. Give the record's folder with --data."));
        Path written = HandoverPrinting.write(
                settings,
                known.herd(),
                known.open(),
                shift,
                size,
                file == null ? HandoverPrinting.file(settings, shift) : file,
                new Messages(Locale.US));
        program.out().println(written);
        return print.send(program, written, "the handover sheet", PrintUse.SHEETS);
    }

    private Shift shift(Settings settings) {
        Instant now = at == null ? settings.clock().instant() : DemoCommand.time(at, settings.zone());
        Instant began = from == null ? now.minus(Shift.USUAL) : DemoCommand.time(from, settings.zone());
        if (!began.isBefore(now)) {
            throw new BadInputException("The shift would begin at " + local(began, settings.zone())
                    + " and hand over at " + local(now, settings.zone())
                    + ". Give a --from that is before --at, or before now.");
        }
        if (began.isBefore(CareWindow.from(now))) {
            throw new BadInputException(
                    "A sheet reaches back " + CareWindow.LENGTH.toDays() + " days at most. Give a later --from.");
        }
        return new Shift(began, now);
    }

    private static String local(Instant time, ZoneId zone) {
        return DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm", Locale.ROOT).format(time.atZone(zone));
    }
}
