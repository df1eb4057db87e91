package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.care.BirthPeriod;
import strawbed.care.Figure;
import strawbed.care.FirstFeedAges;
import strawbed.care.HerdFigures;
import strawbed.care.HerdImmunity;
import strawbed.care.ImmunityCategory;
import strawbed.care.WhyNot;

/**
 * The herd's figures as they are told. The wording is our own; the intervals are values of Wilson 1927 (9 of 20: 25.8 to
 * 65.8 %), the goal is that of Lombard 2020.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdPhrasesTest {
    private static final BirthPeriod PERIOD =
            new BirthPeriod(Instant.parse("2026-02-01T00:00:00Z"), Instant.parse("2026-03-03T00:00:00Z"));
    private static final HerdPhrases PHRASES = new HerdPhrases(new Messages(Locale.US), ZoneOffset.UTC);

    @Test
    void few_are_counted_and_many_have_a_share_with_its_interval() {
        Map<String, String> lines =
                PHRASES.lines(figures(new Figure(2, 7, 0, 0), new Figure(9, 20, 3, 0)), immunity(Map.of(), Map.of()));
        assertThat(lines)
                .containsEntry("Born", "60")
                .containsEntry("Stillborn", "2 of 7")
                .containsEntry("First fed within 4 h", "9 of 20, 45 % (25.8 to 65.8); 3 not known")
                .containsEntry("Hours to first feed", "median 1.8, mean 3.3")
                .containsEntry("Passive immunity", "no calf tested");
    }

    @Test
    void immunity_has_no_verdict_from_few_calves() {
        assertThat(PHRASES.lines(
                        figures(NOTHING, NOTHING),
                        immunity(Map.of(ImmunityCategory.GOOD, 11), Map.of(WhyNot.NO_SAMPLE, 4))))
                .containsEntry("Passive immunity", "11 tested, too few to judge: 12 are needed; 4 not counted");
    }

    @Test
    void the_goal_is_met_or_not_with_all_shares() {
        Map<ImmunityCategory, Integer> met = Map.of(
                ImmunityCategory.EXCELLENT,
                9,
                ImmunityCategory.GOOD,
                6,
                ImmunityCategory.FAIR,
                4,
                ImmunityCategory.POOR,
                1);
        assertThat(PHRASES.lines(figures(NOTHING, NOTHING), immunity(met, Map.of()))
                        .get("Passive immunity"))
                .startsWith("excellent 45 % (25.8 to 65.8), good 30 %")
                .endsWith("; goal met");
        Map<ImmunityCategory, Integer> missed = Map.of(
                ImmunityCategory.EXCELLENT,
                8,
                ImmunityCategory.GOOD,
                6,
                ImmunityCategory.FAIR,
                4,
                ImmunityCategory.POOR,
                2);
        assertThat(PHRASES.lines(figures(NOTHING, NOTHING), immunity(missed, Map.of()))
                        .get("Passive immunity"))
                .endsWith("; goal not met");
    }

    @Test
    void no_poor_calf_among_twelve_says_how_little_it_means() {
        assertThat(PHRASES.why(immunity(Map.of(ImmunityCategory.EXCELLENT, 12), Map.of())))
                .contains("If one calf in ten were poor, 12 calves would still show none in 28 percent of cases.");
        assertThat(PHRASES.why(immunity(Map.of(ImmunityCategory.POOR, 12), Map.of())))
                .hasSize(1);
        assertThat(PHRASES.why(immunity(Map.of(), Map.of()))).hasSize(1);
    }

    private static final Figure NOTHING = new Figure(0, 0, 0, 0);

    private static HerdFigures figures(Figure stillborn, Figure fed) {
        FirstFeedAges ages = new FirstFeedAges(
                List.of(Duration.ofMinutes(45), Duration.ofMinutes(90), Duration.ofHours(2), Duration.ofHours(9)),
                0,
                0);
        return new HerdFigures(PERIOD, 60, fed, ages, stillborn, 0, NOTHING, NOTHING, 0, NOTHING);
    }

    private static HerdImmunity immunity(Map<ImmunityCategory, Integer> counts, Map<WhyNot, Integer> leftOut) {
        return new HerdImmunity(PERIOD, counts, leftOut, 0, 0, 12);
    }
}
