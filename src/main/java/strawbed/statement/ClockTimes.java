package strawbed.statement;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Which instant a time of day means that was spoken or entered: the nearest one in the past. */
public final class ClockTimes {
    private ClockTimes() {}

    /**
     * The nearest in the past.
     *
     * @param times that can be meant: two where the half of the day was not told
     */
    public static Instant nearest(List<LocalTime> times, SpeechTime told) {
        LocalDate today = today(told);
        return nearest(times, told, List.of(today, today.minusDays(1)));
    }

    /** The nearest in the past on the day before. */
    public static Instant yesterday(List<LocalTime> times, SpeechTime told) {
        return nearest(times, told, List.of(today(told).minusDays(1)));
    }

    private static LocalDate today(SpeechTime told) {
        return told.start().atZone(told.zone()).toLocalDate();
    }

    private static Instant nearest(List<LocalTime> times, SpeechTime told, List<LocalDate> days) {
        return days.stream()
                .flatMap(day -> times.stream().map(time -> ZonedDateTime.of(day, time, told.zone())))
                // In autumn an hour comes twice: either one can be meant.
                .flatMap(time -> Stream.of(time.withEarlierOffsetAtOverlap(), time.withLaterOffsetAtOverlap()))
                .map(ZonedDateTime::toInstant)
                .filter(instant -> !instant.isAfter(told.start()))
                .max(Comparator.naturalOrder())
                .orElseGet(() -> ZonedDateTime.of(days.get(0).minusDays(1), times.get(0), told.zone())
                        .toInstant());
    }
}
