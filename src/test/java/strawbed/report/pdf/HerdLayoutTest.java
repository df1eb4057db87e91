package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.herd.HerdPapers;
import strawbed.report.HerdPaper;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdLayoutTest {
    private static final Type TYPE = Type.open();
    private static final double MARGIN = 16;
    /** Half of the thinnest line. */
    private static final double EDGE = 0.15;

    /** From a farm with a calf a week to one with forty a day, periods from a day to a year. */
    private static final List<HerdPaper> PAPERS = List.of(
            HerdPapers.of(0.15, 30, 1),
            HerdPapers.of(0.5, 1, 2),
            HerdPapers.of(1, 30, 3),
            HerdPapers.of(2, 14, 4),
            HerdPapers.of(3, 90, 5),
            HerdPapers.of(1, 365, 6),
            HerdPapers.of(40, 7, 7));

    @AfterAll
    static void close_the_fonts() throws IOException {
        TYPE.close();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_leaves_the_margins(SheetPaper paper) {
        for (List<Drawn> page : pages(paper)) {
            assertThat(page).allSatisfy(thing -> {
                Box box = thing.box();
                assertThat(box.x()).isGreaterThanOrEqualTo(MARGIN - EDGE);
                assertThat(box.y()).isGreaterThanOrEqualTo(MARGIN - EDGE);
                assertThat(box.right()).isLessThanOrEqualTo(paper.width() - MARGIN + EDGE);
                assertThat(box.bottom()).isLessThanOrEqualTo(paper.height() - MARGIN + EDGE);
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void no_words_lie_on_others_or_on_a_bar(SheetPaper paper) {
        for (List<Drawn> page : pages(paper)) {
            List<Drawn> things = page.stream()
                    .filter(thing -> thing instanceof Drawn.Words || thing instanceof Drawn.Bar)
                    .toList();
            for (int i = 0; i < things.size(); i++) {
                for (int j = i + 1; j < things.size(); j++) {
                    if (Ink.overlap(things.get(i).box(), things.get(j).box())) {
                        throw new AssertionError(things.get(i) + " lies on " + things.get(j));
                    }
                }
            }
        }
    }

    /** At a desk: capitals of 2.2 mm are 16 arc-minutes at 0.47 m (ISO 9241-3 as quoted in ergonomics guides). */
    @ParameterizedTest
    @EnumSource
    void no_words_are_too_small_and_no_bar_too_thin(SheetPaper paper) {
        for (List<Drawn> page : pages(paper)) {
            assertThat(page).allSatisfy(thing -> {
                if (thing instanceof Drawn.Words words) {
                    assertThat(words.capHeight()).isGreaterThanOrEqualTo(2.2);
                } else if (thing instanceof Drawn.Bar bar) {
                    assertThat(bar.box().height()).as("%s", bar).isGreaterThan(0.01);
                }
            });
        }
    }

    private static List<List<Drawn>> pages(SheetPaper paper) {
        List<List<Drawn>> pages = new ArrayList<>();
        PAPERS.forEach(each -> pages.addAll(HerdLayout.of(TYPE, each, paper)));
        assertThat(pages).hasSizeGreaterThan(PAPERS.size());
        return pages;
    }
}
