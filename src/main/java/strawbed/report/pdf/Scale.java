package strawbed.report.pdf;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The numbers along an axis: round ones, as close as there is room for.
 *
 * @param from the first, not above what is shown
 * @param step one, two or five times a power of ten
 * @param steps at least one
 */
record Scale(BigDecimal from, BigDecimal step, int steps) {
    private static final List<BigDecimal> ROUND = List.of(BigDecimal.ONE, new BigDecimal(2), new BigDecimal(5));

    /** Around all figures from one to another, in so many steps at most; where they are one, up to one more. */
    static Scale around(double least, double most, int mostSteps) {
        double end = most > least ? most : least + 1;
        int power = (int) Math.floor(Math.log10((end - least) / mostSteps)) - 1;
        while (true) {
            for (BigDecimal round : ROUND) {
                BigDecimal step = round.scaleByPowerOfTen(power);
                BigDecimal from = multiple(least, step, RoundingMode.FLOOR);
                BigDecimal to = multiple(end, step, RoundingMode.CEILING).max(from.add(step));
                int steps =
                        to.subtract(from).divide(step, 0, RoundingMode.HALF_UP).intValue();
                if (steps <= mostSteps) {
                    return new Scale(from, step, steps);
                }
            }
            power++;
        }
    }

    /** Where a figure lies, from 0 at the first number to 1 at the last. */
    double place(double figure) {
        return (figure - from.doubleValue()) / (step.doubleValue() * steps);
    }

    double to() {
        return from.doubleValue() + step.doubleValue() * steps;
    }

    /** All numbers, the first and the last too. */
    List<BigDecimal> numbers() {
        return IntStream.rangeClosed(0, steps)
                .mapToObj(number -> from.add(step.multiply(BigDecimal.valueOf(number))))
                .toList();
    }

    /** As it is written. */
    static String shown(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    private static BigDecimal multiple(double figure, BigDecimal step, RoundingMode mode) {
        // A figure a hair above a round number belongs to it.
        return BigDecimal.valueOf(figure)
                .divide(step, 6, RoundingMode.HALF_UP)
                .setScale(0, mode)
                .multiply(step);
    }
}
