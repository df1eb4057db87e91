package strawbed.exchange;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import strawbed.event.When;

/** Reads when a calf was born, in the forms of ISO 8601 only: 03/04 is another day on each side of an ocean. */
final class BirthCell {
    private static final String DATE = "\\d{4}-\\d{2}-\\d{2}";
    private static final Duration OLDEST = Duration.ofDays(30 * 365L);

    private final ZoneId zone;
    private final Instant now;

    BirthCell(ZoneId zone, Instant now) {
        this.zone = zone;
        this.now = now;
    }

    /**
     * A date alone is that day in the farm's zone, up to now; a time that the clocks showed twice is one of the two.
     *
     * @throws IllegalArgumentException if it is no such date or time, or none at which a calf can have been born; the
     *     message says so
     */
    When read(String text) {
        When born;
        try {
            born = text.matches(DATE) ? day(LocalDate.parse(text)) : time(text.replace(' ', 'T'));
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is no date of birth. Write 2026-03-01, or 2026-03-01 05:30.", e);
        }
        if (earliest(born).isAfter(now)) {
            throw new IllegalArgumentException("the birth " + text + " lies ahead.");
        }
        if (earliest(born).isBefore(now.minus(OLDEST))) {
            throw new IllegalArgumentException("the birth " + text + " lies more than 30 years back.");
        }
        return born;
    }

    private When day(LocalDate day) {
        Instant begin = day.atStartOfDay(zone).toInstant();
        Instant end = day.plusDays(1).atStartOfDay(zone).toInstant().minusSeconds(1);
        return new When.Between(begin, end.isAfter(now) && !begin.isAfter(now) ? now : end);
    }

    private When time(String text) {
        if (text.matches(".*(Z|[+-]\\d{2}:\\d{2})")) {
            return new When.At(OffsetDateTime.parse(text).toInstant());
        }
        LocalDateTime local = LocalDateTime.parse(text);
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        return switch (offsets.size()) {
            case 0 ->
                throw new IllegalArgumentException(
                        "there was no " + text + " in the zone " + zone + ": the clocks were put forward.");
            case 1 -> new When.At(local.toInstant(offsets.get(0)));
            default -> new When.Between(local.toInstant(offsets.get(0)), local.toInstant(offsets.get(1)));
        };
    }

    private static Instant earliest(When when) {
        return when instanceof When.Between window ? window.earliest() : when.midpoint();
    }
}
