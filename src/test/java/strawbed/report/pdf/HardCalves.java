package strawbed.report.pdf;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.card.CardContents;
import strawbed.card.Print;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.report.CalfPage;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/**
 * A thousand calves of whom it is hard to make a card: those of an invented herd, at any hour of their first days, and
 * odd ones, of whom nothing is known or too much, with names in place of numbers. The same each time.
 */
final class HardCalves {
    static final int COUNT = 1000;

    private static final int OF_THE_HERD = 600;
    private static final Instant FROM = Instant.parse("2026-01-05T06:00:00Z");

    private static final List<String> NAMES = List.of(
            "7",
            "12",
            "000",
            "888",
            "4127",
            "10417",
            "Bartholomea-Wilhelmina-Constantia of the Long Meadow by Creek",
            "Q".repeat(60),
            "W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W",
            "Żółć-Gęślą Jaźń",
            "Łucja Świętosława",
            "Begoña Ñandú Güemes",
            "\u05d1\u05e8\u05db\u05d4 \u05e9\u05dc \u05d4\u05e8\u05e4\u05ea",
            "\u0639\u062c\u0644 \u0661\u0662\u0663",
            "\u202eabc\u202c 12",
            "\uD83D\uDC2E\u200D\u2764\uFE0F",
            "\u200b",
            "019bb5c0-0000-7000-8000-00000000002a",
            "a/b\\c:d*?\"<>|");

    private HardCalves() {}

    /** What is printed of each, in English. */
    static List<CalfPage> pages() {
        return pages(new Messages(Locale.US));
    }

    static List<CalfPage> pages(Messages messages) {
        List<CalfPage> pages = new ArrayList<>(ofTheHerd(messages));
        for (int seed = pages.size(); seed < COUNT; seed++) {
            pages.add(odd(new Random(seed), messages));
        }
        return pages;
    }

    /** Those with plain numbers. */
    static List<CalfPage> ofTheHerd(Messages messages) {
        Herd herd = Herd.of(new SimulatedHerd(OF_THE_HERD, 30, FROM, 11).rest());
        List<CalfRecord> calves = herd.calves().subList(0, OF_THE_HERD);
        List<CalfPage> pages = new ArrayList<>();
        for (int i = 0; i < calves.size(); i++) {
            CalfRecord calf = calves.get(i);
            Instant now = calf.bornAbout().orElse(FROM).plus(Duration.ofMinutes(5 + i * 37L % 4000));
            pages.add(page(calf, herd, now, i % 3 == 0, messages));
        }
        return pages;
    }

    private static CalfPage odd(Random random, Messages messages) {
        Told told = new Told();
        told.open("A", "02:00", maybe(random, HardCalves::name), maybe(random, HardCalves::name));
        if (random.nextInt(3) == 0) {
            together(random, told);
        }
        int events = List.of(0, 3, 12, 80).get(random.nextInt(4));
        for (int i = 0; i < events; i++) {
            told.a(time(random), event(random));
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            told.a(time(random), new Event.CardPrinted(99 + i, Term.Printout.HUTCH_CARD, Term.CardSize.A6));
        }
        if (random.nextInt(4) == 0) {
            told.a("30:00", new Event.CalfDied(Told.time(time(random)), any(random, Term.DeathTime.values())));
        }
        return page(told.record(), told.herd(), Told.time(time(random)), random.nextBoolean(), messages);
    }

    private static CalfPage page(CalfRecord calf, Herd herd, Instant now, boolean isCopy, Messages messages) {
        Print print = isCopy ? Print.COPY : Print.next(calf);
        String farm = isCopy ? NAMES.get(6) : "";
        return CardContents.of(calf, herd, now, messages, ZoneOffset.UTC, farm, print);
    }

    /** Two to five of one cow. */
    private static void together(Random random, Told told) {
        int count = 2 + random.nextInt(4);
        for (int i = 1; i < count; i++) {
            String other = "other " + i;
            told.open(other, "02:10", name(random), "88");
            told.of(
                    other,
                    "02:10",
                    new Event.CalfBorn(Told.at("02:05")),
                    new Event.SexNoted(any(random, Term.Sex.values())),
                    new Event.DamNoted("88", null));
        }
        told.a("02:10", new Event.DamNoted("88", 7), new Event.TwinNoted(name(random), count));
    }

    private static String name(Random random) {
        return NAMES.get(random.nextInt(NAMES.size()));
    }

    private static String time(Random random) {
        return random.nextInt(2, 48) + ":" + random.nextInt(60);
    }

    private static Event event(Random random) {
        Instant at = Told.time(time(random));
        BigDecimal amount = BigDecimal.valueOf(random.nextInt(100_000), random.nextInt(5));
        List<Event> any = List.of(
                new Event.CalfBorn(random.nextBoolean() ? new When.At(at) : between(at)),
                new Event.CalfFound(random.nextBoolean() ? new When.At(at) : between(at)),
                new Event.SexNoted(any(random, Term.Sex.values())),
                new Event.BreedNoted(name(random)),
                new Event.CalvingEaseNoted(any(random, Term.CalvingEase.values()), null),
                new Event.PresentationNoted(any(random, Term.Presentation.values())),
                new Event.EarTagFitted(name(random), any(random, Term.TagScheme.values())),
                new Event.BreathingNoted(any(random, Term.Breathing.values())),
                new Event.LickingNoted(random.nextBoolean()),
                new Event.MilestoneReached(any(random, Term.Milestone.values())),
                new Event.SignNoted(any(random, Term.Sign.values()), name(random), maybe(random, HardCalves::name)),
                new Event.NavelDipped(any(random, Term.NavelAgent.values()), amount),
                new Event.NavelChecked(any(random, Term.NavelFinding.values())),
                new Event.TemperatureTaken(new Temperature(amount, any(random, TemperatureUnit.values()))),
                new Event.HeartRateCounted(random.nextInt(300)),
                new Event.CalfWeighed(
                        new Mass(amount, any(random, MassUnit.values())), any(random, Term.WeighingMethod.values())),
                new Event.SerumTested(any(random, Term.SerumMeasure.values()), amount, at),
                new Event.ColostrumTestedByBrix(amount),
                new Event.ColostrumFed(
                        new Volume(amount, any(random, VolumeUnit.values())),
                        any(random, Term.FeedingMethod.values()),
                        null),
                new Event.ColostrumLeft(new Volume(amount, any(random, VolumeUnit.values()))),
                new Event.DamNursed(),
                new Event.CalfMoved(name(random)),
                new Event.VetCalled(null));
        return any.get(random.nextInt(any.size()));
    }

    private static When between(Instant earliest) {
        return new When.Between(earliest, earliest.plus(Duration.ofHours(5)));
    }

    private static <T> @Nullable T maybe(Random random, Function<Random, T> value) {
        return random.nextInt(4) == 0 ? null : value.apply(random);
    }

    private static <T> T any(Random random, T[] list) {
        return list[random.nextInt(list.length)];
    }
}
