package strawbed.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.care.ControlChart;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.HerdReport.Group;
import strawbed.care.HerdReport.Grouping;
import strawbed.protocol.Units;

/** The herd's report in words: sections of lines. Immutable, safe for any thread. */
public final class HerdReportPhrases {
    /** The measures that are told of each part of the herd: those that the work of a shift can change. */
    private static final List<HerdMeasure> OF_PARTS =
            List.of(HerdMeasure.FED_WITHIN_4_HOURS, HerdMeasure.DIPPED_IN_TIME, HerdMeasure.GOOD_BRIX);

    private final Messages messages;
    private final HerdPhrases phrases;
    private final Figures figures;

    /** @param zone the farm's */
    public HerdReportPhrases(Messages messages, ZoneId zone) {
        this.messages = messages;
        this.phrases = new HerdPhrases(messages, zone);
        this.figures = Figures.written(messages, zone, Units.AS_SPOKEN);
    }

    /** A part of the report with its title, in lines of a label and what is told. */
    public record Section(String title, List<Line> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line.
     *
     * @param label short; empty where a line goes on
     */
    public record Line(String label, String text) {}

    /** The title with its days, in the form of ISO 8601, so that nobody mistakes day and month. */
    public String title(HerdReport report) {
        HerdReport.Days days = report.days();
        return days.first().equals(days.last())
                ? messages.text(
                        MessageKey.HERD_REPORT_TITLE_ONE_DAY, days.first().toString())
                : messages.text(
                        MessageKey.HERD_REPORT_TITLE,
                        days.first().toString(),
                        days.last().toString());
    }

    /** Everything that is told, in the order of reading; with no birth one sentence. */
    public List<Section> sections(HerdReport report) {
        if (report.born() == 0) {
            return List.of(new Section(title(report), List.of(new Line("", none()))));
        }
        List<Section> sections = new ArrayList<>();
        sections.add(whole(title(report), report));
        report.groups().forEach((grouping, groups) -> sections.add(parts(grouping, groups, report)));
        return sections;
    }

    /** What each measure counts, of which calves, and what others found. */
    public Section meanings() {
        return new Section(
                messages.text(MessageKey.HERD_PAPER_METHODS),
                Arrays.stream(HerdMeasure.values())
                        .map(measure -> new Line(
                                messages.word(measure),
                                benchmark(measure)
                                        .map(known -> definition(measure) + " "
                                                + messages.text(MessageKey.HERD_PAPER_PUBLISHED, known))
                                        .orElseGet(() -> definition(measure))))
                        .toList());
    }

    /** What a measure counts, of which calves. */
    public String definition(HerdMeasure measure) {
        return messages.at(Messages.key(measure) + ".definition");
    }

    /** What others found, with the source; empty where nothing is known. */
    public Optional<String> benchmark(HerdMeasure measure) {
        String told = messages.at(
                Messages.key(measure) + ".benchmark",
                measure.benchmark().map(figures::number).orElse(""));
        return told.isBlank() ? Optional.empty() : Optional.of(told);
    }

    /** The figures of the period before, to compare with. */
    public Section before(HerdReport report) {
        String title = messages.text(
                MessageKey.HERD_REPORT_BEFORE,
                report.days().first().toString(),
                report.days().last().toString());
        return report.born() == 0 ? new Section(title, List.of(new Line("", none()))) : whole(title, report);
    }

    /** How the figures are meant and where their methods come from. */
    public List<String> notes() {
        return List.of(
                messages.text(MessageKey.HERD_REPORT_CHARTS),
                messages.text(MessageKey.HERD_WHY),
                messages.text(MessageKey.HERD_REPORT_JUDGED));
    }

    private String none() {
        return messages.text(MessageKey.HERD_REPORT_NONE);
    }

    private Section whole(String title, HerdReport report) {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(messages.text(MessageKey.HERD_BORN), figures.number(report.born())));
        report.figures()
                .forEach((measure, figure) -> lines.add(new Line(messages.word(measure), phrases.figure(figure))));
        if (report.spread().firstFeeds().median().isPresent()) {
            lines.add(new Line(
                    messages.text(MessageKey.HERD_FIRST_FEED),
                    phrases.hours(report.spread().firstFeeds())));
        }
        lines.add(new Line(messages.text(MessageKey.HERD_IMMUNITY), phrases.immunity(report.immunity())));
        return new Section(title, lines);
    }

    private Section parts(Grouping grouping, List<Group> groups, HerdReport report) {
        List<Line> lines = new ArrayList<>();
        for (int place = 0; place < groups.size(); place++) {
            Group group = groups.get(place);
            lines.add(new Line(
                    name(group.key()), messages.text(MessageKey.HERD_REPORT_BORN_IN, figures.number(group.born()))));
            if (group.born() > 0) {
                for (HerdMeasure measure : OF_PARTS) {
                    lines.add(new Line("  " + messages.word(measure), told(group, measure)));
                    if (grouping == Grouping.WEEK) {
                        outside(report.charts(), measure, place).ifPresent(lines::add);
                    }
                }
            }
        }
        return new Section(messages.word(grouping), lines);
    }

    private String told(Group group, HerdMeasure measure) {
        return Optional.ofNullable(group.figures().get(measure))
                .map(phrases::figure)
                .orElseThrow();
    }

    private Optional<Line> outside(Map<HerdMeasure, ControlChart> charts, HerdMeasure measure, int place) {
        return Optional.ofNullable(charts.get(measure)).stream()
                .flatMap(chart -> chart.points().stream())
                .filter(point -> point.place() == place && point.isOutside())
                .findFirst()
                .map(point -> new Line(
                        "",
                        messages.text(MessageKey.HERD_REPORT_OUTSIDE, percent(point.low()), percent(point.high()))));
    }

    private String percent(BigDecimal share) {
        return figures.number(share.movePointRight(2).setScale(1, RoundingMode.HALF_UP));
    }

    /** What a group's calves have in common. */
    public String name(Object key) {
        if (key instanceof LocalDate monday) {
            return messages.text(MessageKey.HERD_REPORT_WEEK, monday.toString());
        }
        if (key instanceof DayOfWeek day) {
            return day.getDisplayName(TextStyle.FULL_STANDALONE, messages.locale());
        }
        if (key instanceof Enum<?> constant) {
            return messages.word(constant);
        }
        throw new AssertionError(key);
    }

    /** All lines of a section below each other, as a terminal shows them. */
    public static String shown(Section section) {
        return section.title()
                + section.lines().stream()
                        .map(line -> String.format(Locale.ROOT, "%n  %-28s %s", line.label(), line.text()))
                        .collect(Collectors.joining());
    }
}
