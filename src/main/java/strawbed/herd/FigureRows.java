package strawbed.herd;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.care.Figure;
import strawbed.care.HerdImmunity;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.ImmunityCategory;
import strawbed.care.Share;
import strawbed.report.Exhibit;
import strawbed.text.MessageKey;

/** The herd's figures, each with its counts, its definition and what others found. */
final class FigureRows {
    private static final List<HerdMeasure> BIRTHS =
            List.of(HerdMeasure.STILLBORN, HerdMeasure.ASSISTED, HerdMeasure.DIFFICULT, HerdMeasure.TWIN);
    private static final List<HerdMeasure> COLOSTRUM = List.of(
            HerdMeasure.FED_WITHIN_1_HOUR,
            HerdMeasure.FED_WITHIN_2_HOURS,
            HerdMeasure.FED_WITHIN_4_HOURS,
            HerdMeasure.FED_WITHIN_6_HOURS,
            HerdMeasure.DOSE_ENOUGH,
            HerdMeasure.ANTIBODY_ENOUGH,
            HerdMeasure.GOOD_BRIX);
    private static final List<HerdMeasure> NAVEL =
            List.of(HerdMeasure.DIPPED_IN_TIME, HerdMeasure.DIPPED_TWICE, HerdMeasure.DIPPED_AROUND_FEEDS);

    private final Wordings words;
    private final HerdReport report;
    private final Optional<HerdReport> before;

    FigureRows(Wordings words, HerdReport report, Optional<HerdReport> before) {
        this.words = words;
        this.report = report;
        this.before = before;
    }

    /** With the legend, as it comes first, if the report has a picture that needs it. */
    Exhibit births() {
        boolean hasRanges = report.figures().values().stream()
                .anyMatch(figure -> figure.share().value().isPresent());
        return new Exhibit.Figures(rows(BIRTHS), hasRanges ? legend() : "");
    }

    private String legend() {
        return before.map(then -> words.text(
                        HERD_PAPER_LEGEND_BEFORE,
                        then.days().first().toString(),
                        then.days().last().toString()))
                .orElseGet(() -> words.text(HERD_PAPER_LEGEND));
    }

    Exhibit colostrum() {
        return new Exhibit.Figures(rows(COLOSTRUM), "");
    }

    Exhibit navel() {
        return new Exhibit.Figures(rows(NAVEL), "");
    }

    /** The categories against the shares wanted, and how the herd stands. */
    List<Exhibit> immunity() {
        HerdImmunity immunity = report.immunity();
        int leftOut = immunity.notCounted().values().stream()
                .mapToInt(Integer::intValue)
                .sum();
        String verdict = immunity.goal()
                .value()
                .map(goal -> words.text(goal.isMet() ? HERD_PAPER_IMMUNITY_MET : HERD_PAPER_IMMUNITY_NOT_MET))
                .orElseGet(() -> words.text(
                        HERD_PAPER_IMMUNITY_FEW, words.number(immunity.counted()), words.number(immunity.least())));
        List<Exhibit> exhibits = new ArrayList<>();
        exhibits.add(new Exhibit.Lines(List.of(words.text(HERD_PAPER_IMMUNITY_DEFINITION))));
        if (immunity.counted() > 0) {
            exhibits.add(new Exhibit.Figures(
                    Arrays.stream(ImmunityCategory.values()).map(this::row).toList(),
                    immunity.goal().value().isPresent() ? words.text(HERD_PAPER_LEGEND_GOAL) : ""));
        }
        exhibits.add(new Exhibit.Lines(List.of(words.text(
                HERD_PAPER_IMMUNITY_COUNTED, words.number(immunity.counted()), words.number(leftOut), verdict))));
        return exhibits;
    }

    private Exhibit.FigureRow row(ImmunityCategory category) {
        HerdImmunity immunity = report.immunity();
        String counted = words.counted(immunity.count(category), immunity.counted());
        Optional<Share> share = immunity.share(category).value();
        return new Exhibit.FigureRow(
                words.messages().word(category),
                immunity.shownPercent(category).value().map(words::percent).orElse(counted),
                share.map(known -> words.interval(counted, known)).orElse(""),
                "",
                words.text(
                        HERD_PAPER_GOAL,
                        words.text(wanted(category), words.number(HerdImmunity.wantedPercent(category)))),
                share.map(known -> Wordings.range(
                        known,
                        Optional.of(BigDecimal.valueOf(HerdImmunity.wantedPercent(category))),
                        before.flatMap(then -> then.immunity().share(category).value()))));
    }

    private static MessageKey wanted(ImmunityCategory category) {
        return switch (category) {
            case EXCELLENT -> HERD_PAPER_IMMUNITY_EXCELLENT;
            case GOOD -> HERD_PAPER_IMMUNITY_GOOD;
            case FAIR -> HERD_PAPER_IMMUNITY_FAIR;
            case POOR -> HERD_PAPER_IMMUNITY_POOR;
        };
    }

    /** Of how many calves the record tells what the figures rest on. */
    Exhibit known() {
        return new Exhibit.Figures(
                Stream.of(
                                Stream.of(row(HerdMeasure.BIRTH_TIMED)),
                                Stream.of(
                                        known(HERD_PAPER_KNOWN_EASE, HerdMeasure.ASSISTED, true),
                                        known(HERD_PAPER_KNOWN_FEED, HerdMeasure.FED_WITHIN_4_HOURS, false),
                                        known(HERD_PAPER_KNOWN_DOSE, HerdMeasure.DOSE_ENOUGH, false),
                                        known(HERD_PAPER_KNOWN_BRIX, HerdMeasure.GOOD_BRIX, true),
                                        known(HERD_PAPER_KNOWN_ANTIBODY, HerdMeasure.ANTIBODY_ENOUGH, false)))
                        .flatMap(rows -> rows)
                        .toList(),
                "");
    }

    private Exhibit.FigureRow known(MessageKey label, HerdMeasure measure, boolean isOfAll) {
        Figure known = figure(report, measure).known();
        return new Exhibit.FigureRow(
                words.text(label),
                words.share(known),
                words.counts(known),
                words.text(isOfAll ? HERD_PAPER_KNOWN_DEFINITION_ALL : HERD_PAPER_KNOWN_DEFINITION_ALIVE),
                "",
                words.range(
                        known,
                        Optional.empty(),
                        before.map(then -> figure(then, measure).known())));
    }

    private List<Exhibit.FigureRow> rows(List<HerdMeasure> measures) {
        return measures.stream().map(this::row).toList();
    }

    private Exhibit.FigureRow row(HerdMeasure measure) {
        Figure figure = figure(report, measure);
        Optional<Figure> then = before.map(earlier -> figure(earlier, measure));
        List<String> counts = new ArrayList<>(List.of(words.counts(figure)));
        then.ifPresent(earlier -> counts.add(words.text(HERD_PAPER_BEFORE, words.share(earlier))));
        return new Exhibit.FigureRow(
                words.messages().word(measure),
                words.share(figure),
                words.list(counts.stream().filter(part -> !part.isEmpty()).toList()),
                words.phrases().definition(measure),
                words.phrases()
                        .benchmark(measure)
                        .map(published -> words.text(HERD_PAPER_PUBLISHED, published))
                        .orElse(""),
                words.range(figure, measure.benchmark(), then));
    }

    private static Figure figure(HerdReport report, HerdMeasure measure) {
        return Objects.requireNonNull(report.figures().get(measure));
    }
}
