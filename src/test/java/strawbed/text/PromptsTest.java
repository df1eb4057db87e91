package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.care.Caution;
import strawbed.care.Contradiction;
import strawbed.care.Plausibility;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.dialog.Target;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.statement.CalfReference;
import strawbed.statement.Doubt;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;

/** What people see and hear in the pen. The wording is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PromptsTest {
    /** 04:40 on the farm. */
    private static final Instant NOW = Instant.parse("2026-11-24T10:40:00Z");

    private static final Prompts PROMPTS =
            new Prompts(new Messages(Locale.US), ZoneId.of("America/Chicago"), Clock.fixed(NOW, ZoneOffset.UTC));
    private static final String TEACH = " Confirm? Say confirm entry, or cancel entry.";
    private static final Event HEIFER = new Event.SexNoted(Term.Sex.FEMALE);
    private static final Event DIPPED = new Event.NavelDipped(null, null);
    private static final CalfReference CALF_417 = new CalfReference.Numbered("417");

    @Test
    void facts_are_read_back_with_their_calf() {
        Pending pending = said(CALF_417, known("417"), List.of(), HEIFER, DIPPED, fed("3"));
        assertThat(shown(pending)).isEqualTo("Calf 417: heifer; navel dipped; 3 quarts fed." + TEACH);
        assertThat(PROMPTS.spoken(new Prompt.ReadBack(pending)))
                .isEqualTo("Calf four one seven, heifer, navel dipped, three quarts fed. Confirm?");
    }

    @Test
    void a_time_that_was_said_is_read_back_both_ways() {
        Pending one = pending(CALF_417, known("417"), List.of(), List.of(ago(fed("3"), 10)));
        assertThat(shown(one)).isEqualTo("Calf 417: 3 quarts fed (10 minutes ago, 04:30)." + TEACH);
        assertThat(PROMPTS.spoken(new Prompt.ReadBack(one)))
                .isEqualTo("Calf four one seven, three quarts fed, ten minutes ago, four thirty. Confirm?");
        Pending two = pending(CALF_417, known("417"), List.of(), List.of(ago(DIPPED, 10), ago(fed("3"), 10)));
        assertThat(shown(two)).isEqualTo("Calf 417: navel dipped; 3 quarts fed; 10 minutes ago, 04:30." + TEACH);
    }

    @Test
    void a_calf_that_is_not_listed_is_opened_on_a_yes() {
        Pending pending = said(
                new CalfReference.Numbered("512"), opened("512", null), List.of(new Doubt.NotListed("512")), HEIFER);
        assertThat(shown(pending)).isEqualTo("Calf 512 is not on the list. Open it as a new calf: heifer." + TEACH);
        assertThat(PROMPTS.spoken(new Prompt.Ask(pending)))
                .isEqualTo("Calf five one two is not on the list. Open it as a new calf, heifer. Confirm?");
    }

    @Test
    void an_opened_calf_is_not_named_twice() {
        Pending pending = said(
                new CalfReference.New("512", "417"),
                opened("512", "417"),
                List.of(),
                new Event.CalfOpened("512", "417"),
                HEIFER);
        assertThat(shown(pending)).isEqualTo("New calf 512 of cow 417: heifer." + TEACH);
    }

    @Test
    void words_that_sound_alike_are_named() {
        Provenance heard = provenance("calf", "four", "seventeen", "heifer");
        Doubt doubt = new Doubt.SoundsLike(List.of("calf", "four", "seventy", "heifer"));
        Pending pending =
                new Pending(new Statement(CALF_417, List.of(now(HEIFER))), known("417"), List.of(doubt), heard);
        assertThat(shown(pending)).isEqualTo("Heard “seventeen”, but it could be “seventy”. Calf 417: heifer." + TEACH);
    }

    @Test
    void a_word_that_only_one_reading_has_is_named_with_its_neighbour() {
        assertThat(DoubtPhrases.WordDifference.between(
                        List.of("fed", "three", "quarts"), List.of("fed", "three", "and", "quarts")))
                .isEqualTo(new DoubtPhrases.WordDifference("three", "three and"));
        assertThat(DoubtPhrases.WordDifference.between(List.of("heifer"), List.of("a", "heifer")))
                .isEqualTo(new DoubtPhrases.WordDifference("heifer", "a heifer"));
    }

    @Test
    void two_meanings_are_both_told() {
        Statement first = new Statement(CALF_417, List.of(now(HEIFER)));
        Statement second = new Statement(CALF_417, List.of(now(DIPPED)));
        Pending pending =
                new Pending(first, known("417"), List.of(new Doubt.Ambiguous(List.of(first, second))), provenance());
        assertThat(shown(pending))
                .isEqualTo("This can mean two things. First: Calf 417: heifer. Or: Calf 417: navel dipped."
                        + " Confirm saves the first." + TEACH);
    }

    @Test
    void an_unfinished_sentence_is_asked_for_its_end() {
        Pending pending = said(new CalfReference.Numbered("12"), known("12"), List.of(new Doubt.Incomplete()));
        assertThat(shown(pending)).isEqualTo("Calf 12, and then?");
        assertThat(PROMPTS.spoken(new Prompt.Ask(pending))).isEqualTo("Calf one two, and then?");
        assertThat(PROMPTS.shown(new Prompt.CannotConfirm(pending))).isEqualTo("Not saved yet. Calf 12, and then?");
    }

    /** 6 L are 6.34 US quarts: NIST Handbook 44, Appendix C. 70 kg are 154.3 pounds, 43 °C are 109.4 °F. */
    @Test
    void an_unusual_figure_is_asked_about_in_the_unit_that_was_said() {
        assertThat(odd(fed("15")))
                .startsWith("15 quarts is more than usual (0 to 6.3 quarts). Calf 417: 15 quarts fed.");
        assertThat(odd(new Event.CalfWeighed(new Mass(new BigDecimal(200), MassUnit.POUND), null)))
                .startsWith("A weight of 200 pounds is more than usual (33.1 to 154.3 pounds).");
        assertThat(odd(new Event.TemperatureTaken(new Temperature(new BigDecimal(112), TemperatureUnit.FAHRENHEIT))))
                .startsWith("A temperature of 112 °F is more than usual (89.6 to 109.4 °F).");
        assertThat(odd(new Event.ColostrumTestedByBrix(new BigDecimal(5))))
                .startsWith("Colostrum Brix 5 percent is less than usual (8.5 to 35.4 percent).");
    }

    @Test
    void every_unusual_figure_has_its_words() {
        BigDecimal wild = new BigDecimal(999);
        Temperature hot = new Temperature(wild, TemperatureUnit.CELSIUS);
        List<Event> odd = List.of(
                new Event.ColostrumTestedByHydrometer(wild, hot),
                new Event.ColostrumFed(new Volume(wild, VolumeUnit.LITRE), null, hot),
                new Event.SerumTested(Term.SerumMeasure.BRIX, wild, null),
                new Event.SerumTested(Term.SerumMeasure.PROTEIN, wild, null),
                new Event.CalfWeighed(new Mass(wild, MassUnit.KILOGRAM), null),
                new Event.TemperatureTaken(hot),
                new Event.HeartRateCounted(999),
                new Event.BreathingRateCounted(999),
                new Event.NavelDipped(null, wild),
                new Event.BarnClimateNoted(hot, wild),
                new Event.ColostrumTestedByBrix(wild));
        assertThat(odd)
                .allSatisfy(event ->
                        assertThat(odd(event)).contains("is more than usual (").contains("999"));
    }

    @Test
    void every_doubt_has_its_sentence() {
        Instant yesterday = Instant.parse("2026-11-23T20:00:00Z");
        List<Doubt> doubts = List.of(
                new Doubt.NotListed("512"),
                new Doubt.AlreadyOpen("512"),
                new Doubt.NoCalfOfCow("212"),
                new Doubt.NoSameCalf(),
                new Doubt.Incomplete(),
                new Doubt.Ambiguous(List.of(
                        new Statement(CALF_417, List.of(now(HEIFER))), new Statement(CALF_417, List.of(now(DIPPED))))),
                new Doubt.SoundsLike(List.of("calf", "twelve")),
                new Doubt.Unclear(),
                new Doubt.UnknownScale(new BigDecimal(35)),
                new Doubt.LongAgo(yesterday),
                new Doubt.Implausible("humidity", new BigDecimal(120), "%", BigDecimal.ZERO, new BigDecimal(100)),
                new Doubt.BadTag("84000312345678", Doubt.TagFault.NOT_FIFTEEN_DIGITS),
                new Doubt.Contradicts(new Contradiction.BeforeBirth(yesterday, yesterday.plusSeconds(600))),
                new Doubt.NoFeedToAmend());
        assertThat(doubts.stream().<Object>map(Object::getClass))
                .containsExactlyInAnyOrder((Object[]) Doubt.class.getPermittedSubclasses());
        String plain = shown(said(CALF_417, known("417"), List.of(), HEIFER));
        assertThat(doubts)
                .allSatisfy(doubt -> assertThat(shown(said(CALF_417, known("417"), List.of(doubt), HEIFER)))
                        .isNotEqualTo(plain)
                        .matches(".*[.?] .*|.*\\?"));
        assertThat(asked(new Doubt.LongAgo(yesterday)))
                .startsWith("That is 14 hours 40 minutes ago, yesterday 14:00. ");
        assertThat(asked(new Doubt.Contradicts(new Contradiction.BeforeBirth(yesterday, yesterday.plusSeconds(600)))))
                .startsWith("That is yesterday 14:00, before the birth (yesterday 14:10). ");
        assertThat(asked(new Doubt.Contradicts(new Contradiction.SecondBirth(yesterday, yesterday.plusSeconds(600)))))
                .startsWith("Birth on record: yesterday 14:00. Confirm changes it to yesterday 14:10. ");
        assertThat(asked(new Doubt.Contradicts(new Contradiction.LaterThanNow(yesterday))))
                .startsWith("A time ahead, yesterday 14:00. Check the clock. ");
        assertThat(asked(new Doubt.UnknownScale(new BigDecimal(35))))
                .startsWith("35 degrees: Fahrenheit or Celsius was not said. ");
        assertThat(asked(new Doubt.BadTag("84000312345678", Doubt.TagFault.NOT_FIFTEEN_DIGITS)))
                .startsWith("Tag 84000312345678: an official number has 15 digits, this one has 14. ");
    }

    @Test
    void a_calf_that_cannot_be_told_is_asked_for_and_nothing_is_offered_to_confirm() {
        CalfReference ofCow = new CalfReference.OfCow("417", null);
        Pending twins = said(ofCow, new Target.Unknown(Target.Reason.FIRST_OR_SECOND), List.of(), HEIFER);
        assertThat(shown(twins))
                .isEqualTo("Cow 417 has more than one calf. Say first calf, or second calf, of cow 417.");
        Pending same = said(
                new CalfReference.Same(),
                new Target.Unknown(Target.Reason.NO_CALF_NAMED_BEFORE),
                List.of(new Doubt.NoSameCalf()),
                HEIFER);
        assertThat(shown(same)).isEqualTo("No calf was named before. Say it again with the calf's number.");
    }

    @Test
    void saved_and_not_saved_cannot_be_mixed_up() {
        assertThat(PROMPTS.shown(new Prompt.Saved(2, "417"))).isEqualTo("Saved. Calf 417.");
        assertThat(PROMPTS.spoken(new Prompt.Saved(2, "417"))).isEqualTo("Saved. Calf four one seven.");
        assertThat(PROMPTS.shown(new Prompt.NotSaved("the disk is full")))
                .isEqualTo("NOT SAVED: the disk is full. Say confirm entry to try again.");
        assertThat(PROMPTS.spoken(new Prompt.NotSaved("The disk is full.")))
                .isEqualTo("Not saved! Not saved! The disk is full.");
    }

    /** "Never hang it by the hind legs": common practice, no published source. */
    @Test
    void a_warning_says_what_to_do() {
        assertThat(PROMPTS.spoken(new Prompt.Warn(Caution.NOT_BREATHING)))
                .contains("straw")
                .contains("Never hang the calf by its hind legs")
                .contains("veterinarian");
        assertThat(PROMPTS.caution(Caution.FREEMARTIN))
                .contains("more than 9 in 10")
                .doesNotContain("sterile");
        assertThat(Caution.values())
                .allSatisfy(caution ->
                        assertThat(PROMPTS.spoken(new Prompt.Warn(caution))).doesNotContainPattern("\\d"));
    }

    @Test
    void every_prompt_has_words_and_the_voice_meets_no_digit() {
        Pending pending = said(CALF_417, known("417"), List.of(), HEIFER, fed("3.5"));
        List<Prompt> all = List.of(
                new Prompt.ReadBack(pending),
                new Prompt.Ask(pending),
                new Prompt.Warn(Caution.COLD),
                new Prompt.Saved(1, null),
                new Prompt.NotSaved("no room"),
                new Prompt.NotKept("no room"),
                new Prompt.Cancelled(),
                new Prompt.Undone(2),
                new Prompt.KeptOpen(),
                new Prompt.NotUnderstood(),
                new Prompt.NothingPending(),
                new Prompt.NothingToUndo(),
                new Prompt.CannotConfirm(pending),
                new Prompt.NoSuchCalf(),
                new Prompt.TellDue(),
                new Prompt.TellCalf(Told.calf("A")),
                new Prompt.PrintCard(Told.calf("A")),
                new Prompt.CardWritten(Told.calf("A"), "cards/card-12.pdf", "no room on drive 2"),
                new Prompt.CardNotWritten("no room on drive 2"),
                new Prompt.NothingToPutOff(),
                new Prompt.Noticed(new Event.ClockChanged(Instant.EPOCH, Instant.EPOCH.minusSeconds(90))),
                new Prompt.Paused(),
                new Prompt.Awake());
        assertThat(all.stream().<Object>map(Object::getClass))
                .containsExactlyInAnyOrder((Object[]) Prompt.class.getPermittedSubclasses());
        assertThat(all).allSatisfy(prompt -> {
            assertThat(PROMPTS.shown(prompt)).isNotBlank();
            assertThat(PROMPTS.spoken(prompt)).isNotBlank().doesNotContainPattern("[0-9°]");
        });
    }

    @Test
    void a_card_that_the_record_does_not_know_of_is_told_to_be_a_copy() {
        assertThat(PROMPTS.shown(new Prompt.CardWritten(Told.calf("A"), "cards/card-calf-12.pdf", null)))
                .isEqualTo("Card written: cards/card-calf-12.pdf");
        assertThat(PROMPTS.shown(new Prompt.CardWritten(Told.calf("A"), "card.pdf", "the disk is full")))
                .isEqualTo("Card written as a copy: card.pdf It is not noted in the record: the disk is full.");
    }

    private static String odd(Event event) {
        List<Doubt> doubts = Plausibility.of(event).stream()
                .<Doubt>map(oddity -> new Doubt.Implausible(
                        oddity.quantity(), oddity.value(), oddity.unit(), oddity.low(), oddity.high()))
                .toList();
        assertThat(doubts).isNotEmpty();
        return shown(said(CALF_417, known("417"), doubts, event));
    }

    private static String asked(Doubt doubt) {
        return shown(said(CALF_417, known("417"), List.of(doubt), HEIFER));
    }

    private static String shown(Pending pending) {
        return PROMPTS.shown(new Prompt.Ask(pending));
    }

    private static Pending said(CalfReference calf, Target target, List<Doubt> doubts, Event... events) {
        return pending(
                calf,
                target,
                doubts,
                Arrays.stream(events).map(PromptsTest::now).toList());
    }

    private static Pending pending(CalfReference calf, Target target, List<Doubt> doubts, List<SaidFact> facts) {
        return new Pending(new Statement(calf, facts), target, doubts, provenance("calf", "ten"));
    }

    private static SaidFact now(Event event) {
        return new SaidFact(event, NOW, false);
    }

    private static SaidFact ago(Event event, int minutes) {
        return new SaidFact(event, NOW.minus(Duration.ofMinutes(minutes)), true);
    }

    private static Event fed(String quarts) {
        return new Event.ColostrumFed(new Volume(new BigDecimal(quarts), VolumeUnit.QUART), null, null);
    }

    private static Target known(String number) {
        return new Target.Known(Told.calf("A"), number);
    }

    private static Target opened(String number, @Nullable String dam) {
        return new Target.Opened(Told.calf("A"), number, dam);
    }

    private static Provenance provenance(String... words) {
        Provenance plain = Provenance.of(Provenance.Source.VOICE);
        return new Provenance(
                plain.source(),
                Stream.of(words).toList(),
                plain.verdict(),
                plain.grammar(),
                plain.model(),
                plain.sound(),
                plain.operator());
    }
}
