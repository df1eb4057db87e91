package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the JDK's own reader of the same form (ISO 8601). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class InstantTextTest {
    @Test
    void every_instant_that_can_be_written_is_read_as_the_jdk_reads_it() {
        Random random = new Random(11);
        for (int i = 0; i < 20_000; i++) {
            long second =
                    Instant.parse("0000-01-01T00:00:00Z").getEpochSecond() + (long) (random.nextDouble() * 3.2e11);
            int nanos = random.nextBoolean() ? 0 : random.nextInt(1_000) * (random.nextBoolean() ? 1_000_000 : 1);
            Instant instant = Instant.ofEpochSecond(second, nanos);
            assertThat(InstantText.parse(instant.toString())).isEqualTo(instant);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-02-29T00:00:00Z",
                "2026-12-31T23:59:59.999999999Z",
                "2026-01-01T24:00:00Z",
                "+12026-01-01T00:00:00Z",
                "-0001-01-01T00:00:00Z",
                "2026-01-01T00:00:00.1Z",
                "2026-01-01T00:00:00z",
            })
    void odd_instants_are_those_of_the_jdk(String text) {
        assertThat(InstantText.parse(text)).isEqualTo(Instant.parse(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Z",
                "2026-02-30T00:00:00Z",
                "2026-13-01T00:00:00Z",
                "2026-00-01T00:00:00Z",
                "2026-01-00T00:00:00Z",
                "2026-01-01T25:00:00Z",
                "2026-01-01T00:60:00Z",
                "2026-01-01T00:00:61Z",
                "2026-01-01T00:00:00",
                "2026-01-01T00:00:00.1234567890Z",
                "2026-01-01T00:00:00.12x4Z",
                "2026-01-01 00:00:00Z",
                "2o26-01-01T00:00:00Z",
                "2026-01-01T00:00:00ZZ"
            })
    void what_is_no_instant_is_refused_as_the_jdk_does(String text) {
        assertThatThrownBy(() -> InstantText.parse(text)).isInstanceOf(DateTimeParseException.class);
        assertThatThrownBy(() -> Instant.parse(text)).isInstanceOf(DateTimeParseException.class);
    }
}
