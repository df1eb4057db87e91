package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Term;
import strawbed.protocol.Units;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LanguageTest {
    private static final Instant AFTERNOON = Instant.parse("2026-11-24T20:30:00Z");
    private static final Figures SPANISH =
            Figures.written(new Messages(Language.SPANISH.locale()), ZoneId.of("America/Chicago"), Units.AS_SPOKEN);

    @Test
    void a_language_is_found_by_its_two_letters_only() {
        assertThat(Language.find("en")).contains(Language.ENGLISH);
        assertThat(Language.find("es")).contains(Language.SPANISH);
        for (String other : new String[] {"", "ES", "español", "spanish", "fr", "es-US", " es"}) {
            assertThat(Language.find(other)).as(other).isEmpty();
        }
        for (Language language : Language.values()) {
            assertThat(Language.find(language.code())).contains(language);
        }
    }

    @Test
    void english_stays_that_of_the_united_states() {
        assertThat(Language.ENGLISH.locale()).isEqualTo(Locale.US);
        assertThat(new Messages(Language.ENGLISH.locale()).word(Term.Sex.FEMALE))
                .isEqualTo("heifer");
        assertThat(new Messages(Language.SPANISH.locale()).word(Term.Sex.FEMALE))
                .isEqualTo("hembra");
    }

    /** A point before decimals, as in Mexico and the United States, and no mark between thousands. */
    @Test
    void spanish_numbers_have_a_decimal_point() {
        assertThat(SPANISH.number(new BigDecimal("101.5"))).isEqualTo("101.5");
        assertThat(SPANISH.number(new BigDecimal("12345.25"))).isEqualTo("12345.25");
        assertThat(SPANISH.percent(new BigDecimal("24.5"))).isEqualTo("24.5 por ciento");
    }

    /** Names of days and months: Unicode CLDR as the Java runtime has it. */
    @Test
    void spanish_days_have_spanish_names_and_the_clock_has_24_hours() {
        assertThat(SPANISH.dayAndClock(AFTERNOON)).isEqualTo("mar 24 nov. 14:30");
        assertThat(SPANISH.date(AFTERNOON)).isEqualTo("24 nov.");
        assertThat(SPANISH.clockAsSeenFrom(AFTERNOON.minusSeconds(86_400), AFTERNOON))
                .isEqualTo("mar 14:30");
        assertThat(new Figures(new Spoken(new Messages(Language.SPANISH.locale())), ZoneId.of("America/Chicago"))
                        .day(AFTERNOON))
                .isEqualTo("martes 24 de noviembre");
    }
}
