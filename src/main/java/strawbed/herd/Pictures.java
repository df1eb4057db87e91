package strawbed.herd;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strawbed.care.FirstFeedAges;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.HerdSpread;
import strawbed.care.HerdSpread.Dose;
import strawbed.protocol.Setting;
import strawbed.report.Chart;
import strawbed.report.Exhibit;
import strawbed.text.MessageKey;

/** How the calves of the period lie: pictures of what a share hides. What nobody recorded has no picture. */
final class Pictures {
    private static final int HOURS = 12;
    private static final int BRIX_FROM = 15;
    private static final int BRIX_TO = 30;
    /** The hours whose shares are figures of the report. */
    private static final Map<Integer, HerdMeasure> SHARES = Map.of(
            1, HerdMeasure.FED_WITHIN_1_HOUR,
            2, HerdMeasure.FED_WITHIN_2_HOURS,
            4, HerdMeasure.FED_WITHIN_4_HOURS,
            6, HerdMeasure.FED_WITHIN_6_HOURS);

    private final Wordings words;
    private final HerdReport report;
    private final HerdSpread spread;

    Pictures(Wordings words, HerdReport report) {
        this.words = words;
        this.report = report;
        this.spread = report.spread();
    }

    List<Exhibit> all() {
        List<Exhibit> pictures = new ArrayList<>();
        if (!spread.firstFeeds().known().isEmpty()) {
            pictures.add(firstFeeds());
        }
        if (!spread.brix().isEmpty()) {
            pictures.add(brix());
        }
        if (!spread.doses().isEmpty()) {
            pictures.add(doses());
        }
        List<Dose> known =
                spread.doses().stream().filter(dose -> dose.grams().isPresent()).toList();
        if (!known.isEmpty()) {
            pictures.add(antibody(known));
        }
        return pictures;
    }

    private Exhibit firstFeeds() {
        List<Integer> counts = report.firstFeedsByHour(HOURS);
        List<String> edges = new ArrayList<>(
                IntStream.rangeClosed(0, HOURS).mapToObj(words::number).toList());
        edges.add(words.text(HERD_PAPER_AND_MORE));
        List<Chart.Line> lines = SHARES.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(share -> new Chart.Line(
                        share.getKey(),
                        words.share(Objects.requireNonNull(report.figures().get(share.getValue())))))
                .toList();
        FirstFeedAges ages = spread.firstFeeds();
        return bars(
                HERD_PAPER_FIRST_FEED,
                HERD_PAPER_FIRST_FEED_HOURS,
                edges,
                counts,
                lines,
                words.text(
                        HERD_PAPER_FIRST_FEED_CAPTION,
                        words.number(ages.known().size()),
                        words.number(ages.unknown()),
                        words.number(FirstFeedAges.hours(ages.median().orElseThrow()), 1),
                        words.number(FirstFeedAges.hours(ages.mean().orElseThrow()), 1)));
    }

    private Exhibit brix() {
        BigDecimal line = spread.protocol().number(Setting.GOOD_FROM_BRIX_PERCENT);
        List<Integer> whole = spread.brix().stream()
                .map(each -> each.setScale(0, RoundingMode.FLOOR).intValue())
                .toList();
        int from = Math.min(
                BRIX_FROM, whole.stream().mapToInt(Integer::intValue).min().orElseThrow());
        int to = Math.max(
                BRIX_TO, 1 + whole.stream().mapToInt(Integer::intValue).max().orElseThrow());
        List<Integer> counts = IntStream.range(from, to)
                .mapToObj(percent ->
                        (int) whole.stream().filter(each -> each == percent).count())
                .toList();
        long below =
                spread.brix().stream().filter(each -> each.compareTo(line) < 0).count();
        return bars(
                HERD_PAPER_BRIX,
                HERD_PAPER_BRIX_PERCENT,
                IntStream.rangeClosed(from, to).mapToObj(words::number).toList(),
                counts,
                List.of(new Chart.Line(
                        line.doubleValue() - from,
                        words.text(HERD_PAPER_BRIX_LINE, words.figures().number(line)))),
                words.text(
                        HERD_PAPER_BRIX_CAPTION,
                        words.number(spread.brix().size()),
                        words.number(below),
                        words.figures().number(line)));
    }

    private Exhibit bars(
            MessageKey title,
            MessageKey across,
            List<String> edges,
            List<Integer> counts,
            List<Chart.Line> lines,
            String caption) {
        String inWords = words.list(IntStream.range(0, counts.size())
                .filter(bar -> counts.get(bar) > 0)
                .mapToObj(bar -> words.text(
                        HERD_PAPER_PICTURE_BAR, edges.get(bar), edges.get(bar + 1), words.number(counts.get(bar))))
                .toList());
        return new Exhibit.Graph(
                words.text(title),
                new Chart.Bars(
                        words.text(across),
                        words.text(HERD_PAPER_CALVES),
                        edges,
                        counts,
                        lines,
                        words.text(HERD_PAPER_PICTURE_BARS, words.text(across), inWords)),
                caption);
    }

    private Exhibit doses() {
        BigDecimal percent = spread.protocol().number(Setting.DOSE_BIRTH_WEIGHT_PERCENT);
        BigDecimal mean = spread.doses().stream()
                .map(Dose::litres)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(spread.doses().size()), 1, RoundingMode.HALF_UP);
        Chart.Slope target = new Chart.Slope(
                0,
                percent.doubleValue() / 100,
                words.text(HERD_PAPER_DOSE_LINE, words.figures().number(percent)));
        return pairs(
                HERD_PAPER_DOSE,
                HERD_PAPER_LITERS,
                spread.doses(),
                dose -> dose.litres().doubleValue(),
                List.of(target),
                words.text(
                        HERD_PAPER_DOSE_CAPTION,
                        words.number(spread.doses().size()),
                        words.figures().number(percent),
                        words.figures().number(mean)));
    }

    private Exhibit antibody(List<Dose> known) {
        BigDecimal low = spread.protocol().number(Setting.ANTIBODY_LOW_BELOW_GRAMS);
        BigDecimal advised = spread.protocol().number(Setting.ANTIBODY_ADVISED_GRAMS);
        return pairs(
                HERD_PAPER_ANTIBODY,
                HERD_PAPER_GRAMS,
                known,
                dose -> dose.grams().orElseThrow().doubleValue(),
                // The upper one first: the lower one's words then go below it where both are near.
                Stream.of(advised, low)
                        .map(grams -> new Chart.Slope(
                                grams.doubleValue(),
                                0,
                                words.text(
                                        HERD_PAPER_ANTIBODY_LINE,
                                        words.figures().number(grams))))
                        .toList(),
                words.text(
                        HERD_PAPER_ANTIBODY_CAPTION,
                        words.number(known.size()),
                        words.figures().number(low),
                        words.figures().number(advised)));
    }

    private Exhibit pairs(
            MessageKey title,
            MessageKey up,
            List<Dose> doses,
            ToDoubleFunction<Dose> height,
            List<Chart.Slope> lines,
            String caption) {
        List<Chart.Point> points = doses.stream()
                .map(dose -> new Chart.Point(dose.kilograms().doubleValue(), height.applyAsDouble(dose)))
                .toList();
        String inWords = words.text(
                HERD_PAPER_PICTURE_PAIRS,
                words.text(title),
                words.text(HERD_PAPER_WEIGHT),
                least(points, Chart.Point::across),
                most(points, Chart.Point::across),
                words.text(up),
                least(points, Chart.Point::up),
                most(points, Chart.Point::up));
        return new Exhibit.Graph(
                words.text(title),
                new Chart.Pairs(words.text(HERD_PAPER_WEIGHT), words.text(up), points, lines, inWords),
                caption);
    }

    private String least(List<Chart.Point> points, ToDoubleFunction<Chart.Point> of) {
        return shown(points.stream().mapToDouble(of).min().orElseThrow());
    }

    private String most(List<Chart.Point> points, ToDoubleFunction<Chart.Point> of) {
        return shown(points.stream().mapToDouble(of).max().orElseThrow());
    }

    private String shown(double number) {
        return words.number(BigDecimal.valueOf(number), 1);
    }
}
