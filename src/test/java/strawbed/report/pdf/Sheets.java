package strawbed.report.pdf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import strawbed.report.Fact;
import strawbed.report.HandoverSheet;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.report.ToDo;

/** Invented handover sheets of an invented farm. */
final class Sheets {
    static final Instant PRINTED = Instant.parse("2026-11-24T11:30:00Z");

    private static final List<String> NAMES = List.of(
            "Begoña Muñoz",
            "Łucja Żółć-Gęślą",
            "Zoë Groß-Äußerung",
            "\u05d1\u05e8\u05db\u05d4",
            "Bartholomea-Wilhelmina-Constantia of the Long Meadow by Creek",
            "Q".repeat(60),
            "w",
            "calf 212",
            "second calf of cow 4170");

    private Sheets() {}

    static HandoverSheet empty() {
        return sheet("not recorded", List.of(section("Late or missed"), section("Due by 17:30"), section("Colostrum")));
    }

    static HandoverSheet typical() {
        return sheet(
                "Begoña Muñoz, Łucja Żółć-Gęślą",
                List.of(
                        section(
                                "Late or missed",
                                SheetEntry.toDo(
                                        "calf 313",
                                        List.of(new ToDo("check breathing again", "LATE by 35 min, since 04:55")),
                                        "Asked for by: gasping, 04:40."),
                                SheetEntry.told("calf 312", "MISSED", "check temperature and suck (was due 03:10)")),
                        section(
                                "Due by 17:30",
                                SheetEntry.toDo(
                                        "calf 312",
                                        List.of(
                                                new ToDo("2nd colostrum", "08:55–14:55"),
                                                new ToDo("dip navel", "by 09:10")),
                                        ""),
                                SheetEntry.toDo("calf 314", List.of(new ToDo("1st colostrum", "by 10:20")), "")),
                        section("Born or lost", SheetEntry.told("calf 314", "05:20", "heifer, dam 417. Birth: easy.")),
                        section("Colostrum", SheetEntry.told("batch 9", "", "3 quarts left; keeps until Wed 05:10")),
                        section("Mind", SheetEntry.warning("Cow with calf: a barrier first.", "calf 312, calf 314"))));
    }

    /** A night of so many calves, each born, each with two tasks. */
    static HandoverSheet ofCalves(int count) {
        List<SheetEntry> due = new ArrayList<>();
        List<SheetEntry> born = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String calf = "calf " + (301 + i);
            if (i % 3 == 0) {
                due.add(SheetEntry.toDo(
                        calf, List.of(new ToDo("2nd colostrum", "by 09:10"), new ToDo("tag", "by 09:40")), ""));
            }
            born.add(SheetEntry.told(calf, "02:10", "heifer, dam " + (500 + i) + ". Birth: unassisted."));
        }
        return sheet(
                "Ana", List.of(new SheetSection("Due by 17:30", "Due by 17:30, continued", due, "none"), born(born)));
    }

    private static SheetSection born(List<SheetEntry> born) {
        return new SheetSection("Born or lost", "Born or lost, continued", born, "none");
    }

    /** One entry of more words than a page holds. */
    static HandoverSheet endless() {
        String words = String.join(" ", Collections.nCopies(1500, "straw"));
        return sheet("Ana", List.of(section("Not confirmed", SheetEntry.told("05:20", "", words + " end"))));
    }

    static HandoverSheet random(long seed) {
        Random random = new Random(seed);
        List<SheetSection> sections = new ArrayList<>();
        times(random, 8, () -> {
            List<SheetEntry> entries = new ArrayList<>();
            times(random, 14, () -> entries.add(entry(random)));
            String title = any(random);
            sections.add(new SheetSection(title, title + ", continued", entries, "none"));
        });
        return new HandoverSheet(
                any(random),
                random.nextBoolean() ? "" : any(random),
                any(random),
                any(random),
                (page, pages) -> "page " + page + " of " + pages,
                List.of(new Fact("Recorded by", any(random))),
                sections,
                List.of(any(random), any(random)),
                "en-US");
    }

    private static SheetEntry entry(Random random) {
        if (random.nextInt(5) == 0) {
            return SheetEntry.warning(words(random, 12), words(random, 12));
        }
        List<ToDo> toDos = new ArrayList<>();
        times(random, 7, () -> toDos.add(new ToDo(words(random, 2), random.nextBoolean() ? "by 14:02" : "")));
        return new SheetEntry(
                random.nextBoolean() ? "" : any(random),
                toDos,
                random.nextBoolean() ? "" : any(random),
                words(random, 30),
                false);
    }

    static HandoverSheet sheet(String operators, List<SheetSection> sections) {
        return new HandoverSheet(
                "Handover",
                "Willow Bend Dairy",
                "Mon 23 Nov 17:30 to Tue 24 Nov 05:30",
                "Printed Tue 24 Nov 05:30",
                (page, pages) -> "page " + page + " of " + pages,
                List.of(new Fact("Recorded by", operators)),
                sections,
                List.of("Handed over by", "Taken over by"),
                "en-US");
    }

    static SheetSection section(String title, SheetEntry... entries) {
        return new SheetSection(title, title + ", continued", List.of(entries), "none");
    }

    private static String words(Random random, int most) {
        return String.join(" ", Collections.nCopies(1 + random.nextInt(most), any(random)));
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
