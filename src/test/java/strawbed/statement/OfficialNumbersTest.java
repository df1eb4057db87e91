package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.testkit.Listener;
import strawbed.testkit.NumberWords;

/**
 * Official numbers: ISO 11784 (three digits of country or maker, twelve of the animal in 38 bits); US numbers are 840
 * and twelve digits (USDA notice 2008; APHIS Traceability General Standards 2.8, 2019). The numbers are our own.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OfficialNumbersTest {
    @ParameterizedTest
    @ValueSource(strings = {"840003123456789", "840000000000000", "982000123456789", "124000987654321"})
    void a_number_of_fifteen_digits_is_good(String number) {
        assertThat(Doubts.fault(number)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"84000312345678", "8400031234567890", "84000312", ""})
    void another_length_is_not_official(String number) {
        assertThat(Doubts.fault(number)).contains(Doubt.TagFault.NOT_FIFTEEN_DIGITS);
    }

    /** 2^38 - 1 = 274,877,906,943 by arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "840274877906943, ",
        "840274877906944, NATIONAL_PART_TOO_LARGE",
        "840999999999999, NATIONAL_PART_TOO_LARGE"
    })
    void the_national_part_fits_38_bits(String number, Doubt.TagFault fault) {
        assertThat(Doubts.fault(number)).isEqualTo(Optional.ofNullable(fault));
    }

    /** 999 is the code for tests; from the open documentation of number converters. */
    @Test
    void nine_nine_nine_is_a_test_code() {
        assertThat(Doubts.fault("999123456789012")).contains(Doubt.TagFault.TEST_CODE);
        assertThat(Doubts.fault("998123456789012")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "84000312345678, NOT_FIFTEEN_DIGITS",
        "840274877906944, NATIONAL_PART_TOO_LARGE",
        "999123456789012, TEST_CODE"
    })
    void a_bad_number_is_asked_about_when_it_is_said(String number, Doubt.TagFault fault) {
        String words =
                number.chars().mapToObj(digit -> NumberWords.of(digit - '0')).collect(Collectors.joining(" "));

        assertThat(Listener.onTheTablesFarm().doubts("calf twelve official tag " + words))
                .containsExactly(new Doubt.BadTag(number, fault));
    }
}
