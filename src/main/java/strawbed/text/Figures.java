package strawbed.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strawbed.calf.Feed;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Units;

/**
 * How quantities, times and numbers of animals are written or said: quantities in the unit that was spoken or in those
 * that the farm wants to see, times on the farm's clock. Immutable, safe for any thread.
 */
public final class Figures {
    private static final int TAG_DIGITS = 15;
    private static final int GROUP = 3;
    private static final Duration CLEAR = Duration.ofHours(12);

    private final Wording wording;
    private final ZoneId zone;
    private final ShownUnits units;

    /** With amounts as they were spoken. */
    Figures(Wording wording, ZoneId zone) {
        this(wording, zone, Units.AS_SPOKEN);
    }

    Figures(Wording wording, ZoneId zone, Units units) {
        this.wording = wording;
        this.zone = zone;
        this.units = new ShownUnits(units);
    }

    /** As they are written. */
    public static Figures written(Messages messages, ZoneId zone, Units units) {
        return new Figures(new Written(messages), zone, units);
    }

    public String number(BigDecimal number) {
        return wording.number(number);
    }

    String number(long number) {
        return number(BigDecimal.valueOf(number));
    }

    public String percent(BigDecimal percent) {
        return wording.text(MessageKey.PERCENT, number(percent));
    }

    /** The amount in the unit in which it is shown. */
    public Volume shown(Volume said) {
        return units.of(said);
    }

    /** "3.5 quarts". */
    public String volume(Volume said) {
        Volume volume = units.of(said);
        return counted(volume.unit(), volume.amount());
    }

    /** "88 pounds". */
    public String mass(Mass said) {
        Mass mass = units.of(said);
        return counted(mass.unit(), mass.amount());
    }

    /** "101.5 °F". */
    public String temperature(Temperature said) {
        Temperature temperature = units.of(said);
        return wording.counted(
                switch (temperature.unit()) {
                    case FAHRENHEIT -> MessageKey.FAHRENHEIT;
                    case CELSIUS -> MessageKey.CELSIUS;
                },
                temperature.amount());
    }

    /** What was taken in all these feeds: in the unit that was spoken where it is only one, else in liters to 0.1. */
    public String taken(List<Feed> feeds) {
        List<VolumeUnit> units = feeds.stream()
                .flatMap(feed -> Stream.concat(Stream.of(feed.volume()), Stream.ofNullable(feed.left())))
                .map(Volume::unit)
                .distinct()
                .toList();
        BigDecimal litres = feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (units.size() == 1) {
            BigDecimal one = new Volume(BigDecimal.ONE, units.get(0)).inLitres();
            return volume(new Volume(litres.divide(one, 3, RoundingMode.HALF_UP), units.get(0)));
        }
        return volume(new Volume(litres.setScale(1, RoundingMode.HALF_UP), VolumeUnit.LITRE));
    }

    /** A number of an animal, digit by digit where it is said. */
    public String animal(String number) {
        return wording.digits(number);
    }

    /** An official number of 15 digits in groups of three, another one as it is. Source: ICAO Annex 10, digit by digit. */
    public String officialTag(String number) {
        if (number.length() != TAG_DIGITS) {
            return wording.digits(number);
        }
        return wording.groups(IntStream.range(0, TAG_DIGITS / GROUP)
                .mapToObj(group -> number.substring(group * GROUP, (group + 1) * GROUP))
                .toList());
    }

    String place(String words) {
        return wording.place(words);
    }

    /** "04:30". */
    public String clock(Instant at) {
        return wording.clock(local(at).toLocalTime());
    }

    /** "Tue 24 Nov". */
    public String day(Instant at) {
        return format(MessageKey.DAY_PATTERN, at);
    }

    /** "24 Nov". */
    public String date(Instant at) {
        return format(MessageKey.DATE_PATTERN, at);
    }

    /** "Tue 24 Nov 04:30". */
    public String dayAndClock(Instant at) {
        return wording.text(MessageKey.DAY_AND_TIME, day(at), clock(at));
    }

    /** The clock time; with the day where it is not the same as at the other instant. */
    public String clockAsSeenFrom(Instant other, Instant at) {
        return localDate(at).equals(localDate(other))
                ? clock(at)
                : wording.text(MessageKey.DAY_AND_TIME, format(MessageKey.WEEKDAY_PATTERN, at), clock(at));
    }

    /** "04:30" within twelve hours, where the clock alone is clear; else "yesterday 16:30", or with the day. */
    String clockNear(Instant now, Instant at) {
        return isClear(now, at) ? clock(at) : withDay(now, at);
    }

    /** As {@link #clock}, for behind a verb: some languages say "at" there. */
    String time(Instant at) {
        return wording.text(MessageKey.CLOCK_AT, clock(at));
    }

    /** As {@link #clockNear}, for behind a verb. */
    String timeNear(Instant now, Instant at) {
        return isClear(now, at) ? time(at) : withDay(now, at);
    }

    private boolean isClear(Instant now, Instant at) {
        return daysBetween(now, at) == 0 || Duration.between(now, at).abs().compareTo(CLEAR) <= 0;
    }

    private long daysBetween(Instant now, Instant at) {
        return localDate(at).toEpochDay() - localDate(now).toEpochDay();
    }

    private String withDay(Instant now, Instant at) {
        long days = daysBetween(now, at);
        if (days == -1) {
            return wording.text(MessageKey.DAY_BEFORE, clock(at));
        }
        return days == 1 ? wording.text(MessageKey.DAY_AFTER, clock(at)) : dayAndClock(at);
    }

    /** "35 min", "2 h 5 min", "3 days"; whole minutes, the started one not counted. */
    public String shortly(Duration duration) {
        long minutes = duration.toMinutes();
        if (minutes < 60) {
            return wording.text(MessageKey.MINUTES_SHORT, number(minutes));
        }
        if (duration.toDays() >= 2) {
            return wording.text(MessageKey.DAYS_SHORT, number(duration.toDays()));
        }
        String hours = number(duration.toHours());
        return minutes % 60 == 0
                ? wording.text(MessageKey.HOURS_SHORT, hours)
                : wording.text(MessageKey.HOURS_AND_MINUTES_SHORT, hours, number(minutes % 60));
    }

    /** As {@link #shortly}, to the second: "30 s", "1 min 30 s", "12 h", "7 days". */
    String exactly(Duration duration) {
        int seconds = duration.toSecondsPart();
        if (seconds == 0) {
            return shortly(duration);
        }
        String inSeconds = wording.text(MessageKey.SECONDS_SHORT, number(seconds));
        return duration.toMinutes() == 0 ? inSeconds : shortly(duration) + " " + inSeconds;
    }

    /** "10 minutes ago", "3 hours ago"; "just now" below one minute. */
    String ago(Duration duration) {
        return duration.toMinutes() < 1
                ? wording.text(MessageKey.JUST_NOW)
                : wording.text(MessageKey.AGO, inWords(duration));
    }

    private String inWords(Duration duration) {
        if (duration.toDays() >= 2) {
            return wording.counted(MessageKey.DAY_MANY, BigDecimal.valueOf(duration.toDays()));
        }
        long hours = duration.toHours();
        int rest = duration.toMinutesPart();
        String minutes = plural(rest, MessageKey.MINUTE_ONE, MessageKey.MINUTE_MANY);
        if (hours == 0) {
            return minutes;
        }
        String inHours = plural(hours, MessageKey.HOUR_ONE, MessageKey.HOUR_MANY);
        return rest == 0 ? inHours : wording.text(MessageKey.HOURS_AND_MINUTES, inHours, minutes);
    }

    private String plural(long count, MessageKey one, MessageKey many) {
        return wording.counted(count == 1 ? one : many, BigDecimal.valueOf(count));
    }

    private String counted(Enum<?> unit, BigDecimal amount) {
        boolean one = amount.compareTo(BigDecimal.ONE) == 0;
        return wording.counted(MessageKey.dotted(unit.name() + (one ? "_one" : "_many")), amount);
    }

    private String format(MessageKey pattern, Instant at) {
        return DateTimeFormatter.ofPattern(
                        wording.text(pattern), wording.messages().locale())
                .format(local(at));
    }

    private LocalDate localDate(Instant at) {
        return local(at).toLocalDate();
    }

    private ZonedDateTime local(Instant at) {
        return at.atZone(zone);
    }
}
