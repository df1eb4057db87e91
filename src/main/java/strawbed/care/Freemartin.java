package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event.TwinNoted;
import strawbed.event.Term;

/**
 * Whether a heifer shared the womb with a bull.
 *
 * <p>Sources: more than 9 in 10 heifers born twin to a bull are infertile, beef cattle extension and a Canadian
 * veterinary column; that one bull among several marks all heifers, and that a twin of unknown sex leaves it unknown,
 * is common practice, no published source.
 */
public enum Freemartin {
    /** No heifer, no twin, or all the others are known to be heifers. */
    NO,
    /** One of the others is a bull, also when it is dead. */
    LIKELY,
    /** One of the others is not recorded, or its sex is not: dead before anybody looked, or not said. */
    UNKNOWN;

    /** Twin pairs of a bull and a heifer, and of two heifers, in percent. Source: Silva del Rio 2007, J Dairy Sci 90:1255. */
    private static final BigDecimal MIXED_PAIRS = new BigDecimal("43.6");

    private static final BigDecimal HEIFER_PAIRS = new BigDecimal("26.3");

    /** The share of infertile ones that a Canadian veterinary column names. */
    private static final BigDecimal INFERTILE = new BigDecimal("0.92");

    public static Freemartin of(CalfRecord calf, Herd herd) {
        if (!is(Term.Sex.FEMALE, calf)) {
            return NO;
        }
        List<CalfRecord> twins = herd.twinsOf(calf);
        if (twins.stream().anyMatch(twin -> is(Term.Sex.MALE, twin))) {
            return LIKELY;
        }
        boolean allSexed = twins.stream().allMatch(twin -> twin.sex().isPresent());
        return allSexed && twins.size() >= born(calf, twins) - 1 ? NO : UNKNOWN;
    }

    /**
     * How likely a heifer is a freemartin whose one twin is of unknown sex, in percent, to one decimal, half up. Empty
     * where it is known, or where there are more than two: the figures are of pairs.
     */
    public static Optional<BigDecimal> chanceInPercent(CalfRecord calf, Herd herd) {
        boolean isPair = born(calf, herd.twinsOf(calf)) == 2;
        return isPair && of(calf, herd) == UNKNOWN
                ? Optional.of(percent(bullTwin().multiply(INFERTILE)))
                : Optional.empty();
    }

    /** How likely the twin of unknown sex of a heifer is a bull, in percent, to one decimal, half up. */
    static BigDecimal chanceOfBullTwinInPercent() {
        return percent(bullTwin());
    }

    /** A pair of two heifers holds twice the heifers of a mixed one, so it counts twice. */
    private static BigDecimal bullTwin() {
        BigDecimal heifers = MIXED_PAIRS.add(HEIFER_PAIRS.multiply(BigDecimal.valueOf(2)));
        return MIXED_PAIRS.divide(heifers, MathContext.DECIMAL64);
    }

    private static BigDecimal percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP);
    }

    /** How many were born, as it was said, or as far as they are on record. */
    private static int born(CalfRecord calf, List<CalfRecord> twins) {
        return Stream.concat(Stream.of(calf), twins.stream())
                .flatMap(each -> each.twin().stream())
                .mapToInt(TwinNoted::count)
                .reduce(twins.size() + 1, Math::max);
    }

    private static boolean is(Term.Sex sex, CalfRecord calf) {
        return calf.sex().filter(sex::equals).isPresent();
    }
}
