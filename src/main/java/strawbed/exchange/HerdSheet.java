package strawbed.exchange;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.care.ControlChart;
import strawbed.care.Figure;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Group;
import strawbed.care.HerdReport.Grouping;
import strawbed.care.Share;

/** The herd's report as CSV: a row for each measure of the herd and of each part of it. */
public final class HerdSheet {
    private static final List<String> COLUMNS = List.of(
            "first_day",
            "last_day",
            "parted_by",
            "part",
            "born",
            "measure",
            "count",
            "of",
            "not_known",
            "estimated_births",
            "percent",
            "low_95_percent",
            "high_95_percent",
            "centre_percent",
            "lower_limit_percent",
            "upper_limit_percent",
            "outside_limits");

    private final Sheet sheet;

    private HerdSheet(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Writes the reports below each other under one heading. */
    public static void write(List<HerdReport> reports, Appendable out) throws IOException {
        HerdSheet rows = new HerdSheet(new Sheet(COLUMNS, out));
        for (HerdReport report : reports) {
            rows.write(report);
        }
    }

    private void write(HerdReport report) throws IOException {
        for (Map.Entry<HerdMeasure, Figure> figure : report.figures().entrySet()) {
            sheet.write(row(report, null, null, report.born(), figure.getKey(), figure.getValue()));
        }
        for (Map.Entry<Grouping, List<Group>> grouping : report.groups().entrySet()) {
            for (int place = 0; place < grouping.getValue().size(); place++) {
                write(report, grouping.getKey(), grouping.getValue().get(place), place);
            }
        }
    }

    private void write(HerdReport report, Grouping grouping, Group group, int place) throws IOException {
        for (Map.Entry<HerdMeasure, Figure> figure : group.figures().entrySet()) {
            Sheet.Row row = row(report, grouping, group.key(), group.born(), figure.getKey(), figure.getValue());
            if (grouping == Grouping.WEEK) {
                chart(row, Objects.requireNonNull(report.charts().get(figure.getKey())), place);
            }
            sheet.write(row);
        }
    }

    private Sheet.Row row(
            HerdReport report,
            @Nullable Grouping grouping,
            @Nullable Object part,
            int born,
            HerdMeasure measure,
            Figure figure) {
        Optional<Share> share = figure.share().value();
        return sheet.row()
                .text("first_day", report.days().first().toString())
                .text("last_day", report.days().last().toString())
                .text("parted_by", grouping == null ? "all" : word(grouping))
                .text("part", part == null ? "all" : word(part))
                .number("born", born)
                .text("measure", word(measure))
                .number("count", figure.count())
                .number("of", figure.of())
                .number("not_known", figure.unknown())
                .number("estimated_births", figure.flagged())
                .number("percent", share.map(known -> known.percent(1)).orElse(null))
                .number(
                        "low_95_percent",
                        share.map(known -> known.interval().lowPercent()).orElse(null))
                .number(
                        "high_95_percent",
                        share.map(known -> known.interval().highPercent()).orElse(null));
    }

    private static void chart(Sheet.Row row, ControlChart chart, int place) {
        for (ControlChart.Point point : chart.points()) {
            if (point.place() == place) {
                row.number("centre_percent", percent(chart.centre()))
                        .number("lower_limit_percent", percent(point.low()))
                        .number("upper_limit_percent", percent(point.high()))
                        .text("outside_limits", point.isOutside() ? "yes" : "no");
            }
        }
    }

    private static BigDecimal percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP);
    }

    private static String word(Object key) {
        return key.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
