package strawbed.herd;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.care.Farm;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Days;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.report.Chapter;
import strawbed.report.Chart;
import strawbed.report.Exhibit;
import strawbed.report.Exhibit.FigureRow;
import strawbed.report.Exhibit.Graph;
import strawbed.report.HerdPaper;
import strawbed.text.Messages;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdContentsTest {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final Days MARCH = new Days(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31));

    private static HerdPaper paper(Herd herd, int unconfirmed) {
        Instant now = Told.time("400:00");
        HerdReport report = HerdReport.of(herd, Farm.of(herd), MARCH, BARN, now);
        return HerdContents.of(report, Optional.empty(), unconfirmed, now, new Messages(Locale.US), BARN, "");
    }

    private static FigureRow row(HerdPaper paper, String label) {
        return exhibits(paper)
                .filter(Exhibit.Figures.class::isInstance)
                .flatMap(figures -> ((Exhibit.Figures) figures).rows().stream())
                .filter(row -> row.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Exhibit> exhibits(HerdPaper paper) {
        return paper.chapters().stream().flatMap(chapter -> chapter.exhibits().stream());
    }

    private static List<Graph> graphs(HerdPaper paper) {
        return exhibits(paper)
                .filter(Graph.class::isInstance)
                .map(Graph.class::cast)
                .toList();
    }

    /** So many calves, fed so many hours after birth. */
    private static Told fed(Told told, String name, int calves, int hours) {
        for (int i = 0; i < calves; i++) {
            String calf = name + i;
            told.open(calf, "12:00", String.valueOf(100 + i), null)
                    .of(calf, "12:00", new Event.CalfBorn(Told.at("12:00")))
                    .of(
                            calf,
                            12 + hours + ":00",
                            new Event.ColostrumFed(
                                    new Volume(java.math.BigDecimal.valueOf(3), VolumeUnit.QUART),
                                    Term.FeedingMethod.BOTTLE,
                                    null));
        }
        return told;
    }

    /** The worked example of the trade facts: 37 of 41 are 90.2 %; the interval is that of a reference library. */
    @Test
    void a_figure_tells_its_share_its_counts_its_interval_and_what_is_not_known() {
        Told told = fed(fed(new Told(), "A", 37, 2), "B", 4, 5);
        for (String calf : List.of("X", "Y", "Z")) {
            told.open(calf, "12:00", null, "77").of(calf, "12:00", new Event.CalfBorn(Told.at("12:00")));
        }
        FigureRow row = row(paper(told.herd(), 0), "First fed within 4 h");
        assertThat(row.value()).isEqualTo("90.2 %");
        assertThat(row.counts()).isEqualTo("37 of 41 (77.5 to 96.1 %); 3 not known");
        assertThat(row.range().orElseThrow().share()).isBetween(90.2, 90.3);
        assertThat(row.definition()).isNotBlank();
    }

    /** Fewer than ten are counts only: common practice, no published source. */
    @Test
    void few_calves_have_counts_and_no_share() {
        FigureRow row = row(paper(fed(new Told(), "A", 7, 2).herd(), 0), "First fed within 4 h");
        assertThat(row.value()).isEqualTo("7 of 7");
        assertThat(row.counts()).isEmpty();
        assertThat(row.range()).isEmpty();
        FigureRow unknown = row(paper(fed(new Told(), "A", 7, 2).herd(), 0), "Colostrum good by Brix");
        assertThat(unknown.value()).isEqualTo("none known");
        assertThat(unknown.counts()).isEqualTo("7 not known");
    }

    /**
     * Stillborn or dead within 48 h: 6.5 % in 2007, Utah State University Extension 2010. Twins: 96,069 of 2,304,278
     * calvings, Silva del Rio 2007, J Dairy Sci 90:1255, are 192,138 of 2,400,347 calves.
     */
    @Test
    void published_shares_stand_beside_the_figures_with_their_source() {
        HerdPaper paper = paper(fed(new Told(), "A", 12, 2).herd(), 0);
        assertThat(row(paper, "Stillborn").benchmark()).contains("6.5 %", "Utah State University Extension 2010");
        assertThat(row(paper, "Stillborn").range().orElseThrow().compared()).hasValue(6.5);
        assertThat(100.0 * 192_138 / 2_400_347).isBetween(7.95, 8.05);
        assertThat(row(paper, "Twins").range().orElseThrow().compared()).hasValue(8.0);
        assertThat(row(paper, "Twins").benchmark()).contains("8 %", "Silva del Rio 2007");
        assertThat(row(paper, "Colostrum good by Brix").benchmark()).isEmpty();
    }

    @Test
    void first_feeds_are_drawn_by_the_hour_with_their_shares() {
        Chart.Bars bars = (Chart.Bars) graphs(
                        paper(fed(fed(new Told(), "A", 9, 1), "B", 3, 20).herd(), 0))
                .get(0)
                .chart();
        assertThat(bars.counts()).hasSize(13).startsWith(0, 9, 0).endsWith(3);
        assertThat(bars.edges()).startsWith("0", "1").endsWith("12", "more");
        assertThat(bars.lines()).extracting(Chart.Line::label).containsExactly("75.0 %", "75.0 %", "75.0 %", "75.0 %");
        assertThat(bars.inWords()).isEqualTo("hours after birth: 1 to 2: 9; 12 to more: 3");
    }

    @Test
    void a_period_without_births_is_one_sentence_and_the_statements_left_open() {
        HerdPaper paper = paper(Herd.of(List.of()), 3);
        assertThat(paper.chapters())
                .extracting(Chapter::title)
                .containsExactly("0 calves born", "How complete the record is");
        assertThat(exhibits(paper)
                        .map(exhibit -> ((Exhibit.Lines) exhibit).lines().get(0)))
                .containsExactly(
                        "No calf was born in this period.", "Statements of the period that nobody confirmed: 3.");
    }

    @Test
    void one_week_is_held_against_nothing_and_what_nobody_recorded_has_no_picture() {
        Herd herd = new Told()
                .open("A", "12:00", "12", null)
                .of("A", "12:00", new Event.CalfBorn(Told.at("12:00")))
                .herd();
        HerdPaper paper = paper(herd, 0);
        assertThat(paper.chapters()).extracting(Chapter::title).contains("1 calf born", "Calf by calf", "Week by week");
        assertThat(graphs(paper)).isEmpty();
    }

    @Test
    void weeks_outside_of_chance_are_marked_in_the_pictures_as_in_the_figures() {
        HerdPaper paper = HerdPapers.of(8, 60, 17);
        List<Graph> weeks = graphs(paper).stream()
                .filter(graph -> graph.chart() instanceof Chart.Weeks)
                .toList();
        assertThat(weeks).hasSize(8);
        assertThat(weeks).allSatisfy(graph -> {
            Chart.Weeks chart = (Chart.Weeks) graph.chart();
            assertThat(chart.weeks()).hasSizeBetween(9, 10);
            assertThat(chart.weeks()).allSatisfy(week -> {
                double share = week.share().orElseThrow();
                assertThat(week.isOutside()).isEqualTo(share < week.low() - 1e-3 || share > week.high() + 1e-3);
            });
        });
    }
}
