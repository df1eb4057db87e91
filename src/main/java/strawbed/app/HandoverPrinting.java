package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import strawbed.calf.Herd;
import strawbed.handover.HandoverContents;
import strawbed.handover.Shift;
import strawbed.journal.OpenStatement;
import strawbed.report.pdf.PdfHandoverWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;

/** Writes the sheet for the next shift, by command or by a key. */
final class HandoverPrinting {
    private HandoverPrinting() {}

    /** The sheet of the shift that ends now, in the folder handovers of the record. */
    static Path write(Settings settings, Herd herd, List<OpenStatement> open, Messages messages) {
        Instant now = settings.clock().instant();
        Shift shift = new Shift(now.minus(Shift.USUAL), now);
        return write(settings, herd, open, shift, SheetPaper.LETTER, file(settings, shift), messages);
    }

    static Path write(
            Settings settings,
            Herd herd,
            List<OpenStatement> open,
            Shift shift,
            SheetPaper paper,
            Path file,
            Messages messages) {
        byte[] pdf = new PdfHandoverWriter()
                .write(
                        HandoverContents.of(
                                herd, open, shift, messages, settings.zone(), StationFile.farmName(settings)),
                        paper,
                        shift.now());
        PrintedFile.write(file, pdf, "The handover sheet");
        return file;
    }

    static Path file(Settings settings, Shift shift) {
        return settings.data().resolve("handovers").resolve(name(shift, settings.zone()));
    }

    private static String name(Shift shift, ZoneId zone) {
        return "handover-"
                + DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmm", Locale.ROOT)
                        .format(shift.now().atZone(zone))
                + ".pdf";
    }
}
