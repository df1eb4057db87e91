package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.report.HandoverSheet;
import strawbed.report.SheetEntry;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SheetLayoutTest {
    private static final Type TYPE = Type.open();
    private static final int RANDOM_SHEETS = 60;
    private static final double MARGIN = 16;

    @AfterAll
    static void close_the_fonts() throws IOException {
        TYPE.close();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_leaves_the_margins(SheetPaper paper) {
        forManyPages(paper, page -> {
            for (Drawn thing : page.things()) {
                Box box = thing.box();
                assertThat(box.x()).as(() -> page.of(thing)).isGreaterThanOrEqualTo(MARGIN - Ink.ROUNDING);
                assertThat(box.y()).as(() -> page.of(thing)).isGreaterThanOrEqualTo(MARGIN - Ink.ROUNDING);
                assertThat(box.right())
                        .as(() -> page.of(thing))
                        .isLessThanOrEqualTo(paper.width() - MARGIN + Ink.ROUNDING);
                assertThat(box.bottom())
                        .as(() -> page.of(thing))
                        .isLessThanOrEqualTo(paper.height() - MARGIN + Ink.ROUNDING);
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void nothing_overlaps(SheetPaper paper) {
        forManyPages(paper, page -> {
            List<Drawn> things = page.things();
            for (int i = 0; i < things.size(); i++) {
                for (int j = i + 1; j < things.size(); j++) {
                    if (Ink.overlap(things.get(i).box(), things.get(j).box())) {
                        throw new AssertionError(page.of(things.get(i)) + " lies on " + things.get(j));
                    }
                }
            }
        });
    }

    /** As on the card: 2.6 mm is 16 arc-minutes (ISO 9241-3 as quoted) at 0.56 m. Lines of 0.3 mm: our own choice. */
    @ParameterizedTest
    @EnumSource
    void no_text_is_too_small_to_read_and_no_line_too_thin(SheetPaper paper) {
        forManyPages(paper, page -> {
            for (Drawn thing : page.things()) {
                if (thing instanceof Drawn.Words words) {
                    assertThat(words.capHeight()).as(() -> page.of(words)).isGreaterThanOrEqualTo(2.6);
                } else if (thing instanceof Drawn.Bar bar) {
                    assertThat(bar.box().height()).isGreaterThanOrEqualTo(0.3);
                } else if (thing instanceof Drawn.Sign sign && sign.form() == Form.TICK_BOX) {
                    assertThat(sign.box().width()).isGreaterThanOrEqualTo(6);
                }
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void every_entry_is_printed_with_all_its_boxes(SheetPaper paper) {
        for (HandoverSheet sheet : sheets()) {
            List<Sheet> pages = pages(sheet, paper);
            String printed = squeezed(pages.stream().flatMap(page -> page.texts().stream()));
            List<SheetEntry> entries = sheet.sections().stream()
                    .flatMap(section -> section.entries().stream())
                    .toList();
            // Longer words are broken by what stands beside them.
            entries.stream()
                    .flatMap(entry -> Stream.of(entry.strong(), entry.text()))
                    .flatMap(words -> Stream.of(words.split(" ", -1)))
                    .map(word -> squeezed(Stream.of(TYPE.regular().printable(word))))
                    .filter(word -> word.length() < 15)
                    .forEach(word -> assertThat(printed).contains(word));
            int boxes = entries.stream().mapToInt(entry -> entry.toDos().size()).sum();
            assertThat(pages.stream().flatMap(page -> page.things().stream()))
                    .filteredOn(thing -> thing instanceof Drawn.Sign sign && sign.form() == Form.TICK_BOX)
                    .hasSize(boxes);
        }
    }

    @Test
    void a_typical_shift_fits_one_page_and_is_signed_at_its_foot() {
        List<Sheet> pages = pages(Sheets.typical(), SheetPaper.LETTER);
        assertThat(pages).hasSize(1);
        assertThat(pages.get(0).texts())
                .startsWith("Handover", "Willow Bend Dairy")
                .contains("page 1 of 1", "LATE by 35 min, since 04:55", "Begoña Muñoz, Łucja Żółć-Gęślą")
                .endsWith("Handed over by", "Taken over by");
    }

    @Test
    void an_empty_section_says_none() {
        assertThat(pages(Sheets.empty(), SheetPaper.A4).get(0).texts())
                .filteredOn("none"::equals)
                .hasSize(3);
    }

    @Test
    void forty_calves_go_on_to_a_second_page_under_the_same_head() {
        for (SheetPaper paper : SheetPaper.values()) {
            List<Sheet> pages = pages(Sheets.ofCalves(40), paper);
            assertThat(pages).hasSize(2);
            for (int i = 0; i < 2; i++) {
                assertThat(pages.get(i).texts())
                        .startsWith("Handover", "Willow Bend Dairy", "Mon 23 Nov 17:30 to Tue 24 Nov 05:30")
                        .contains("page " + (i + 1) + " of 2");
            }
            assertThat(pages.get(0).texts()).doesNotContain("Handed over by");
            assertThat(String.join(" ", pages.get(1).texts())).contains("Born or lost, continued", "Handed over by");
        }
    }

    @Test
    void an_entry_of_more_words_than_a_page_holds_goes_on_on_the_next() {
        List<Sheet> pages = pages(Sheets.endless(), SheetPaper.LETTER);
        assertThat(pages).hasSizeGreaterThan(1);
        String all = squeezed(pages.stream().flatMap(page -> page.texts().stream()));
        assertThat(all.split("straw", -1)).hasSize(1501);
        assertThat(all).contains("strawend");
    }

    private static void forManyPages(SheetPaper paper, Consumer<Sheet> check) {
        sheets().forEach(sheet -> pages(sheet, paper).forEach(check));
    }

    private static List<HandoverSheet> sheets() {
        List<HandoverSheet> sheets =
                new ArrayList<>(List.of(Sheets.empty(), Sheets.typical(), Sheets.ofCalves(40), Sheets.endless()));
        for (long seed = 0; seed < RANDOM_SHEETS; seed++) {
            sheets.add(Sheets.random(seed));
        }
        return sheets;
    }

    private static List<Sheet> pages(HandoverSheet sheet, SheetPaper paper) {
        return SheetLayout.of(TYPE, sheet, paper).stream()
                .map(things -> new Sheet(things, sheet.title() + " on " + paper))
                .toList();
    }

    private static String squeezed(Stream<String> words) {
        return String.join("", words.toList()).replace(" ", "");
    }

    private record Sheet(List<Drawn> things, String name) {
        String of(Drawn thing) {
            return name + ": " + thing;
        }

        List<String> texts() {
            return things.stream()
                    .filter(Drawn.Words.class::isInstance)
                    .map(thing -> ((Drawn.Words) thing).text())
                    .toList();
        }
    }
}
