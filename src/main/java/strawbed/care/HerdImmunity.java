package strawbed.care;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.protocol.Setting;

/**
 * The passive immunity of the calves born in a period. The goal is more than 40 % excellent and less than 10 % poor;
 * about 30 % good and about 20 % fair are wanted too, but are no test to pass.
 *
 * <p>Source of the shares: Lombard and others 2020, Journal of Dairy Science 103:7611, doi 10.3168/jds.2019-17955; to
 * call it met only when both hold, strictly, is our own wording. Blood of several healthy calves under a week old, none
 * on its first day, makes a herd sample: Irish regional veterinary laboratory chapter, All-island Animal Disease
 * Surveillance Report 2018.
 *
 * <p>Twelve calves are few. Where one calf in ten is truly poor, twelve show none of them with a chance of 28 %:
 * {@link #chanceOfSeeingAtMost}.
 *
 * @param counts the calves of each category; every category is there
 * @param notCounted the calves left out, by reason; a reason without a calf is not there
 * @param jerseys how many of those counted are Jerseys, whom the lines do not fit
 * @param agesEstimated how many of those counted have no timed birth
 * @param least with fewer calves nothing is said about the herd
 */
public record HerdImmunity(
        BirthPeriod period,
        Map<ImmunityCategory, Integer> counts,
        Map<WhyNot, Integer> notCounted,
        int jerseys,
        int agesEstimated,
        int least) {
    private static final int EXCELLENT_ABOVE_PERCENT = 40;
    private static final int GOOD_ABOUT_PERCENT = 30;
    private static final int FAIR_ABOUT_PERCENT = 20;
    private static final int POOR_BELOW_PERCENT = 10;

    /**
     * How the herd stands to the goal.
     *
     * @param enoughExcellent whether more than 40 % are excellent
     * @param fewPoor whether less than 10 % are poor
     */
    public record Goal(boolean enoughExcellent, boolean fewPoor) {
        /** Whether both hold. */
        public boolean isMet() {
            return enoughExcellent && fewPoor;
        }
    }

    public HerdImmunity {
        EnumMap<ImmunityCategory, Integer> all = new EnumMap<>(ImmunityCategory.class);
        for (ImmunityCategory category : ImmunityCategory.values()) {
            all.put(category, counts.getOrDefault(category, 0));
        }
        counts = Collections.unmodifiableMap(all);
        EnumMap<WhyNot, Integer> reasons = new EnumMap<>(WhyNot.class);
        reasons.putAll(notCounted);
        notCounted = Collections.unmodifiableMap(reasons);
    }

    /**
     * How many calves make a verdict is what the protocol said at the birth of the youngest of them, so that a later
     * change of the protocol changes no earlier verdict.
     */
    public static HerdImmunity of(Herd herd, Farm farm, BirthPeriod period) {
        List<CalfRecord> born = period.bornIn(herd);
        Map<ImmunityCategory, Integer> counts = new EnumMap<>(ImmunityCategory.class);
        Map<WhyNot, Integer> notCounted = new EnumMap<>(WhyNot.class);
        int jerseys = 0;
        int agesEstimated = 0;
        for (CalfRecord calf : born) {
            Judged<PassiveImmunity> judged = healthy(calf, farm);
            PassiveImmunity immunity = judged.value().orElse(null);
            if (immunity == null) {
                notCounted.merge(judged.whyNot().orElseThrow(), 1, Integer::sum);
                continue;
            }
            counts.merge(immunity.category(), 1, Integer::sum);
            jerseys += immunity.notes().contains(PassiveImmunity.Note.JERSEY) ? 1 : 0;
            agesEstimated += immunity.start().isEstimated() ? 1 : 0;
        }
        return new HerdImmunity(period, counts, notCounted, jerseys, agesEstimated, least(born, farm));
    }

    /** How many calves are counted. */
    public int counted() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How many calves are of this category. */
    public int count(ImmunityCategory category) {
        return counts.getOrDefault(category, 0);
    }

    /** The share of a category; with too few calves there is none. */
    public Judged<Share> share(ImmunityCategory category) {
        int counted = counted();
        return counted < least || counted == 0
                ? Judged.not(WhyNot.TOO_FEW)
                : Judged.of(new Share(count(category), counted));
    }

    /** The share in percent as it is shown: to one decimal, or with as many as it takes to stay on its side of the goal. */
    public Judged<BigDecimal> shownPercent(ImmunityCategory category) {
        return share(category).then(share -> Judged.of(shown(share, goalPercent(category))));
    }

    /** How the herd stands to the goal; with too few calves there is no verdict. */
    public Judged<Goal> goal() {
        return share(ImmunityCategory.EXCELLENT)
                .then(excellent -> share(ImmunityCategory.POOR)
                        .then(poor -> Judged.of(new Goal(
                                excellent.compareToPercent(EXCELLENT_ABOVE_PERCENT) > 0,
                                poor.compareToPercent(POOR_BELOW_PERCENT) < 0))));
    }

    /**
     * The chance that among so many calves at most so many are of a kind that has this share of all calves; exact.
     * Common arithmetic of independent draws.
     *
     * @param share of one, 0 to 1
     */
    public static BigDecimal chanceOfSeeingAtMost(int most, BigDecimal share, int calves) {
        if (share.signum() < 0 || share.compareTo(BigDecimal.ONE) > 0 || most < 0 || calves < most) {
            throw new IllegalArgumentException(
                    "no chance of at most " + most + " among " + calves + " with a share of " + share);
        }
        BigDecimal chance = BigDecimal.ZERO;
        BigDecimal ways = BigDecimal.ONE;
        for (int seen = 0; seen <= most; seen++) {
            chance = chance.add(ways.multiply(share.pow(seen))
                    .multiply(BigDecimal.ONE.subtract(share).pow(calves - seen)));
            ways = ways.multiply(BigDecimal.valueOf(calves - seen)).divide(BigDecimal.valueOf(seen + 1L));
        }
        return chance;
    }

    private static Judged<PassiveImmunity> healthy(CalfRecord calf, Farm farm) {
        Judged<PassiveImmunity> judged = PassiveImmunity.of(calf, farm)
                .then(immunity -> immunity.notes().contains(PassiveImmunity.Note.SCOURING)
                        ? Judged.not(WhyNot.SCOURING)
                        : Judged.of(immunity));
        boolean isDeadWithoutSample = !calf.isAlive()
                && judged.whyNot().filter(WhyNot.NO_SAMPLE::equals).isPresent();
        return isDeadWithoutSample ? Judged.not(WhyNot.DEAD) : judged;
    }

    private static int least(List<CalfRecord> born, Farm farm) {
        return born.stream()
                .max((one, other) -> one.bornAbout()
                        .orElseThrow()
                        .compareTo(other.bornAbout().orElseThrow()))
                .map(farm::protocolFor)
                .orElseGet(farm::protocol)
                .number(Setting.LEAST_CALVES_FOR_HERD)
                .intValue();
    }

    /** The share of a category that is wanted, in percent: more than that, about that, or less. */
    public static int wantedPercent(ImmunityCategory category) {
        return switch (category) {
            case EXCELLENT -> EXCELLENT_ABOVE_PERCENT;
            case GOOD -> GOOD_ABOUT_PERCENT;
            case FAIR -> FAIR_ABOUT_PERCENT;
            case POOR -> POOR_BELOW_PERCENT;
        };
    }

    private static int goalPercent(ImmunityCategory category) {
        return category == ImmunityCategory.POOR ? POOR_BELOW_PERCENT : EXCELLENT_ABOVE_PERCENT;
    }

    private static BigDecimal shown(Share share, int goal) {
        int side = share.compareToPercent(goal);
        int decimals = 1;
        BigDecimal shown = share.percent(decimals);
        while (shown.compareTo(BigDecimal.valueOf(goal)) != side) {
            decimals++;
            shown = share.percent(decimals);
        }
        return shown;
    }
}
