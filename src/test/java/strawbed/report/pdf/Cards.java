package strawbed.report.pdf;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import strawbed.report.CalfCard;
import strawbed.report.CalfHead;
import strawbed.report.CalfPage;
import strawbed.report.CardFoot;
import strawbed.report.Fact;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.RecordSheet;
import strawbed.report.Timeline;
import strawbed.report.ToDo;

/** Invented cards of an invented farm. */
final class Cards {
    static final Instant BIRTH = Instant.parse("2026-11-24T02:10:00Z");
    static final Instant PRINTED = BIRTH.plus(Duration.ofHours(10));
    static final UUID CALF = UUID.fromString("5f0c1a52-7d0e-4b8f-9c55-20b1c2d3e417");

    private static final DateTimeFormatter CLOCK =
            DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final List<MarkKind> KINDS = List.of(MarkKind.values());
    private static final List<String> NAMES = List.of(
            "Begoña",
            "Zoë Groß-Äußerung",
            "Łucja",
            "\u05d1\u05e8\u05db\u05d4",
            "\uD83D\uDC2E\u200D\u2764\uFE0F cow",
            "Bartholomea-Wilhelmina-Constantia of the Long Meadow by Creek",
            "Q".repeat(60),
            "w",
            "Ếlan ﬁne e\u0301",
            "212");

    private Cards() {}

    static CalfCard typical() {
        return new CalfCard(
                "Calf card 417",
                head("417", "HEIFER", "Tue 24 Nov 02:10", "212", "unassisted, forwards", Optional.of("Twin of 418")),
                List.of(
                        new Fact("Weight", "41 kg"),
                        new Fact("Tag", "0417"),
                        new Fact("Colostrum", "24.5 % Brix"),
                        new Fact("Fed", "3 qt (2.8 L)"),
                        new Fact("Time to first feed", "55 min after birth")),
                new Timeline(
                        BIRTH,
                        true,
                        List.of(
                                mark(MarkKind.FEED, 55, "3 qt", true),
                                mark(MarkKind.FEED, 9 * 60, "2 qt", true),
                                mark(MarkKind.FEED, 17 * 60, "2 qt", false),
                                mark(MarkKind.DIP, 20, "", true),
                                mark(MarkKind.DIP, 8 * 60, "", true),
                                mark(MarkKind.DIP, 20 * 60, "", false),
                                mark(MarkKind.CHECK, 125, "standing", true),
                                mark(MarkKind.CHECK, 14 * 60, "", false))),
                List.of(
                        new ToDo("Look at the calf", "by 16:10"),
                        new ToDo("Third feed, 2 qt", "by 19:10"),
                        new ToDo("Dip the navel", "by 22:10"),
                        new ToDo("Blood sample", "Wed 25 Nov")),
                List.of("Heifer twin to a bull: most are freemartins and will not breed. Test before rearing."),
                new CardFoot("Print 1, Tue 24 Nov 12:10", "", "protocol 1f2e3d4c", "Willow Bend Dairy"),
                new EnglishWords());
    }

    static CalfCard sparse() {
        return named("cow 306");
    }

    /** A calf of which nothing else was recorded. */
    static CalfCard named(String number) {
        return new CalfCard(
                "Calf card " + number,
                head(
                        number,
                        "sex not recorded",
                        "found 03:05, born between 02:00 and 03:05",
                        "306",
                        "not recorded",
                        Optional.empty()),
                List.of(
                        new Fact("Weight", ""),
                        new Fact("Tag", ""),
                        new Fact("Colostrum", ""),
                        new Fact("Fed", ""),
                        new Fact("Time to first feed", "")),
                new Timeline(BIRTH, false, List.of()),
                List.of(),
                List.of(),
                new CardFoot("Copy, Tue 24 Nov 03:20", "", "", "Willow Bend Dairy"),
                new EnglishWords());
    }

    static CalfCard crowded() {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            marks.add(mark(MarkKind.FEED, 45 + i * 115, "2 qt", i < 5));
            marks.add(mark(MarkKind.DIP, 10 + i * 70, "7 % iodine", i < 8));
            marks.add(mark(MarkKind.CHECK, -30 + i * 130, "lying", i < 5));
        }
        List<ToDo> toDos = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            toDos.add(new ToDo(i % 2 == 0 ? "Feed, 2 qt of colostrum" : "Dip the navel", "by 1" + i + ":10"));
        }
        return new CalfCard(
                "Calf card 10417",
                head(
                        "10417",
                        "BULL",
                        "found 03:05, born between 02:00 and 03:05",
                        "Begoña of the Long Meadow (212)",
                        "hard pull by two people, backwards, slow to breathe",
                        Optional.of("Twin of 418 and 419")),
                List.of(
                        new Fact("Weight", "not recorded"),
                        new Fact("Tag", "840 003 123 456 789"),
                        new Fact("Colostrum Brix", "18.0 % (poor)"),
                        new Fact("Fed", "2 qt (1.9 L)"),
                        new Fact("Time to first feed", "3 h 55 min after birth")),
                new Timeline(BIRTH, true, marks),
                toDos,
                List.of(
                        "Tube feeding only by trained staff.",
                        "Colostrum below 22 % Brix: ask the herd manager about a replacer.",
                        "The first feed was later than 2 hours after birth: watch this calf closely and call the vet"
                                + " if it does not stand."),
                new CardFoot(
                        "Print 12, Tue 24 Nov 12:10",
                        "in place of print 11, Mon 23:10",
                        "protocol 1f2e3d4c",
                        "Willow Bend Dairy"),
                new EnglishWords());
    }

    static RecordSheet dead() {
        List<Fact> recorded = new ArrayList<>();
        recorded.add(new Fact("02:12", "breathing well"));
        recorded.add(new Fact("02:30", "navel dipped with iodine 7 percent"));
        recorded.add(new Fact("02:55", "fed 3 quarts by bottle"));
        return new RecordSheet(
                "Record of calf 417",
                new CalfHead(
                        "417",
                        CALF,
                        12,
                        "DEAD",
                        Optional.of("HEIFER, Twin of 418"),
                        List.of(
                                new Fact("Died", "Tue 24 Nov 05:40, told 05:42"),
                                new Fact("Born", "Tue 24 Nov 02:10"),
                                new Fact("Dam", ""),
                                new Fact("Birth", "unassisted"))),
                recorded,
                List.of(new Fact("Tests", ""), new Fact("Weight", ""), new Fact("Tag", "0417")),
                new CardFoot("Print 2, Tue 24 Nov 06:00", "in place of print 1, 03:20", "", ""),
                new EnglishWords());
    }

    static CalfPage randomPage(long seed) {
        if (seed % 4 != 0) {
            return random(seed);
        }
        Random random = new Random(seed);
        CalfCard living = random(seed);
        List<Fact> recorded = new ArrayList<>();
        times(random, 80, () -> recorded.add(new Fact("0" + random.nextInt(10) + ":10", any(random))));
        List<Fact> lines = new ArrayList<>(living.head().lines());
        lines.add(0, new Fact("Died", any(random)));
        CalfHead head = living.head();
        return new RecordSheet(
                living.title(),
                new CalfHead(head.number(), head.id(), head.newestFact(), "DEAD", head.beside(), lines),
                recorded,
                living.facts(),
                living.foot(),
                living.words());
    }

    private static CalfHead head(
            String number, String sex, String born, String dam, String birth, Optional<String> twin) {
        return new CalfHead(number, CALF, 1234567, sex, twin, lines(born, dam, birth));
    }

    private static List<Fact> lines(String born, String dam, String birth) {
        return List.of(new Fact("Born", born), new Fact("Dam", dam), new Fact("Birth", birth));
    }

    static CalfCard random(long seed) {
        Random random = new Random(seed);
        List<Fact> facts = new ArrayList<>();
        times(random, 7, () -> facts.add(new Fact("Time to " + random.nextInt(100), any(random))));
        List<Mark> marks = new ArrayList<>();
        times(
                random,
                80,
                () -> marks.add(mark(
                        KINDS.get(random.nextInt(KINDS.size())),
                        random.nextInt(28 * 60) - 120,
                        random.nextBoolean() ? "" : any(random),
                        random.nextBoolean())));
        List<ToDo> toDos = new ArrayList<>();
        times(random, 12, () -> toDos.add(new ToDo(any(random), random.nextBoolean() ? "by 14:02" : "")));
        List<String> cautions = new ArrayList<>();
        times(
                random,
                6,
                () -> cautions.add(String.join(" ", Collections.nCopies(1 + random.nextInt(12), any(random)))));
        return new CalfCard(
                any(random),
                new CalfHead(
                        random.nextBoolean() ? String.valueOf(random.nextInt(100_000)) : any(random),
                        new UUID(random.nextLong(), random.nextLong()),
                        random.nextLong(1L << 40),
                        random.nextBoolean() ? "HEIFER" : any(random),
                        random.nextBoolean() ? Optional.empty() : Optional.of(any(random)),
                        lines(any(random), any(random), random.nextBoolean() ? "" : any(random))),
                facts,
                new Timeline(BIRTH.plusSeconds(random.nextInt(200_000) - 100_000), random.nextBoolean(), marks),
                toDos,
                cautions,
                new CardFoot(
                        any(random),
                        random.nextBoolean() ? "" : "in place of print 11, Mon 23:10",
                        random.nextBoolean() ? "" : "protocol 1f2e3d4c",
                        random.nextBoolean() ? "" : any(random)),
                new EnglishWords());
    }

    private static Mark mark(MarkKind kind, int minutes, String label, boolean done) {
        Duration after = Duration.ofMinutes(minutes);
        return new Mark(kind, after, CLOCK.format(BIRTH.plus(after)), label, done);
    }

    private static String any(Random random) {
        return NAMES.get(random.nextInt(NAMES.size()));
    }

    private static void times(Random random, int most, Runnable action) {
        int times = random.nextInt(most + 1);
        for (int i = 0; i < times; i++) {
            action.run();
        }
    }
}
