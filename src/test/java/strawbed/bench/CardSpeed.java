package strawbed.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.card.CardContents;
import strawbed.card.Print;
import strawbed.event.Term;
import strawbed.report.CalfPage;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfCardWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.testkit.Commit;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/**
 * How long a card takes and how large its file is: {@code mvn -B -Pbench-card process-test-classes} prints the table and
 * writes it to reports/card-speed.md. On a busy machine the figures are too high.
 */
public final class CardSpeed {
    private static final int WARM_UP = 50;
    private static final int MEASURED = 200;
    private static final double NANOS_PER_MILLI = 1e6;
    private static final double KILOBYTE = 1000;
    private static final Instant FROM = Instant.parse("2026-01-05T06:00:00Z");
    private static final Messages MESSAGES = new Messages(Locale.US);

    private final Herd herd = Herd.of(new SimulatedHerd(WARM_UP + MEASURED, 30, FROM, 7).rest());
    private final List<CalfRecord> calves = herd.calves();
    private final PdfCardWriter writer = new PdfCardWriter();
    private final StringBuilder table = new StringBuilder(
            "| paper | mean, ms | longest, ms | mean file, kB | largest file, kB |\n|---|---:|---:|---:|---:|\n");

    private CardSpeed() {}

    public static void main(String[] args) throws IOException, InterruptedException {
        CardSpeed speed = new CardSpeed();
        for (CardPaper paper : CardPaper.values()) {
            speed.measure(
                    MESSAGES.word(Term.CardSize.valueOf(paper.name())),
                    i -> speed.writer.write(speed.page(i), paper, speed.now(i)));
        }
        for (SheetPaper sheet : SheetPaper.values()) {
            speed.measure(
                    "two A6 on " + sheet.name().toLowerCase(Locale.ROOT),
                    i -> speed.writer.writeSheets(
                            List.of(speed.page(i), speed.page((i + 1) % MEASURED)), CardPaper.A6, sheet, speed.now(i)));
        }
        String report = head() + speed.table;
        Path file = Path.of("reports", "card-speed.md");
        Files.createDirectories(file.getParent());
        Files.writeString(file, report);
        PrintStream screen = System.out;
        screen.println(report);
        screen.println("Written to " + file + ".");
    }

    private void measure(String what, IntFunction<byte[]> card) {
        for (int i = 0; i < WARM_UP; i++) {
            if (card.apply(MEASURED + i).length == 0) {
                throw new AssertionError("an empty file for " + what);
            }
        }
        double all = 0;
        double longest = 0;
        double bytes = 0;
        double largest = 0;
        for (int i = 0; i < MEASURED; i++) {
            long begun = System.nanoTime();
            int size = card.apply(i).length;
            double millis = (System.nanoTime() - begun) / NANOS_PER_MILLI;
            all += millis;
            longest = Math.max(longest, millis);
            bytes += size;
            largest = Math.max(largest, size);
        }
        table.append(String.format(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %.1f |%n",
                what,
                all / MEASURED,
                longest,
                bytes / MEASURED / KILOBYTE,
                largest / KILOBYTE));
    }

    private CalfPage page(int calf) {
        return CardContents.of(
                calves.get(calf), herd, now(calf), MESSAGES, SimulatedHerd.ZONE, "", Print.next(calves.get(calf)));
    }

    /** Any hour of its first two days. */
    private Instant now(int calf) {
        return calves.get(calf).bornAbout().orElse(FROM).plus(Duration.ofMinutes(5 + calf * 37L % 2880));
    }

    private static String head() throws IOException, InterruptedException {
        return "# How fast a card is\n\n"
                + "Made by `mvn -B -Pbench-card process-test-classes` on " + LocalDate.now(Clock.systemUTC())
                + " from commit " + Commit.described() + ", on a machine of "
                + Runtime.getRuntime().availableProcessors() + " cores, with Java "
                + System.getProperty("java.version") + ". "
                + String.format(
                        Locale.ROOT,
                        "When it ended, %.1f programs were running or waiting for a core: with more than there are"
                                + " cores the figures are too high.%n%n",
                        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage())
                + "From the calf's record in memory to the bytes of the file, of " + MEASURED
                + " calves of an invented herd at any hour of their first two days, after " + WARM_UP
                + " others. Goal: under 100 ms and under 60 kB.\n\n";
    }
}
