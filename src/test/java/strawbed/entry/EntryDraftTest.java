package strawbed.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.statement.CalfReference;
import strawbed.statement.Doubt;
import strawbed.statement.Doubts;
import strawbed.statement.Interpretation;
import strawbed.statement.SaidFact;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;
import strawbed.testkit.Listener;
import strawbed.testkit.SpokenSentence;

/** Entering by buttons, step by step. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EntryDraftTest {
    private static final Instant NOW = SpokenSentence.SPOKEN_AT;
    private static final SpeechTime MOMENT = new SpeechTime(NOW, SpokenSentence.ZONE);
    private static final CalfReference TWELVE = new CalfReference.Numbered("12");

    private static EntryDraft draft() {
        return EntryDraft.start(TWELVE, MOMENT, FarmChoices.USUAL);
    }

    private static EntryDraft pressed(Outcome<EntryDraft> outcome) {
        return Presser.taken(outcome).orElseThrow(() -> new AssertionError(outcome));
    }

    private static EntryDraft begun(EntryKind kind) {
        return pressed(draft().begin(kind, NOW));
    }

    private static Refusal refused(Outcome<EntryDraft> outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        return ((Outcome.Refused<EntryDraft>) outcome).why();
    }

    private static Answer amount(String amount) {
        return new Answer.Amount(new BigDecimal(amount), null);
    }

    @Test
    void a_fact_is_whole_before_what_may_be_left_out_is_answered() {
        EntryDraft dipped = begun(EntryKind.NAVEL_DIPPED);

        assertThat(dipped.step().orElseThrow().question()).isEqualTo(Question.DIPPED_IN);
        assertThat(dipped.isWhole()).isTrue();
        assertThat(dipped.finish())
                .contains(new Statement(TWELVE, List.of(new SaidFact(new Event.NavelDipped(null, null), NOW, false))));
    }

    @Test
    void a_fact_that_lacks_something_cannot_be_finished_and_its_step_stays() {
        EntryDraft fed = begun(EntryKind.FED);

        assertThat(fed.canFinish()).isFalse();
        assertThat(fed.finish()).isEmpty();
        assertThat(refused(fed.answer(new Answer.NotNoted()))).isEqualTo(new Refusal.Needed());
        assertThat(fed.step().orElseThrow().question()).isEqualTo(Question.VOLUME);
    }

    @Test
    void nothing_entered_is_no_statement_but_a_new_calf_is() {
        assertThat(draft().finish()).isEmpty();
        EntryDraft fresh = EntryDraft.start(new CalfReference.New("513", null), MOMENT, FarmChoices.USUAL);
        assertThat(fresh.finish().orElseThrow().facts())
                .containsExactly(new SaidFact(new Event.CalfOpened("513", null), NOW, false));
    }

    @Test
    void facts_are_of_one_moment_that_of_the_first_press() {
        Instant first = NOW.plusSeconds(40);
        EntryDraft heifer = pressed(draft().begin(EntryKind.HEIFER, first));
        EntryDraft born = pressed(heifer.begin(EntryKind.BORN, first.plusSeconds(9)));

        assertThat(born.finish().orElseThrow().facts())
                .containsExactly(
                        new SaidFact(new Event.SexNoted(Term.Sex.FEMALE), first, false),
                        new SaidFact(new Event.CalfBorn(new When.At(first)), first, false));
    }

    @Test
    void a_time_is_of_the_one_fact_that_it_was_asked_for() {
        EntryDraft heifer = begun(EntryKind.HEIFER);
        EntryDraft dipped = pressed(heifer.begin(EntryKind.NAVEL_DIPPED, NOW));
        EntryDraft timed = pressed(dipped.at(new Answer.Ago(Duration.ofMinutes(10))));

        assertThat(timed.facts()).extracting(SaidFact::timeWasSaid).containsExactly(false, true);
        assertThat(timed.facts().get(1).occurredAt()).isEqualTo(NOW.minus(Duration.ofMinutes(10)));
        assertThat(timed.step().orElseThrow().question()).isEqualTo(Question.DIPPED_IN);
        EntryDraft again = pressed(timed.at(Answer.at("430")));
        assertThat(again.facts().get(1).occurredAt()).isEqualTo(Instant.parse("2026-03-03T10:30:00Z"));
    }

    @Test
    void a_stillbirth_happened_when_its_time_says() {
        Instant then = NOW.minus(Duration.ofMinutes(30));
        EntryDraft timed = pressed(begun(EntryKind.STILLBORN).at(new Answer.Ago(Duration.ofMinutes(30))));

        assertThat(timed.facts())
                .containsExactly(new SaidFact(new Event.CalfDied(then, Term.DeathTime.AT_BIRTH), then, true));
    }

    /** It is 06:00 in the farm's zone. */
    @ParameterizedTest
    @CsvSource({
        "430, false, 2026-03-03T10:30:00Z",
        "4, false, 2026-03-03T10:00:00Z",
        "1015, false, 2026-03-03T04:15:00Z",
        "0510, false, 2026-03-03T11:10:00Z",
        "0710, false, 2026-03-02T13:10:00Z",
        "1620, false, 2026-03-02T22:20:00Z",
        "0, false, 2026-03-03T06:00:00Z",
        "12, false, 2026-03-03T06:00:00Z",
        "0510, true, 2026-03-02T11:10:00Z",
    })
    void a_time_of_day_is_the_nearest_one_in_the_past(String digits, boolean yesterday, Instant at) {
        EntryDraft timed = pressed(begun(EntryKind.HEIFER).at(new Answer.Clock(digits, yesterday)));
        assertThat(timed.facts().get(0).occurredAt()).isEqualTo(at);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "2400", "1260", "99", "12345", "4:30", "-1"})
    void what_is_no_time_of_day_is_refused(String digits) {
        assertThat(refused(begun(EntryKind.HEIFER).at(Answer.at(digits)))).isEqualTo(new Refusal.NoSuchTime());
    }

    @Test
    void a_window_asks_for_two_times() {
        EntryDraft born = pressed(begun(EntryKind.BORN).answer(new Answer.Between()));
        assertThat(born.isWhole()).isFalse();
        EntryDraft from = pressed(born.answer(Answer.at("2")));
        EntryDraft until = pressed(from.answer(Answer.at("4")));

        assertThat(until.facts().get(0).event())
                .isEqualTo(new Event.CalfBorn(new When.Between(
                        Instant.parse("2026-03-03T08:00:00Z"), Instant.parse("2026-03-03T10:00:00Z"))));
    }

    @Test
    void what_is_not_possible_is_refused_with_the_reason() {
        EntryDraft brix = begun(EntryKind.COLOSTRUM_BRIX);
        assertThat(refused(brix.answer(amount("101"))))
                .isEqualTo(new Refusal.OutOfRange(new BigDecimal("0"), new BigDecimal("100")));
        assertThat(refused(brix.answer(amount("24.555")))).isEqualTo(new Refusal.TooManyDecimals(2));
        assertThat(refused(brix.answer(new Answer.Amount(BigDecimal.TEN, EntryUnit.QUART))))
                .isEqualTo(new Refusal.NotOffered());
        assertThat(refused(begun(EntryKind.EASE).answer(new Answer.Chosen(new Option.Count(6)))))
                .isEqualTo(new Refusal.NotOffered());
        assertThat(refused(begun(EntryKind.DAM).answer(new Answer.Digits("12345"))))
                .isEqualTo(new Refusal.WrongLength(1, 4));
        assertThat(refused(begun(EntryKind.DAM).answer(new Answer.Digits("4a"))))
                .isEqualTo(new Refusal.WrongLength(1, 4));
        assertThat(refused(begun(EntryKind.HEIFER).at(new Answer.Ago(Duration.ofHours(14)))))
                .isEqualTo(new Refusal.TooLongAgo(Duration.ofHours(13)));
        assertThat(refused(begun(EntryKind.HEIFER).answer(amount("1")))).isEqualTo(new Refusal.NotAsked());
        assertThat(refused(draft().answer(amount("1")))).isEqualTo(new Refusal.NotAsked());
        assertThat(refused(draft().askTime())).isEqualTo(new Refusal.NotAsked());
    }

    @Test
    void the_barn_has_its_own_facts() {
        EntryDraft barn = EntryDraft.start(new CalfReference.Barn(), MOMENT, FarmChoices.USUAL);
        assertThat(barn.groups()).containsExactly(EntryGroup.BARN);
        assertThat(draft().groups()).doesNotContain(EntryGroup.BARN).hasSize(7);
        assertThat(refused(barn.begin(EntryKind.HEIFER, NOW))).isEqualTo(new Refusal.NotOfThis());
        assertThat(refused(draft().begin(EntryKind.STORED, NOW))).isEqualTo(new Refusal.NotOfThis());
    }

    @Test
    void the_number_tells_the_scale_of_a_temperature_and_where_it_does_not_it_is_asked() {
        assertThat(pressed(begun(EntryKind.TEMPERATURE).answer(amount("38.6"))).facts())
                .extracting(SaidFact::event)
                .containsExactly(
                        new Event.TemperatureTaken(new Temperature(new BigDecimal("38.6"), TemperatureUnit.CELSIUS)));
        EntryDraft milk = pressed(begun(EntryKind.HYDROMETER).answer(amount("50")));
        assertThat(refused(milk.answer(amount("36")))).isEqualTo(new Refusal.UnitNeeded());
        assertThat(pressed(milk.answer(new Answer.Amount(new BigDecimal("36"), EntryUnit.CELSIUS)))
                        .isWhole())
                .isTrue();
    }

    @Test
    void a_metric_farm_has_its_units_first() {
        FarmChoices metric = new FarmChoices(List.of(), List.of(), true);
        Step.Quantity pad =
                (Step.Quantity) pressed(EntryDraft.start(TWELVE, MOMENT, metric).begin(EntryKind.FED, NOW))
                        .step()
                        .orElseThrow();
        assertThat(pad.units()).startsWith(EntryUnit.LITRE);
        assertThat(pad.quick()).extracting(Answer.Amount::unit).containsOnly(EntryUnit.LITRE);
    }

    @Test
    void back_brings_back_what_a_new_fact_left_behind() {
        EntryDraft fed = begun(EntryKind.FED);
        EntryDraft other = pressed(fed.begin(EntryKind.HEIFER, NOW));
        assertThat(other.facts()).hasSize(1);
        assertThat(other.back()).isSameAs(fed);
        assertThat(draft().back().canGoBack()).isFalse();
    }

    /** Walks like somebody who presses whatever is there, and what is not. */
    @Test
    void ten_thousand_walks_never_come_to_a_dead_end() {
        Random random = new Random(20261126);
        Set<EntryKind> finished = EnumSet.noneOf(EntryKind.class);
        int statements = 0;
        int refusals = 0;
        for (int walk = 0; walk < 10_000; walk++) {
            CalfReference calf = random.nextInt(6) == 0 ? new CalfReference.Barn() : TWELVE;
            EntryDraft start = EntryDraft.start(calf, MOMENT, FarmChoices.USUAL);
            EntryDraft draft = start;
            List<EntryDraft> path = new ArrayList<>();
            for (int press = 0; press < 3 + random.nextInt(25); press++) {
                Outcome<EntryDraft> outcome = anyPress(draft, random);
                if (outcome instanceof Outcome.Taken<EntryDraft> taken) {
                    path.add(draft);
                    assertThat(taken.next().back().facts()).isEqualTo(draft.facts());
                    assertThat(taken.next().back().step()).isEqualTo(draft.step());
                    draft = taken.next();
                } else {
                    refusals++;
                }
                if (draft.isWhole() && draft.kind().isPresent()) {
                    Statement statement = draft.finish().orElseThrow();
                    assertThat(statement.facts()).hasSameSizeAs(draft.facts()).isNotEmpty();
                    assertThat(Doubts.of(
                                    statement,
                                    draft.moment(),
                                    Listener.onTheTablesFarm().listening()))
                            .doesNotHaveDuplicates();
                    assertThat(statement.facts())
                            .allSatisfy(fact -> assertThat(fact.occurredAt()).isBeforeOrEqualTo(NOW));
                    draft.kind().ifPresent(finished::add);
                    statements++;
                }
            }
            for (int i = path.size() - 1; i >= 0; i--) {
                assertThat(draft.canGoBack()).isTrue();
                draft = draft.back();
                assertThat(draft).isSameAs(path.get(i));
            }
            assertThat(draft).isSameAs(start);
        }
        assertThat(finished).containsExactlyInAnyOrder(EntryKind.values());
        assertThat(statements).isGreaterThan(10_000);
        assertThat(refusals).isGreaterThan(10_000);
    }

    private static Outcome<EntryDraft> anyPress(EntryDraft draft, Random random) {
        int which = random.nextInt(10);
        if (which == 0 || draft.step().isEmpty()) {
            EntryKind[] kinds = EntryKind.values();
            return which < 3 ? draft.askTime() : draft.begin(kinds[random.nextInt(kinds.length)], NOW);
        }
        if (which == 1) {
            return draft.askTime();
        }
        Step step = draft.step().get();
        return draft.answer(which < 8 ? fitting(step, random) : any(random));
    }

    private static Answer fitting(Step step, Random random) {
        if (step.mayBeLeftOut() && random.nextInt(3) == 0) {
            return new Answer.NotNoted();
        }
        if (step instanceof Step.Choose choose) {
            return new Answer.Chosen(
                    choose.options().get(random.nextInt(choose.options().size())));
        }
        if (step instanceof Step.Quantity pad) {
            BigDecimal amount = new BigDecimal(random.nextInt(1200)).movePointLeft(random.nextInt(4));
            return new Answer.Amount(
                    amount,
                    random.nextBoolean()
                            ? null
                            : pad.units().get(random.nextInt(pad.units().size())));
        }
        if (step instanceof Step.Digits digits) {
            return new Answer.Digits(
                    "840".repeat(6).substring(0, digits.least() + random.nextInt(digits.most() - digits.least() + 1)));
        }
        return any(random);
    }

    private static Answer any(Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> new Answer.NotNoted();
            case 1 -> Answer.of(Term.Sign.WEAK);
            case 2 -> new Answer.Amount(new BigDecimal(random.nextInt(3000) - 1000), EntryUnit.CELSIUS);
            case 3 -> new Answer.Digits(String.valueOf(random.nextInt()));
            case 4 -> new Answer.Ago(Duration.ofMinutes(random.nextInt(1000) - 100));
            case 5 -> new Answer.Clock(String.valueOf(random.nextInt(2600)), random.nextBoolean());
            default -> new Answer.Between();
        };
    }

    // What is odd is asked about by the rules of speech.

    @ParameterizedTest
    @ValueSource(
            strings = {
                "calf twelve weight two hundred pounds",
                "calf twelve temperature one hundred twenty heart rate nine hundred",
                "calf twelve brix sixty fed nine quarts",
                "calf twelve navel dipped with iodine fifty percent",
                "calf nineteen heifer",
                "same calf heifer",
                "new calf twelve heifer",
                "calf twelve official tag eight four zero zero zero three one two three",
                "calf twelve official tag nine nine nine zero zero three one two three four five six seven eight nine",
                "calf twelve navel dipped yesterday at ten fifteen in the morning",
                "calf twelve fed two quarts at sixteen twenty",
                "barn one hundred forty degrees humidity eighty",
                "calf twelve heifer navel dipped three quarts fed",
            })
    void a_statement_by_buttons_is_doubted_as_the_same_one_spoken(String words) {
        Listener listener = Listener.onTheTablesFarm();
        Interpretation meaning = listener.hears(words);
        Statement spoken = meaning instanceof Interpretation.Understood understood
                ? understood.statement()
                : ((Interpretation.Unsure) meaning).best();
        List<Doubt> asked = listener.doubts(words);

        Statement entered = new Presser(listener.speech()).enter(spoken).orElseThrow();

        assertThat(entered).isEqualTo(spoken);
        assertThat(Doubts.of(entered, listener.speech(), listener.listening())).isEqualTo(asked);
        assertThat(asked.isEmpty()).isEqualTo(words.endsWith("three quarts fed"));
    }
}
