package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The worked examples of outcomes, shares and times, each with its source beside it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OutcomeExamplesTest {
    private static final String SHOWN = "{0}: {1} -> {2} ({3})";

    @ParameterizedTest(name = SHOWN)
    @CsvFileSource(resources = "/passive-immunity.csv", numLinesToSkip = 1)
    void passive_immunity_is_told_as_published(String id, String input, String expected, String source, String flag) {
        check(id, input, expected, source, flag);
    }

    @ParameterizedTest(name = SHOWN)
    @CsvFileSource(resources = "/herd-shares.csv", numLinesToSkip = 1)
    void the_herds_shares_are_told_as_published(String id, String input, String expected, String source, String flag) {
        check(id, input, expected, source, flag);
    }

    @ParameterizedTest(name = SHOWN)
    @CsvFileSource(resources = "/birth-outcome.csv", numLinesToSkip = 1)
    void births_are_counted_as_defined(String id, String input, String expected, String source, String flag) {
        check(id, input, expected, source, flag);
    }

    @ParameterizedTest(name = SHOWN)
    @CsvFileSource(resources = "/vigour.csv", numLinesToSkip = 1)
    void signs_are_normal_as_published(String id, String input, String expected, String source, String flag) {
        check(id, input, expected, source, flag);
    }

    @ParameterizedTest(name = SHOWN)
    @CsvFileSource(resources = "/times.csv", numLinesToSkip = 1)
    void times_are_counted_between_instants(String id, String input, String expected, String source, String flag) {
        check(id, input, expected, source, flag);
    }

    private static void check(String id, String input, String expected, String source, String flag) {
        assertThat(OutcomeStory.answer(input)).as("%s, %s", id, source).isEqualTo(expected);
        assertThat(source).as("the source of %s", id).isNotBlank();
        assertThat(flag).as("the flag of %s", id).isIn("P", "P2", "D", "C");
    }
}
