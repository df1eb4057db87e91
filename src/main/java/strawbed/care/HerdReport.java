package strawbed.care;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;

/**
 * The herd's figures of a period, whole and by week, weekday, shift and age of the dam, so that owner and veterinarian
 * see where work and calves change together. Figures are told side by side; that one causes the other is not said.
 *
 * @param days the period as days of the farm, the last one in it
 * @param figures of all calves born in it, in the order of {@link HerdMeasure}
 * @param groups the same of parts of them; a part without a calf is there
 * @param charts the weeks of each measure as a control chart
 */
public record HerdReport(
        Days days,
        int born,
        Map<HerdMeasure, Figure> figures,
        HerdSpread spread,
        HerdImmunity immunity,
        Map<Grouping, List<Group>> groups,
        Map<HerdMeasure, ControlChart> charts) {
    /** What the calves are parted by. Three shifts of eight hours from six o'clock: common practice, no published source. */
    public enum Grouping {
        WEEK,
        WEEKDAY,
        SHIFT,
        DAM
    }

    /** The shift in which a calf was born. */
    public enum Shift {
        FROM_6_TO_14,
        FROM_14_TO_22,
        FROM_22_TO_6;

        private static final int FIRST_HOUR = 6;
        private static final int HOURS = 8;

        /** The shift of an hour of the day, 0 to 23. */
        static Shift of(int hour) {
            return values()[Math.floorMod(hour - FIRST_HOUR, 24) / HOURS];
        }
    }

    /** What the dam had calved before. */
    public enum DamAge {
        FIRST_CALF,
        OLDER,
        NOT_KNOWN;

        static DamAge of(CalfRecord calf) {
            Optional<Integer> parity = calf.parity();
            return parity.isEmpty() ? NOT_KNOWN : parity.get() == 1 ? FIRST_CALF : OLDER;
        }
    }

    /**
     * Days of the farm.
     *
     * @param last still in it; not before the first
     */
    public record Days(LocalDate first, LocalDate last) {
        public Days {
            if (last.isBefore(first)) {
                throw new IllegalArgumentException("a period cannot end on " + last + ", before its start on " + first);
            }
        }

        /** From the first one's beginning to the last one's end. */
        public BirthPeriod period(ZoneId zone) {
            return new BirthPeriod(
                    first.atStartOfDay(zone).toInstant(),
                    last.plusDays(1).atStartOfDay(zone).toInstant());
        }
    }

    /**
     * Some of the calves.
     *
     * @param key what they have in common: the Monday of a week, a weekday, a shift, the dam's age
     */
    public record Group(Object key, int born, Map<HerdMeasure, Figure> figures) {}

    /**
     * The report as the record tells it at this time.
     *
     * @param herd with every calf that was born in the period
     * @param zone the farm's
     */
    public static HerdReport of(Herd herd, Farm farm, Days days, ZoneId zone, Instant now) {
        BirthPeriod period = days.period(zone);
        List<CalfRecord> born = period.bornIn(herd);
        List<Calf> calves = born.stream()
                .map(calf -> new Calf(calf, figures(calf, farm, now)))
                .toList();
        Map<Grouping, List<Group>> groups = new EnumMap<>(Grouping.class);
        groups.put(
                Grouping.WEEK,
                parted(calves, weeks(days), calf -> week(birth(calf, zone).toLocalDate())));
        groups.put(
                Grouping.WEEKDAY,
                parted(
                        calves,
                        List.of(DayOfWeek.values()),
                        calf -> birth(calf, zone).getDayOfWeek()));
        groups.put(
                Grouping.SHIFT,
                parted(
                        calves,
                        List.of(Shift.values()),
                        calf -> Shift.of(birth(calf, zone).getHour())));
        groups.put(Grouping.DAM, parted(calves, List.of(DamAge.values()), DamAge::of));
        Map<HerdMeasure, ControlChart> charts = new EnumMap<>(HerdMeasure.class);
        for (HerdMeasure measure : HerdMeasure.values()) {
            charts.put(
                    measure,
                    ControlChart.of(groups.get(Grouping.WEEK).stream()
                            .map(week -> week.figures().get(measure))
                            .toList()));
        }
        return new HerdReport(
                days,
                born.size(),
                sum(calves),
                HerdSpread.of(born, farm, now),
                HerdImmunity.of(herd, farm, period),
                groups,
                charts);
    }

    /** The Monday of a day's week, as ISO 8601 counts weeks. */
    static LocalDate week(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** How many calves were first fed in each hour of age, the last one for all that were older. */
    public List<Integer> firstFeedsByHour(int hours) {
        int[] counts = new int[hours + 1];
        for (Duration age : spread.firstFeeds().known()) {
            counts[(int) Math.min(hours, Math.max(0, age.toHours()))]++;
        }
        return Arrays.stream(counts).boxed().toList();
    }

    private static List<LocalDate> weeks(Days days) {
        return week(days.first())
                .datesUntil(days.last().plusDays(1), Period.ofWeeks(1))
                .toList();
    }

    /** A calf with its own part of each figure: each is judged once, however often it is counted. */
    private record Calf(CalfRecord record, Map<HerdMeasure, Figure> figures) {}

    private static <K> List<Group> parted(List<Calf> born, List<K> keys, Function<CalfRecord, K> keyOf) {
        Map<K, List<Calf>> parts = new LinkedHashMap<>();
        keys.forEach(key -> parts.put(key, new ArrayList<>()));
        born.forEach(calf -> parts.computeIfAbsent(keyOf.apply(calf.record()), key -> new ArrayList<>())
                .add(calf));
        List<Group> groups = new ArrayList<>();
        parts.forEach((key, calves) -> groups.add(new Group(key, calves.size(), sum(calves))));
        return groups;
    }

    private static Map<HerdMeasure, Figure> sum(List<Calf> calves) {
        Map<HerdMeasure, Figure> sums = new EnumMap<>(HerdMeasure.class);
        for (HerdMeasure measure : HerdMeasure.values()) {
            sums.put(measure, Figure.NONE);
        }
        calves.forEach(calf -> calf.figures().forEach((measure, figure) -> sums.merge(measure, figure, Figure::plus)));
        return sums;
    }

    private static Map<HerdMeasure, Figure> figures(CalfRecord calf, Farm farm, Instant now) {
        Map<HerdMeasure, Figure> figures = new EnumMap<>(HerdMeasure.class);
        for (HerdMeasure measure : HerdMeasure.values()) {
            figures.put(measure, measure.of(List.of(calf), farm, now));
        }
        return figures;
    }

    private static ZonedDateTime birth(CalfRecord calf, ZoneId zone) {
        return calf.bornAbout().orElseThrow().atZone(zone);
    }
}
