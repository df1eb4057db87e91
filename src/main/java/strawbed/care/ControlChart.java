package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A chart of shares over time (p chart) that tells a change of the work from chance: the centre line is the share of all
 * together, the limits lie three standard deviations of a share of that size beside it, each point its own. A point
 * outside is worth a look; it is no verdict.
 *
 * <p>Source of the method: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.3.2, proportions control charts
 * (Shewhart).
 *
 * @param centre the share of all, 0 to 1
 * @param points in the order of time, those with nothing to count left out
 */
public record ControlChart(BigDecimal centre, List<Point> points) {
    private static final MathContext DIGITS = new MathContext(20);
    private static final BigDecimal SIGMAS = new BigDecimal(3);
    private static final int DECIMALS = 6;

    /**
     * One stretch of time.
     *
     * @param place which of the stretches, from 0
     * @param low the lower limit, not below 0
     * @param high the upper limit, not above 1
     */
    public record Point(int place, Share share, BigDecimal low, BigDecimal high) {
        /** Whether it lies beside the limits. */
        public boolean isOutside() {
            BigDecimal at = BigDecimal.valueOf(share.count()).divide(BigDecimal.valueOf(share.of()), DIGITS);
            return at.compareTo(low) < 0 || at.compareTo(high) > 0;
        }
    }

    public ControlChart {
        points = List.copyOf(points);
    }

    /** The chart of figures that follow each other in time; with nothing to count in any of them it has no points. */
    public static ControlChart of(List<Figure> figures) {
        int count = figures.stream().mapToInt(Figure::count).sum();
        int of = figures.stream().mapToInt(Figure::of).sum();
        if (of == 0) {
            return new ControlChart(BigDecimal.ZERO, List.of());
        }
        BigDecimal centre = BigDecimal.valueOf(count).divide(BigDecimal.valueOf(of), DIGITS);
        List<Point> points = IntStream.range(0, figures.size())
                .filter(place -> figures.get(place).of() > 0)
                .mapToObj(place -> point(place, figures.get(place), centre))
                .toList();
        return new ControlChart(rounded(centre), points);
    }

    private static Point point(int place, Figure figure, BigDecimal centre) {
        BigDecimal spread = centre.multiply(BigDecimal.ONE.subtract(centre))
                .divide(BigDecimal.valueOf(figure.of()), DIGITS)
                .sqrt(DIGITS)
                .multiply(SIGMAS);
        return new Point(
                place,
                new Share(figure.count(), figure.of()),
                rounded(centre.subtract(spread).max(BigDecimal.ZERO)),
                rounded(centre.add(spread).min(BigDecimal.ONE)));
    }

    private static BigDecimal rounded(BigDecimal share) {
        return share.setScale(DECIMALS, RoundingMode.HALF_UP);
    }
}
