package strawbed.entry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.statement.Statement;
import strawbed.testkit.Listener;

/** How many presses common entries take: after the calf was picked, before all is confirmed by one press. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PressesTest {
    private static final Listener LISTENER = Listener.onTheTablesFarm();

    @ParameterizedTest
    @CsvSource({
        "calf twelve heifer, 2",
        "calf twelve born, 2",
        "calf twelve born ten minutes ago, 3",
        "calf twelve born twenty minutes ago, 6",
        "calf twelve born between two and four, 12",
        "calf twelve stillborn, 2",
        "calf twelve unassisted, 3",
        "calf twelve calving ease three, 3",
        "calf twelve breathing well, 3",
        "calf twelve standing, 3",
        "calf twelve licked, 2",
        "calf twelve dried with towel, 3",
        "calf twelve navel dipped, 2",
        "calf twelve navel dipped with iodine, 3",
        "calf twelve navel dipped with iodine seven percent, 4",
        "calf twelve navel dipped ten minutes ago, 4",
        "calf twelve fed three quarts, 3",
        "calf twelve fed three quarts by bottle, 4",
        "calf twelve fed three and a half quarts by bottle, 4",
        "calf twelve fed three and a quarter quarts, 5",
        "calf twelve fed two liters by tube warmed to one oh two, 7",
        "calf twelve brix twenty four point five, 7",
        "calf twelve colostrum from cow four one seven, 7",
        "calf twelve nursed the dam, 2",
        "calf twelve temperature one oh one point five, 8",
        "calf twelve temperature thirty eight point six, 7",
        "calf twelve weight eighty eight pounds by tape, 6",
        "calf twelve tag four one two seven, 7",
        "calf twelve moved to hutch six, 5",
        "calf twelve dam parity three, 3",
        "calf twelve vet called, 2",
        "calf twelve heifer navel dipped three quarts fed, 7",
        "barn forty degrees humidity eighty, 7",
        "batch seven six quarts brix twenty four frozen, 9",
    })
    void a_common_entry_takes_few_presses(String words, int presses) {
        Presser presser = new Presser(LISTENER.speech());
        Statement spoken = new Statement(
                ((strawbed.statement.Interpretation.Understood) LISTENER.hears(words))
                        .statement()
                        .calf(),
                LISTENER.facts(words));

        assertThat(presser.enter(spoken)).contains(spoken);
        assertThat(presser.presses()).isEqualTo(presses);
    }

    @Test
    void no_page_has_more_than_twelve_buttons() {
        assertThat(EntryGroup.values()).hasSizeLessThanOrEqualTo(12);
        for (EntryGroup group : EntryGroup.values()) {
            assertThat(group.kinds()).as(group.name()).isNotEmpty().hasSizeLessThanOrEqualTo(12);
        }
        for (EntryKind kind : EntryKind.values()) {
            assertThat(kind.steps(FarmChoices.USUAL))
                    .extracting(Asked::step)
                    .filteredOn(Step.Choose.class::isInstance)
                    .allSatisfy(
                            step -> assertThat(((Step.Choose) step).options().size() + (step.mayBeLeftOut() ? 1 : 0))
                                    .as(kind.name())
                                    .isLessThanOrEqualTo(12));
        }
    }
}
