package strawbed.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.CalfRecord;
import strawbed.entry.EntryGroup;
import strawbed.entry.FarmChoices;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.testkit.Barn;
import strawbed.testkit.SpokenSentence;
import strawbed.text.Messages;

/** What the pages show and what their keys do, without a window. The night is invented. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScreensTest {
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final Screens SCREENS = new Screens(MESSAGES, SpokenSentence.ZONE, FarmChoices.USUAL);

    private static Known known(Barn barn, Sign sign) {
        return StationPages.known(barn, MESSAGES, Choices.USUAL, sign, "");
    }

    private static List<Key> all(Screen screen) {
        return screen.body() instanceof Body.Choices choices
                ? java.util.stream.Stream.concat(choices.keys().stream(), screen.keys().stream())
                        .toList()
                : screen.keys();
    }

    private static Act act(Screen screen, String label) {
        return all(screen).stream()
                .filter(key -> key.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no key " + label + " among " + all(screen)))
                .act();
    }

    private static Screen follow(Screen screen, String label, Known known) {
        return SCREENS.of(((Act.Go) act(screen, label)).place(), known);
    }

    @Test
    void what_waits_has_the_calfs_number_yes_no_and_again_and_the_pedal_answers_it() {
        Barn barn = StationPages.busyNight().hears("calf twelve two quarts fed by bottle");
        Screen screen = SCREENS.of(new Place.Now(), known(barn, Sign.LISTENING));
        assertThat(screen.body()).isInstanceOfSatisfying(Body.Telling.class, telling -> {
            assertThat(telling.number()).isEqualTo("12");
            assertThat(telling.text()).contains("2 quarts");
        });
        assertThat(screen.keys()).extracting(Key::label).containsExactly("YES", "NO", "Again");
        assertThat(screen.confirm()).contains(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(screen.cancel()).contains(new Act.Order(Control.CANCEL_ENTRY));
    }

    @Test
    void what_is_not_whole_has_no_yes() {
        Barn barn = StationPages.busyNight().hears("calf twelve temperature");
        Screen screen = SCREENS.of(new Place.Now(), known(barn, Sign.LISTENING));
        assertThat(screen.keys()).extracting(Key::label).containsExactly("NO", "Again");
        assertThat(screen.confirm()).isEmpty();
    }

    @Test
    void undo_is_one_key_away_and_stays_in_its_place_when_a_task_becomes_late() {
        Known known = known(StationPages.busyNight(), Sign.LISTENING);
        Screen screen = SCREENS.of(new Place.Now(), known);
        assertThat(act(screen, "Undo")).isEqualTo(new Act.Order(Control.UNDO_LAST_ENTRY));
        assertThat(act(screen, "Put off")).isEqualTo(new Act.Order(Control.PUT_IT_OFF));
        assertThat(screen.body())
                .isInstanceOfSatisfying(
                        Body.Ready.class,
                        ready -> assertThat(ready.due())
                                .anySatisfy(row -> assertThat(row.pressing()).isTrue()));
    }

    @Test
    void each_sign_has_a_word_and_a_paused_recorder_a_key_that_wakes_it() {
        for (Sign sign : Sign.values()) {
            Screen screen = SCREENS.of(new Place.Now(), known(StationPages.busyNight(), sign));
            assertThat(screen.signWord()).isEqualTo(MESSAGES.word(sign)).isNotBlank();
        }
        Screen paused = SCREENS.of(new Place.Now(), known(StationPages.busyNight(), Sign.PAUSED));
        assertThat(act(paused, "Wake up")).isEqualTo(new Act.Order(Control.WAKE_UP_RECORDER));
    }

    @Test
    void a_station_that_cannot_begin_says_that_it_stopped_and_why() {
        Screen screen = Screens.failed(MESSAGES, "The record is open already. Close the other one first.");

        assertThat(screen.signWord()).isEqualTo("STOPPED");
        assertThat(screen.body())
                .isEqualTo(new Body.Telling("", "The record is open already. Close the other one first."));
        assertThat(act(screen, "End Strawbed")).isEqualTo(new Act.Quit());
    }

    @Test
    void a_calf_is_entered_by_its_number_by_its_dam_or_as_it_stands_on_the_list() {
        Barn barn = StationPages.busyNight();
        barn.hears("new calf bull");
        barn.hears("confirm entry");
        Known known = known(barn, Sign.LISTENING);
        Screen whose = follow(SCREENS.of(new Place.Now(), known), "By hand", known);
        List<CalfReference> references = java.util.stream.IntStream.range(0, 2)
                .mapToObj(page -> SCREENS.of(new Place.WhoseFacts(page, Optional.empty()), known))
                .flatMap(page -> all(page).stream())
                .map(Key::act)
                .filter(act -> act instanceof Act.Go go && go.place() instanceof Place.Entering)
                .map(act -> ((Place.Entering) ((Act.Go) act).place()).draft().calf())
                .toList();
        CalfRecord nameless = known.herd().calves().stream()
                .filter(calf -> calf.number().isEmpty() && calf.dam().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(whose.isNear()).isTrue();
        assertThat(references)
                .contains(
                        new CalfReference.Numbered("12"),
                        new CalfReference.OfCow("212", null),
                        new CalfReference.Listed(nameless.id()));
    }

    @Test
    void a_name_is_written_by_two_keys_a_letter() {
        Known known = known(StationPages.busyNight(), Sign.LISTENING);
        Screen page = SCREENS.of(new Place.NewOperator("", ""), known);
        for (String[] keys : new String[][] {{"A B C", "A"}, {"M N O", "n"}, {"A B C", "a"}}) {
            page = follow(follow(page, keys[0], known), keys[1], known);
        }
        assertThat(page.heading()).isEqualTo("Ana");
        Screen spaced = follow(page, "Space", known);
        assertThat(all(follow(spaced, "A B C", known))).extracting(Key::label).contains("B");
        assertThat(act(page, "OK")).isEqualTo(new Act.AddOperator("Ana"));
        assertThat(follow(page, "Delete", known).heading()).isEqualTo("An");
    }

    @Test
    void what_is_spoken_is_marked_and_a_press_changes_it() {
        Known known = known(StationPages.busyNight(), Sign.LISTENING);
        Screen voice = SCREENS.of(new Place.Voice(), known);
        assertThat(act(voice, "Navel")).isEqualTo(new Act.Speak(EntryGroup.NAVEL, false));
        assertThat(all(voice))
                .filteredOn(key -> key.label().equals("Navel"))
                .extracting(Key::rank)
                .containsExactly(Rank.CHOSEN);
        assertThat(act(voice, "Voice")).isEqualTo(new Act.Set("voice", "off"));
    }

    @Test
    void a_place_whose_calf_is_gone_shows_what_is_now() {
        Known known = known(StationPages.busyNight(), Sign.LISTENING);
        Place gone = new Place.OneCalf(new strawbed.event.CalfId(new java.util.UUID(1, 2)), 0);
        assertThat(SCREENS.of(gone, known)).isEqualTo(SCREENS.of(new Place.Now(), known));
    }
}
