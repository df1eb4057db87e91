package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.Event;
import strawbed.event.Event.CalfBorn;
import strawbed.event.When;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.RuleId;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.NumberWords;
import strawbed.testkit.SpokenSentence;

/**
 * Spoken times. In the United States clocks go from 02:00 to 03:00 on 8 March 2026 and from 02:00 back to 01:00 on 1
 * November 2026 (15 USC 260a, from memory). The ways of saying are common American usage; no published source.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenTimesTest {
    private static final ZoneId ZONE = SpokenSentence.ZONE;
    private static final Grammar GRAMMAR = Grammars.ofTheTable().grammar();
    private static final GrammarMatcher MATCHER = new GrammarMatcher(GRAMMAR);
    private static final RuleId CLOCK = new RuleId("times.abnf", "clock");

    /** An ordinary day, and the two on which clocks change; the day after sees the change behind it. */
    private static final List<String> DAYS =
            List.of("2026-03-03", "2026-03-08", "2026-03-09", "2026-11-01", "2026-11-02");

    @ParameterizedTest
    @ValueSource(strings = {"00:00", "01:29", "03:30", "06:00", "12:00", "17:45", "23:59"})
    void every_time_of_the_day_is_the_nearest_in_the_past(LocalTime spoken) {
        for (String day : DAYS) {
            Instant now = ZonedDateTime.of(LocalDate.parse(day), spoken, ZONE).toInstant();
            for (int minute = 0; minute < 24 * 60; minute++) {
                LocalTime time = LocalTime.of(minute / 60, minute % 60);
                String words = ofTwentyFour(time);
                assertThat(clock(words, now))
                        .as("\"%s\" said on %s at %s", words, day, spoken)
                        .isEqualTo(nearest(now, time::equals));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"00:00", "01:29", "03:30", "06:00", "12:00", "17:45", "23:59"})
    void every_time_of_twelve_hours_is_the_nearest_in_the_past_of_either_half(LocalTime spoken) {
        for (String day : DAYS) {
            Instant now = ZonedDateTime.of(LocalDate.parse(day), spoken, ZONE).toInstant();
            for (int minute = 0; minute < 12 * 60; minute++) {
                LocalTime time = LocalTime.of(minute / 60, minute % 60);
                String words = ofTwelve(time);
                assertThat(clock(words, now))
                        .as("\"%s\" said on %s at %s", words, day, spoken)
                        .isEqualTo(nearest(now, wall -> wall.equals(time) || wall.equals(time.plusHours(12))));
            }
        }
    }

    @Test
    void every_time_with_its_half_of_the_day_is_the_nearest_in_the_past() {
        Instant now = SpokenSentence.SPOKEN_AT;
        for (int minute = 0; minute < 24 * 60; minute++) {
            LocalTime time = LocalTime.of(minute / 60, minute % 60);
            String half = time.getHour() < 12 ? " a m" : " p m";
            assertThat(clock(ofTwelve(time) + half, now))
                    .as(ofTwelve(time) + half)
                    .isEqualTo(nearest(now, time::equals));
        }
    }

    @Test
    void half_past_and_quarter_to_are_read_for_every_hour() {
        Instant now = SpokenSentence.SPOKEN_AT;
        for (int hour = 1; hour <= 12; hour++) {
            LocalTime full = LocalTime.of(hour % 12, 0);
            String name = NumberWords.of(hour);
            assertThat(clock("half past " + name, now)).isEqualTo(ofEitherHalf(now, full.plusMinutes(30)));
            assertThat(clock("quarter past " + name, now)).isEqualTo(ofEitherHalf(now, full.plusMinutes(15)));
            assertThat(clock("a quarter after " + name, now)).isEqualTo(ofEitherHalf(now, full.plusMinutes(15)));
            assertThat(clock("ten past " + name, now)).isEqualTo(ofEitherHalf(now, full.plusMinutes(10)));
            assertThat(clock("twenty past " + name, now)).isEqualTo(ofEitherHalf(now, full.plusMinutes(20)));
            assertThat(clock("quarter to " + name, now)).isEqualTo(ofEitherHalf(now, full.minusMinutes(15)));
            assertThat(clock("five to " + name, now)).isEqualTo(ofEitherHalf(now, full.minusMinutes(5)));
            assertThat(clock("twenty to " + name, now)).isEqualTo(ofEitherHalf(now, full.minusMinutes(20)));
        }
    }

    @Test
    void noon_and_midnight_are_the_last_ones() {
        Instant now = at("2026-03-03T06:00");

        assertThat(clock("noon", now)).isEqualTo(at("2026-03-02T12:00"));
        assertThat(clock("midnight", now)).isEqualTo(at("2026-03-03T00:00"));
    }

    @ParameterizedTest
    @CsvSource({
        "eleven at night, 2026-03-02T23:00",
        "two at night, 2026-03-03T02:00",
        "five in the morning, 2026-03-03T05:00",
        "five in the afternoon, 2026-03-02T17:00",
        "seven in the evening, 2026-03-02T19:00",
        "six o'clock, 2026-03-03T06:00",
        "twelve oh five, 2026-03-03T00:05"
    })
    void the_part_of_the_day_is_read(String words, String expected) {
        assertThat(clock(words, at("2026-03-03T06:00"))).isEqualTo(at(expected));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-03T06:00, ten fifteen, 2026-03-02T22:15",
        "2026-03-03T23:00, ten fifteen, 2026-03-02T22:15",
        "2026-03-03T06:00, sixteen twenty, 2026-03-02T16:20",
        "2026-03-03T06:00, oh five ten, 2026-03-02T05:10",
        "2026-03-03T06:00, six in the morning, 2026-03-02T06:00",
        "2026-03-09T01:00, half past two, 2026-03-08T14:30"
    })
    void yesterday_is_the_day_before_in_the_farms_zone(String now, String words, String expected) {
        assertThat(statement(Listener.at(at(now)).hears("calf twelve navel dipped yesterday at " + words))
                        .facts())
                .extracting(SaidFact::occurredAt)
                .containsExactly(at(expected));
    }

    @Test
    void one_to_ninety_nine_minutes_ago_are_read() {
        Listener listener = Listener.onTheTablesFarm();
        for (int minutes = 1; minutes <= 99; minutes++) {
            String words = NumberWords.of(minutes) + (minutes == 1 ? " minute ago" : " minutes ago");
            assertThat(listener.fact("calf twelve navel dipped " + words).occurredAt())
                    .as(words)
                    .isEqualTo(SpokenSentence.SPOKEN_AT.minus(Duration.ofMinutes(minutes)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "an hour ago, 60",
        "a minute ago, 1",
        "half an hour ago, 30",
        "a quarter of an hour ago, 15",
        "an hour and a half ago, 90",
        "two hours ago, 120",
        "two and a half hours ago, 150",
        "two hours and ten minutes ago, 130",
        "three hours twenty minutes ago, 200",
        "about twenty minutes ago, 20",
        "twelve hours ago, 720",
        "just now, 0"
    })
    void spans_of_time_are_read(String words, long minutes) {
        SaidFact fact = Listener.onTheTablesFarm().fact("calf twelve navel dipped " + words);

        assertThat(fact.occurredAt()).isEqualTo(SpokenSentence.SPOKEN_AT.minus(Duration.ofMinutes(minutes)));
        assertThat(fact.timeWasSaid()).isTrue();
    }

    /** A span is a span, whatever the clocks did meanwhile. */
    @Test
    void two_hours_ago_are_two_hours_through_the_change_of_clocks() {
        for (String now : List.of("2026-03-08T03:30", "2026-11-01T03:30")) {
            assertThat(Listener.at(at(now))
                            .fact("calf twelve navel dipped two hours ago")
                            .occurredAt())
                    .isEqualTo(at(now).minus(Duration.ofHours(2)));
        }
    }

    @Test
    void no_time_said_is_the_start_of_speech() {
        SaidFact fact = Listener.onTheTablesFarm().fact("calf twelve navel dipped");

        assertThat(fact.occurredAt()).isEqualTo(SpokenSentence.SPOKEN_AT);
        assertThat(fact.timeWasSaid()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-03T06:00, two and four, 2026-03-03T02:00, 2026-03-03T04:00",
        "2026-03-03T06:00, eleven and one, 2026-03-02T23:00, 2026-03-03T01:00",
        "2026-03-03T00:30, ten and midnight, 2026-03-02T22:00, 2026-03-03T00:00",
        "2026-03-03T14:00, eleven thirty and one, 2026-03-03T11:30, 2026-03-03T13:00",
        "2026-03-03T06:00, twenty two hundred and two, , ",
        "2026-03-08T06:00, one and three, 2026-03-08T01:00, 2026-03-08T03:00",
        "2026-11-01T06:00, midnight and three, 2026-11-01T00:00, 2026-11-01T03:00"
    })
    void a_birth_that_nobody_saw_has_a_window(String now, String words, String earliest, String latest) {
        Interpretation meaning = Listener.at(at(now)).hears("calf twelve born between " + words);
        if (earliest == null) {
            assertThat(meaning).isNotInstanceOf(Interpretation.Understood.class);
            return;
        }
        assertThat(((Interpretation.Understood) meaning).statement().facts())
                .extracting(SaidFact::event)
                .containsExactly(new CalfBorn(new When.Between(at(earliest), at(latest))));
    }

    @Test
    void a_window_never_ends_before_it_begins_nor_after_now() {
        for (String day : DAYS) {
            for (int spoken = 0; spoken < 24; spoken++) {
                Instant now =
                        LocalDate.parse(day).atTime(spoken, 10).atZone(ZONE).toInstant();
                for (int from = 1; from <= 12; from++) {
                    for (int to = 1; to <= 12; to++) {
                        String words = NumberWords.of(from) + " and " + NumberWords.of(to);
                        When window = born(now, "between " + words);
                        assertThat(window).as(words).isInstanceOf(When.Between.class);
                        When.Between between = (When.Between) window;
                        assertThat(between.latest()).as("%s at %s", words, now).isBeforeOrEqualTo(now);
                        assertThat(between.earliest())
                                .as("%s at %s", words, now)
                                .isBeforeOrEqualTo(between.latest());
                        assertThat(Duration.between(between.earliest(), between.latest()))
                                .as("%s at %s", words, now)
                                .isLessThanOrEqualTo(Duration.ofHours(13));
                    }
                }
            }
        }
    }

    /** Born 01:30 before the clocks went forward, fed 03:15 after: 45 minutes lie between, by the law above. */
    @Test
    void the_lost_hour_of_march_does_not_count() {
        Instant born = clock("one thirty", at("2026-03-08T03:20"));
        Instant fed = clock("three fifteen", at("2026-03-08T03:20"));

        assertThat(born).isEqualTo(Instant.parse("2026-03-08T07:30:00Z"));
        assertThat(fed).isEqualTo(Instant.parse("2026-03-08T08:15:00Z"));
    }

    /** The hour from one to two comes twice on 1 November 2026, first as 06:00Z to 07:00Z in Chicago, then an hour later. */
    @Test
    void a_time_of_the_doubled_hour_of_november_is_the_nearest_in_the_past() {
        assertThat(clock("one thirty", Instant.parse("2026-11-01T06:40:00Z")))
                .isEqualTo(Instant.parse("2026-11-01T06:30:00Z"));
        assertThat(clock("one thirty", Instant.parse("2026-11-01T07:40:00Z")))
                .isEqualTo(Instant.parse("2026-11-01T07:30:00Z"));
        assertThat(clock("one thirty", Instant.parse("2026-11-01T07:10:00Z")))
                .isEqualTo(Instant.parse("2026-11-01T06:30:00Z"));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-03T06:00, seventeen thirty, 2026-03-02T17:30",
        "2026-03-03T06:00, yesterday at four in the afternoon, 2026-03-02T16:00"
    })
    void over_twelve_hours_back_is_asked_about(String now, String words, String expected) {
        String said = words.startsWith("yesterday") ? words : "at " + words;

        assertThat(Listener.at(at(now)).hears("calf twelve navel dipped " + said))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.doubts()).containsExactly(new Doubt.LongAgo(at(expected))));
    }

    @Test
    void exactly_twelve_hours_back_is_not_asked_about() {
        Listener listener = Listener.at(at("2026-03-03T06:00"));

        assertThat(listener.doubts("calf twelve navel dipped twelve hours ago")).isEmpty();
        assertThat(listener.doubts("calf twelve navel dipped twelve hours and one minute ago"))
                .containsExactly(new Doubt.LongAgo(at("2026-03-02T17:59")));
        assertThat(listener.doubts("calf twelve born at six oh one")).isEmpty();
    }

    private static When born(Instant now, String words) {
        List<Event> events = new ArrayList<>();
        SpeechTime speech = new SpeechTime(now, ZONE);
        Statement statement = StatementReader.statement(
                MATCHER.match(GRAMMAR.ruleNamed("utterance"), List.of(("calf twelve born " + words).split(" ")), 1)
                        .get(0)
                        .children()
                        .get(0),
                speech);
        statement.facts().forEach(fact -> events.add(fact.event()));
        assertThat(events).hasSize(1);
        return ((CalfBorn) events.get(0)).when();
    }

    private static Instant clock(String words, Instant now) {
        return SpokenTime.clock(
                MATCHER.match(CLOCK, List.of(words.split(" ")), 1).get(0), new SpeechTime(now, ZONE));
    }

    /** Counts back minute by minute and looks at the wall clock: slow, simple, and another way than the program's. */
    private static Instant nearest(Instant now, Predicate<LocalTime> wanted) {
        Instant at = now;
        for (int i = 0; i <= 26 * 60; i++) {
            if (wanted.test(at.atZone(ZONE).toLocalTime()) || (isSkipped(at) && wanted.test(onTheOldClock(at)))) {
                return at;
            }
            at = at.minusSeconds(60);
        }
        return Instant.MIN;
    }

    /** From 02:00 to 03:00 on 8 March there is no such time but on a clock that nobody has put forward yet. */
    private static boolean isSkipped(Instant at) {
        return !at.isBefore(Instant.parse("2026-03-08T08:00:00Z"))
                && at.isBefore(Instant.parse("2026-03-08T09:00:00Z"));
    }

    private static LocalTime onTheOldClock(Instant at) {
        return at.atOffset(ZoneOffset.ofHours(-6)).toLocalTime();
    }

    private static Statement statement(Interpretation meaning) {
        return meaning instanceof Interpretation.Unsure unsure
                ? unsure.best()
                : ((Interpretation.Understood) meaning).statement();
    }

    private static Instant ofEitherHalf(Instant now, LocalTime time) {
        return nearest(now, wall -> wall.equals(time) || wall.equals(time.plusHours(12)));
    }

    /** "Oh five ten", "sixteen twenty", "oh six hundred", "thirteen o'clock". */
    private static String ofTwentyFour(LocalTime time) {
        int hour = time.getHour();
        int minute = time.getMinute();
        if (hour < 10) {
            return "oh " + NumberWords.of(hour) + " " + (minute == 0 ? "hundred" : NumberWords.minute(minute));
        }
        String named = NumberWords.of(hour);
        String minutes = minute == 0 ? " o'clock" : " " + NumberWords.minute(minute);
        // Ten, eleven and twelve are said alike on both clocks.
        return hour > 12 ? named + minutes : named + minutes + (hour == 12 ? " p m" : " a m");
    }

    private static String ofTwelve(LocalTime time) {
        int hour = time.getHour() % 12 == 0 ? 12 : time.getHour() % 12;
        return NumberWords.of(hour) + (time.getMinute() == 0 ? "" : " " + NumberWords.minute(time.getMinute()));
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(ZONE).toInstant();
    }
}
