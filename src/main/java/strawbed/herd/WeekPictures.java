package strawbed.herd;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import strawbed.care.ControlChart;
import strawbed.care.Figure;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Group;
import strawbed.care.HerdReport.Grouping;
import strawbed.report.Chart;
import strawbed.report.Exhibit;

/** The weeks of each measure that work can change, as control charts; a single week has none. */
final class WeekPictures {
    private static final List<HerdMeasure> CHARTED = List.of(
            HerdMeasure.STILLBORN,
            HerdMeasure.ASSISTED,
            HerdMeasure.FED_WITHIN_4_HOURS,
            HerdMeasure.DOSE_ENOUGH,
            HerdMeasure.GOOD_BRIX,
            HerdMeasure.ANTIBODY_ENOUGH,
            HerdMeasure.DIPPED_IN_TIME,
            HerdMeasure.DIPPED_AROUND_FEEDS);
    private static final int LEAST = 2;

    private final Wordings words;
    private final HerdReport report;

    WeekPictures(Wordings words, HerdReport report) {
        this.words = words;
        this.report = report;
    }

    List<Exhibit> all() {
        List<Exhibit> pictures = new ArrayList<>();
        for (HerdMeasure measure : CHARTED) {
            ControlChart chart = Objects.requireNonNull(report.charts().get(measure));
            if (chart.points().size() >= LEAST) {
                pictures.add(picture(measure, chart));
            }
        }
        return pictures;
    }

    private Exhibit picture(HerdMeasure measure, ControlChart chart) {
        List<Group> groups = Objects.requireNonNull(report.groups().get(Grouping.WEEK));
        List<Chart.Week> weeks = new ArrayList<>();
        for (int place = 0; place < groups.size(); place++) {
            weeks.add(week(words.date((LocalDate) groups.get(place).key()), point(chart, place)));
        }
        Figure figure = Objects.requireNonNull(report.figures().get(measure));
        String inWords = words.list(weeks.stream()
                .filter(week -> week.share().isPresent())
                .map(week -> words.text(
                        HERD_PAPER_PICTURE_WEEK,
                        week.label(),
                        words.number(BigDecimal.valueOf(week.share().orElseThrow()), 1)))
                .toList());
        return new Exhibit.Graph(
                words.messages().word(measure),
                new Chart.Weeks(
                        weeks,
                        percent(chart.centre()),
                        words.text(
                                HERD_PAPER_WEEKS_CENTRE,
                                words.number(chart.centre().movePointRight(2), 1)),
                        inWords),
                words.text(HERD_PAPER_COUNTS, words.number(figure.count()), words.number(figure.of())));
    }

    private static Optional<ControlChart.Point> point(ControlChart chart, int place) {
        return chart.points().stream().filter(point -> point.place() == place).findFirst();
    }

    private static Chart.Week week(String label, Optional<ControlChart.Point> point) {
        return point.map(known -> new Chart.Week(
                        label,
                        OptionalDouble.of(
                                100.0 * known.share().count() / known.share().of()),
                        percent(known.low()),
                        percent(known.high()),
                        known.isOutside()))
                .orElseGet(() -> new Chart.Week(label, OptionalDouble.empty(), 0, 0, false));
    }

    private static double percent(BigDecimal share) {
        return share.movePointRight(2).doubleValue();
    }
}
