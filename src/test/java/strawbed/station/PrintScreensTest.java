package strawbed.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.entry.FarmChoices;
import strawbed.testkit.Barn;
import strawbed.testkit.SpokenSentence;
import strawbed.text.Messages;

/** The pages of what waits to be printed: which keys there are, and what they do. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrintScreensTest {
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final Screens SCREENS = new Screens(MESSAGES, SpokenSentence.ZONE, FarmChoices.USUAL);
    private static final Act TO_THE_LIST = new Act.Go(new Place.Prints(0));

    private static final Known NIGHT = StationPages.known(Barn.with("12"), MESSAGES, Choices.USUAL, Sign.LISTENING, "");

    private static final Paper WAITING =
            new Paper(3, "the card of calf 12", "CARDS", PaperState.WAITING, "The printer CARDS is paused.");
    private static final Paper HANDED_OVER = new Paper(2, "the handover sheet", "OFFICE", PaperState.HANDED_OVER, "");
    private static final Paper GIVEN_UP = new Paper(1, "the card of calf 5", "CARDS", PaperState.GIVEN_UP, "");

    private static Known known(String note, String trouble, List<Paper> papers) {
        return new Known(
                NIGHT.herd(),
                NIGHT.now(),
                NIGHT.sign(),
                note,
                NIGHT.operator(),
                NIGHT.pending(),
                NIGHT.named(),
                NIGHT.told(),
                NIGHT.asked(),
                NIGHT.due(),
                NIGHT.open(),
                NIGHT.canPutOff(),
                NIGHT.microphones(),
                new Papers(papers, trouble),
                NIGHT.keyNames(),
                NIGHT.choices());
    }

    private static Screen screen(Place place, Paper... papers) {
        return SCREENS.of(place, known("", "", List.of(papers)));
    }

    private static Key prints(Paper... papers) {
        return StationPages.keys(screen(new Place.More(), papers)).stream()
                .filter(key -> key.act().equals(TO_THE_LIST))
                .findFirst()
                .orElseThrow();
    }

    private static String said(Screen screen) {
        return screen.body() instanceof Body.Telling telling
                ? telling.text()
                : screen.body().toString();
    }

    @Test
    void more_tells_how_many_wait_and_nothing_where_none_does() {
        assertThat(prints(WAITING, HANDED_OVER, GIVEN_UP))
                .isEqualTo(new Key("Prints", "1 waiting", Rank.USUAL, TO_THE_LIST));
        assertThat(prints(HANDED_OVER, GIVEN_UP).detail()).isEmpty();
        assertThat(prints().detail()).isEmpty();
    }

    @Test
    void the_list_tells_what_each_is_and_how_far_it_came() {
        Screen list = screen(new Place.Prints(0), WAITING, HANDED_OVER, GIVEN_UP);
        assertThat(list.body())
                .isEqualTo(new Body.Choices(List.of(
                        new Key("Calf 12", "waits", Rank.USUAL, new Act.Go(new Place.OnePrint(3))),
                        new Key("Sheet", "handed over", Rank.USUAL, new Act.Go(new Place.OnePrint(2))),
                        new Key("Calf 5", "given up", Rank.USUAL, new Act.Go(new Place.OnePrint(1))))));
        assertThat(list.keys()).containsExactly(Key.of("Back", Rank.USUAL, new Act.Go(new Place.More())));
        assertThat(screen(new Place.Prints(0)).heading()).isEqualTo("Nothing on its way to the printer");
    }

    @ParameterizedTest
    @CsvSource({
        "the card of second calf of cow 4123, Cow 4123",
        "the crib sheet, Crib sheet",
        "Unbrokenandverylong, Unbrokenan...",
        "of, Of"
    })
    void a_key_has_the_last_words_of_what_it_is(String what, String label) {
        Paper paper = new Paper(1, what, "CARDS", PaperState.WAITING, "");
        assertThat(StationPages.keys(screen(new Place.Prints(0), paper)).get(0).label())
                .isEqualTo(label);
    }

    @Test
    void a_long_list_has_pages() {
        List<Paper> many = new ArrayList<>();
        for (int number = 1; number <= Frame.PAGE + 1; number++) {
            many.add(new Paper(number, "page", "CARDS", PaperState.HANDED_OVER, ""));
        }
        Paper[] papers = many.toArray(new Paper[0]);
        Body.Choices first = (Body.Choices) screen(new Place.Prints(0), papers).body();
        assertThat(first.keys())
                .hasSize(Frame.PAGE)
                .last()
                .isEqualTo(new Key("Next page", "1/2", Rank.USUAL, new Act.Go(new Place.Prints(1))));
        Body.Choices second = (Body.Choices) screen(new Place.Prints(1), papers).body();
        assertThat(second.keys()).hasSize(3).last().extracting(Key::act).isEqualTo(TO_THE_LIST);
    }

    @Test
    void one_that_waits_says_why_and_is_tried_again_or_given_up() {
        Screen one = screen(new Place.OnePrint(3), WAITING);
        assertThat(one.heading()).isEqualTo("The card of calf 12");
        assertThat(said(one)).isEqualTo("It waits for the printer CARDS. The printer CARDS is paused.");
        assertThat(one.keys())
                .containsExactly(
                        Key.of("Back", Rank.USUAL, TO_THE_LIST),
                        Key.of("Try again", Rank.USUAL, new Act.OfPaper(3, PaperStep.TRY)),
                        Key.of("Give up", Rank.NO, new Act.OfPaper(3, PaperStep.GIVE_UP)));
    }

    @Test
    void one_that_waits_no_longer_can_be_printed_again() {
        Screen gone = screen(new Place.OnePrint(2), WAITING, HANDED_OVER);
        assertThat(said(gone))
                .isEqualTo("It was handed over to the printer OFFICE. More is not known: look at the paper.");
        assertThat(gone.keys())
                .containsExactly(
                        Key.of("Back", Rank.USUAL, TO_THE_LIST),
                        Key.of("Print again", Rank.USUAL, new Act.OfPaper(2, PaperStep.AGAIN)));
        Screen dropped = screen(new Place.OnePrint(1), GIVEN_UP);
        assertThat(said(dropped)).startsWith("It was given up");
        assertThat(dropped.keys())
                .last()
                .isEqualTo(Key.of("Print again", Rank.USUAL, new Act.OfPaper(1, PaperStep.AGAIN)));
    }

    @Test
    void one_that_is_gone_gives_place_to_the_list() {
        assertThat(screen(new Place.OnePrint(9), WAITING)).isEqualTo(screen(new Place.Prints(0), WAITING));
    }

    @Test
    void what_is_wrong_with_the_list_is_told_but_news_go_before_it() {
        Place list = new Place.Prints(0);
        assertThat(SCREENS.of(list, known("", "It cannot be read.", List.of())).note())
                .isEqualTo("It cannot be read.");
        assertThat(SCREENS.of(list, known("Handed over.", "It cannot be read.", List.of()))
                        .note())
                .isEqualTo("Handed over.");
    }
}
