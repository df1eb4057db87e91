package strawbed.app;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import strawbed.calf.Herd;
import strawbed.care.Farm;
import strawbed.care.HerdReport;
import strawbed.herd.HerdContents;
import strawbed.report.HerdPaper;
import strawbed.report.html.HtmlHerdWriter;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfHerdWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;
import strawbed.window.StationPictures;

/**
 * Samples of all documents, made from the demo night: {@code mvn -B -Psamples process-test-classes} writes them to reports/,
 * with a picture of the first page of each. The zone must be that of the farm that the demo tells of.
 */
final class SamplesRun {
    private static final String MORNING = "2026-03-03T05:30";
    private static final Instant NOW = Instant.parse("2026-03-03T11:31:00Z");
    private static final LocalDate DAY = LocalDate.of(2026, 3, 3);
    private static final int DOTS_PER_INCH = 120;

    private final Path work;
    private final Path reports = Path.of("reports");
    private final Settings settings;

    private SamplesRun(Path work) {
        this.work = work;
        this.settings = Settings.of(Optional.of(work.resolve("record")), Optional.empty())
                .withClock(Clock.fixed(NOW, SimulatedHerd.ZONE));
    }

    public static void main(String[] arguments) throws IOException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        Path work = Files.createTempDirectory("strawbed-samples");
        try {
            new SamplesRun(work).make();
        } finally {
            try (Stream<Path> all = Files.walk(work)) {
                for (Path file :
                        all.sorted((one, other) -> other.compareTo(one)).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void make() throws IOException {
        StationPictures.write(reports);
        Files.createDirectories(settings.data());
        Files.writeString(settings.data().resolve(StationFile.NAME), "farm.name = Larkspur Hollow\n");
        run("demo", "--at", MORNING, "--out", work.resolve("cards").toString());
        for (String calf : List.of("312", "314")) {
            String name = "card-calf-" + calf + ".pdf";
            Files.copy(work.resolve("cards").resolve(name), reports.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            picture(name);
        }
        Herd herd = RecordReading.read(settings, record -> HerdReading.recent(record, NOW, NOW))
                .orElseThrow();
        cards(herd);
        run("handover", "--at", "2026-03-03T05:31", "-o", sample("handover.pdf"));
        run("crib", "-o", sample("crib.pdf"));
        herdReport(herd);
        for (String name : List.of("handover.pdf", "crib.pdf", "herd.pdf")) {
            picture(name);
        }
    }

    /** Standing, and two on a sheet: prints of the same night that its record does not know. */
    private void cards(Herd herd) throws IOException {
        CardPrinting printing = new CardPrinting(new Messages(Locale.US), settings, prints -> Optional.empty());
        CardPrinting.Wanted hard = wanted("313", herd);
        printing.print(hard, CardPaper.FOUR_BY_SIX_INCH_UPRIGHT, reports.resolve("card-calf-313-upright.pdf"));
        picture("card-calf-313-upright.pdf");
        printing.printSheets(
                List.of(wanted("312", herd), wanted("315", herd)),
                CardPaper.FOUR_BY_SIX_INCH,
                SheetPaper.LETTER,
                reports.resolve("cards-letter.pdf"));
        picture("cards-letter.pdf");
    }

    private static CardPrinting.Wanted wanted(String number, Herd herd) {
        return new CardPrinting.Wanted(herd.byNumber(number).orElseThrow(), herd);
    }

    private void herdReport(Herd herd) throws IOException {
        HerdReport report = HerdReport.of(herd, Farm.of(herd), new HerdReport.Days(DAY, DAY), SimulatedHerd.ZONE, NOW);
        HerdPaper paper =
                HerdContents.of(report, Optional.empty(), 0, NOW, new Messages(Locale.US), SimulatedHerd.ZONE, "");
        Files.write(reports.resolve("herd.pdf"), new PdfHerdWriter().write(paper, SheetPaper.LETTER, NOW));
        Files.write(
                reports.resolve("herd.html"), new HtmlHerdWriter().write(paper).getBytes(StandardCharsets.UTF_8));
    }

    private String sample(String name) {
        return reports.resolve(name).toString();
    }

    private void run(String... arguments) {
        String[] all = new String[arguments.length + 2];
        System.arraycopy(arguments, 0, all, 0, arguments.length);
        all[arguments.length] = "--data";
        all[arguments.length + 1] = settings.data().toString();
        CommandRun run = CommandRun.of(all);
        if (run.code() != 0) {
            throw new IllegalStateException(String.join(" ", arguments) + ": " + run.err());
        }
        System.out.print(run.out());
    }

    private void picture(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(reports.resolve(pdf).toFile())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
            ImageIO.write(
                    page, "png", reports.resolve(pdf.replace(".pdf", ".png")).toFile());
        }
    }
}
