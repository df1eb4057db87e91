package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.report.CalfPage;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CardLayoutTest {
    private static final Type TYPE = Type.open();
    private static final int RANDOM_CARDS = 200;
    private static final Map<CardPaper, List<Layout>> MANY =
            Arrays.stream(CardPaper.values()).collect(Collectors.toMap(paper -> paper, CardLayoutTest::many));

    @AfterAll
    static void close_the_fonts() throws IOException {
        TYPE.close();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_leaves_the_margins(CardPaper paper) {
        forManyCards(paper, layout -> {
            for (Drawn thing : layout.things()) {
                Box box = thing.box();
                assertThat(box.x()).as(() -> layout.of(thing)).isGreaterThanOrEqualTo(5 - Ink.ROUNDING);
                assertThat(box.y()).as(() -> layout.of(thing)).isGreaterThanOrEqualTo(5 - Ink.ROUNDING);
                assertThat(box.right())
                        .as(() -> layout.of(thing))
                        .isLessThanOrEqualTo(paper.width() - 5 + Ink.ROUNDING);
                assertThat(box.bottom())
                        .as(() -> layout.of(thing))
                        .isLessThanOrEqualTo(paper.height() - 5 + Ink.ROUNDING);
            }
        });
    }

    @ParameterizedTest
    @EnumSource
    void nothing_overlaps(CardPaper paper) {
        forManyCards(paper, layout -> {
            List<Drawn> things = layout.things();
            for (int i = 0; i < things.size(); i++) {
                for (int j = i + 1; j < things.size(); j++) {
                    if (Ink.overlap(things.get(i).box(), things.get(j).box())) {
                        throw new AssertionError(layout.of(things.get(i)) + " lies on " + things.get(j));
                    }
                }
            }
        });
    }

    /** ISO/IEC 18004 asks for a white border of four modules on every side. */
    @ParameterizedTest
    @EnumSource
    void the_square_code_keeps_its_white_border(CardPaper paper) {
        forManyCards(paper, layout -> {
            Drawn.Code code = layout.things().stream()
                    .filter(Drawn.Code.class::isInstance)
                    .map(Drawn.Code.class::cast)
                    .findAny()
                    .orElseThrow();
            double border = 4 * code.box().width() / code.code().modules();
            Box white = new Box(
                    code.box().x() - border,
                    code.box().y() - border,
                    code.box().width() + 2 * border,
                    code.box().height() + 2 * border);
            for (Drawn thing : layout.things()) {
                if (thing != code && Ink.overlap(white, thing.box())) {
                    throw new AssertionError(layout.of(thing) + " lies in the border of the code");
                }
            }
            assertThat(code.box().width()).isBetween(20.0, 25.0);
        });
    }

    /** The least height is our own choice: 2.6 mm is 16 arc-minutes (ISO 9241-3 as quoted) at 0.56 m. */
    @ParameterizedTest
    @EnumSource
    void no_text_is_too_small_to_read(CardPaper paper) {
        forManyCards(paper, layout -> {
            for (Drawn thing : layout.things()) {
                if (thing instanceof Drawn.Words words) {
                    assertThat(words.capHeight()).as(() -> layout.of(words)).isGreaterThanOrEqualTo(2.6);
                }
            }
        });
    }

    /** Boxes to be ticked with gloves on: common practice, no published source. */
    @ParameterizedTest
    @EnumSource
    void boxes_to_tick_are_at_least_six_millimetres(CardPaper paper) {
        forManyCards(paper, layout -> {
            for (Drawn thing : layout.things()) {
                if (thing instanceof Drawn.Sign sign && sign.form() == Form.TICK_BOX) {
                    assertThat(sign.box().width()).isGreaterThanOrEqualTo(6);
                    assertThat(sign.box().height()).isGreaterThanOrEqualTo(6);
                }
            }
        });
    }

    /** ISO 9241-3 as quoted: 16 arc-minutes, at 0.7 m 3.26 mm. */
    @Test
    void a_typical_card_holds_every_task_in_letters_for_arms_length() {
        for (CardPaper paper : CardPaper.values()) {
            Layout layout = Layout.of(Cards.typical(), paper, "typical");
            assertThat(layout.words()).contains("by 16:10", "by 19:10", "by 22:10", "Wed 25 Nov");
            assertThat(layout.signs(Form.TICK_BOX, Measures.TICK_BOX)).hasSize(4);
            assertThat(layout.word("by 22:10").capHeight()).isGreaterThanOrEqualTo(3.26);
            assertThat(layout.word("Dip the navel").capHeight()).isGreaterThanOrEqualTo(3.26);
            assertThat(layout.words()).doesNotContain("and 1 more");
            assertThat(layout.word("417").capHeight()).isGreaterThan(20);
        }
    }

    @Test
    void a_number_never_has_capitals_over_35_millimetres() {
        Layout layout = Layout.of(Cards.named("7"), CardPaper.A6, "7");
        assertThat(layout.word("7").capHeight()).isCloseTo(35, within(2.0)).isLessThanOrEqualTo(35);
    }

    /** 26 mm are 30 arc-minutes at 3 m; ISO 9241-3 as quoted calls 20 comfortable. */
    @Test
    void a_number_of_three_digits_is_read_from_three_metres_on_an_upright_card() {
        for (CardPaper paper : List.of(CardPaper.FOUR_BY_SIX_INCH_UPRIGHT, CardPaper.A6_UPRIGHT)) {
            for (int number = 0; number < 1000; number++) {
                String text = String.format("%03d", number);
                assertThat(Layout.of(Cards.named(text), paper, text).word(text).capHeight())
                        .as(text + " on " + paper)
                        .isGreaterThanOrEqualTo(26);
            }
        }
    }

    @Test
    void a_record_sheet_has_no_box_to_tick_and_no_timeline() {
        for (CardPaper paper : CardPaper.values()) {
            Layout layout = Layout.of(Cards.dead(), paper, "dead");
            assertThat(layout.signs(Form.TICK_BOX, Measures.TICK_BOX)).isEmpty();
            assertThat(String.join(" ", layout.words()))
                    .contains("417", "DEAD", "Tue 24 Nov 05:40, told 05:42", "02:55 fed 3 quarts by bottle")
                    .contains("HEIFER, Twin of 418")
                    .doesNotContain("FEED", "done", "planned", "Nothing more to do is listed.");
        }
    }

    /** Plain printers leave up to 6 mm white: common practice, no published source. */
    @ParameterizedTest
    @EnumSource
    void two_cards_lie_on_a_sheet_in_true_size_with_marks_outside_their_corners(SheetPaper sheet) {
        for (CardPaper paper : List.of(CardPaper.FOUR_BY_SIX_INCH, CardPaper.A6)) {
            List<Drawn> card = PdfCardWriter.lay(TYPE, Cards.typical(), paper, Cards.PRINTED);
            List<List<Drawn>> sheets = TwoUpLayout.of(List.of(card, card, card), paper, sheet);
            assertThat(sheets).hasSize(2);
            assertThat(sheets.get(0)).hasSize(2 * (card.size() + 8));
            assertThat(sheets.get(1)).hasSize(card.size() + 8);
            Box first = sheets.get(0).get(0).box();
            Box own = card.get(0).box();
            Box whole = new Box(first.x() - own.x(), first.y() - own.y(), paper.width(), paper.height());
            Box second = sheets.get(0).get(card.size() + 8).box();
            Box below = new Box(whole.x(), second.y() - own.y(), paper.width(), paper.height());
            assertThat(Ink.overlap(whole, below)).isFalse();
            List<Drawn> marks = sheets.get(0).subList(card.size(), card.size() + 8);
            for (Drawn mark : marks) {
                Box near = new Box(
                        mark.box().x() - 0.3,
                        mark.box().y() - 0.3,
                        mark.box().width() + 0.6,
                        mark.box().height() + 0.6);
                assertThat(Ink.overlap(near, whole) || Ink.overlap(near, below))
                        .as("a mark on the card: " + mark)
                        .isFalse();
            }
            assertThat(marks)
                    .filteredOn(mark -> Math.abs(mark.box().x() + mark.box().width() / 2 - whole.x()) < 0.01)
                    .as("marks in the line of the left edge")
                    .hasSize(2);
            for (Drawn thing : sheets.get(0)) {
                Box box = thing.box();
                assertThat(Math.min(box.x(), box.y())).isGreaterThanOrEqualTo(6);
                assertThat(box.right()).isLessThanOrEqualTo(sheet.width() - 6);
                assertThat(box.bottom()).isLessThanOrEqualTo(sheet.height() - 6);
            }
        }
    }

    @Test
    void a_longer_number_is_smaller() {
        double three =
                Layout.of(Cards.named("417"), CardPaper.A6, "417").word("417").capHeight();
        double five = Layout.of(Cards.named("10417"), CardPaper.A6, "10417")
                .word("10417")
                .capHeight();
        assertThat(five).isLessThan(three);
    }

    @Test
    void done_marks_are_black_and_planned_ones_are_outlines() {
        List<Drawn.Sign> feeds =
                Layout.of(Cards.typical(), CardPaper.A6, "typical").signs(Form.CIRCLE, Measures.MARK);
        assertThat(feeds).extracting(Drawn.Sign::filled).containsExactly(true, true, false);
    }

    @Test
    void marks_outside_the_day_point_outwards() {
        Layout layout = Layout.of(Cards.crowded(), CardPaper.A6, "crowded");
        assertThat(layout.signs(Form.ARROW_LEFT, LanePart.ARROW)).hasSize(1);
        assertThat(layout.signs(Form.ARROW_RIGHT, LanePart.ARROW)).hasSize(1);
    }

    @Test
    void a_crowded_card_says_how_much_it_leaves_out() {
        List<String> words = Layout.of(Cards.crowded(), CardPaper.FOUR_BY_SIX_INCH, "crowded")
                .words();
        long shown = words.stream().filter(word -> word.startsWith("by 1")).count();
        assertThat(words).contains("and " + (Cards.crowded().toDos().size() - shown) + " more");
    }

    @Test
    void what_was_not_recorded_says_so() {
        List<String> words = Layout.of(Cards.sparse(), CardPaper.A6, "sparse").words();
        assertThat(words).filteredOn("not recorded"::equals).hasSize(6);
        assertThat(words).contains("sex not recorded", "first seen", "Nothing more to do is listed.");
    }

    private static void forManyCards(CardPaper paper, Consumer<Layout> check) {
        Objects.requireNonNull(MANY.get(paper)).forEach(check);
    }

    private static List<Layout> many(CardPaper paper) {
        List<Layout> layouts = new ArrayList<>();
        layouts.add(Layout.of(Cards.typical(), paper, "typical"));
        layouts.add(Layout.of(Cards.sparse(), paper, "sparse"));
        layouts.add(Layout.of(Cards.crowded(), paper, "crowded"));
        layouts.add(Layout.of(Cards.dead(), paper, "dead"));
        for (long seed = 0; seed < RANDOM_CARDS; seed++) {
            layouts.add(Layout.of(Cards.randomPage(seed), paper, "seed " + seed));
        }
        return layouts;
    }

    private record Layout(List<Drawn> things, String name) {
        static Layout of(CalfPage card, CardPaper paper, String name) {
            return new Layout(PdfCardWriter.lay(TYPE, card, paper, Cards.PRINTED), name + " on " + paper);
        }

        String of(Drawn thing) {
            return name + ": " + thing;
        }

        List<Drawn.Words> texts() {
            return things.stream()
                    .filter(Drawn.Words.class::isInstance)
                    .map(Drawn.Words.class::cast)
                    .toList();
        }

        List<String> words() {
            return texts().stream().map(Drawn.Words::text).toList();
        }

        Drawn.Words word(String text) {
            return texts().stream()
                    .filter(words -> words.text().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(name + " lacks " + text + ": " + words()));
        }

        List<Drawn.Sign> signs(Form form, double side) {
            return things.stream()
                    .filter(Drawn.Sign.class::isInstance)
                    .map(Drawn.Sign.class::cast)
                    .filter(sign -> sign.form() == form && sign.box().width() == side)
                    .toList();
        }
    }
}
