package strawbed.herd;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import strawbed.calf.Herd;
import strawbed.care.Farm;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Days;
import strawbed.report.HerdPaper;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/** Reports of invented herds, for tests of what is made of them. */
public final class HerdPapers {
    private static final Instant FROM = Instant.parse("2026-01-05T06:00:00Z");
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 20);

    private HerdPapers() {}

    /** When they are printed. */
    public static Instant printedAt() {
        return FROM.plus(Duration.ofDays(400));
    }

    /** Of a herd with so many births a day, in the second of two periods of so many days. */
    public static HerdPaper of(double aDay, int days, long seed) {
        Herd herd = Herd.of(new SimulatedHerd((int) Math.ceil(aDay * (2 * days + 30)), aDay, FROM, seed).rest());
        return of(herd, new Days(FIRST.plusDays(days), FIRST.plusDays(2L * days - 1)));
    }

    /** With the period before it, and a farm of a long name. */
    public static HerdPaper of(Herd herd, Days days) {
        long length = days.last().toEpochDay() - days.first().toEpochDay() + 1;
        Days before = new Days(days.first().minusDays(length), days.first().minusDays(1));
        return HerdContents.of(
                report(herd, days),
                Optional.of(report(herd, before)),
                7,
                printedAt(),
                new Messages(Locale.US),
                SimulatedHerd.ZONE,
                "Begoña Muñoz y Łucja Żółć-Gęślą, Three Oaks Dairy at the Long Lane End of Nowhere");
    }

    private static HerdReport report(Herd herd, Days days) {
        return HerdReport.of(herd, Farm.of(herd), days, SimulatedHerd.ZONE, printedAt());
    }
}
