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
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.care.Caution;
import strawbed.care.Contradiction;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.dialog.Target;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.statement.CalfReference;
import strawbed.statement.Doubt;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;

/** Whole sentences as they are shown and said in Spanish. The wording is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpanishSentencesTest {
    /** 04:40 on the farm. */
    private static final Instant NOW = Instant.parse("2026-11-24T10:40:00Z");

    private static final Messages MESSAGES = new Messages(Language.SPANISH.locale());
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Prompts PROMPTS = new Prompts(MESSAGES, ZONE, Clock.fixed(NOW, ZoneOffset.UTC));
    private static final String TEACH =
            " ¿Está bien? Diga “confirm entry” para guardar, o “cancel entry” para cancelar.";
    private static final Event HEIFER = new Event.SexNoted(Term.Sex.FEMALE);
    private static final Event FED =
            new Event.ColostrumFed(new Volume(new BigDecimal(3), VolumeUnit.QUART), Term.FeedingMethod.BOTTLE, null);

    @Test
    void facts_are_read_back() {
        Event dipped = new Event.NavelDipped(Term.NavelAgent.IODINE, new BigDecimal(7));
        Pending pending = said(List.of(), now(HEIFER), now(dipped), now(FED));
        assertThat(shown(pending))
                .isEqualTo("Becerro 417: hembra; ombligo curado con yodo al 7 por ciento; tomó 3 cuartos con biberón."
                        + TEACH);
        assertThat(spoken(pending))
                .isEqualTo("Becerro cuatro uno siete, hembra, ombligo curado con yodo al siete por ciento,"
                        + " tomó tres cuartos con biberón. ¿Está bien?");
    }

    @Test
    void a_birth_is_read_back_with_its_time() {
        Pending pending = said(List.of(), ago(new Event.CalfBorn(new When.At(NOW.minus(Duration.ofMinutes(10)))), 10));
        assertThat(shown(pending)).isEqualTo("Becerro 417: nació 04:30 (hace 10 minutos)." + TEACH);
        assertThat(spoken(pending))
                .isEqualTo("Becerro cuatro uno siete, nació a las cuatro treinta, hace diez minutos. ¿Está bien?");
    }

    @Test
    void a_birth_in_a_window_is_read_back() {
        Instant one = Instant.parse("2026-11-24T07:00:00Z");
        Pending pending = said(List.of(), now(new Event.CalfBorn(new When.Between(one, one.plusSeconds(7200)))));
        assertThat(spoken(pending))
                .isEqualTo("Becerro cuatro uno siete, nació entre la una en punto y las tres en punto. ¿Está bien?");
    }

    @Test
    void a_time_that_was_said_is_read_back_both_ways() {
        assertThat(spoken(said(List.of(), ago(FED, 61))))
                .isEqualTo("Becerro cuatro uno siete, tomó tres cuartos con biberón, hace una hora y un minuto,"
                        + " a las tres treinta y nueve. ¿Está bien?");
    }

    @Test
    void a_weight_agrees_with_its_unit() {
        Event weighed = new Event.CalfWeighed(new Mass(new BigDecimal(91), MassUnit.POUND), Term.WeighingMethod.TAPE);
        assertThat(spoken(said(List.of(), now(weighed))))
                .isEqualTo("Becerro cuatro uno siete, peso noventa y una libras, con cinta. ¿Está bien?");
    }

    @Test
    void doubts_are_told_first() {
        assertThat(shown(said(List.of(new Doubt.UnknownScale(new BigDecimal(35))), now(HEIFER))))
                .isEqualTo("35: no se dijo si son grados Fahrenheit o centígrados. Becerro 417: hembra." + TEACH);
        Instant yesterday = Instant.parse("2026-11-23T20:00:00Z");
        Doubt doubt = new Doubt.Contradicts(new Contradiction.BeforeBirth(yesterday, yesterday.plusSeconds(600)));
        assertThat(spoken(said(List.of(doubt), now(HEIFER))))
                .isEqualTo("La hora dicha, ayer a las catorce horas, es antes del nacimiento, ayer a las catorce diez."
                        + " Becerro cuatro uno siete, hembra. ¿Está bien?");
    }

    @Test
    void saved_and_not_saved_cannot_be_mixed_up() {
        assertThat(PROMPTS.shown(new Prompt.Saved(2, "417"))).isEqualTo("Guardado. Becerro 417.");
        assertThat(PROMPTS.spoken(new Prompt.Saved(2, "417"))).isEqualTo("Guardado. Becerro cuatro uno siete.");
        assertThat(PROMPTS.spoken(new Prompt.NotSaved("x."))).isEqualTo("¡No se guardó! ¡No se guardó! x.");
        assertThat(PROMPTS.shown(new Prompt.Undone(2))).isEqualTo("Deshecho. Los últimos 2 datos ya no cuentan.");
    }

    @Test
    void a_caution_says_what_to_do() {
        assertThat(PROMPTS.spoken(new Prompt.Warn(Caution.NOT_BREATHING)))
                .isEqualTo("No respira bien. Haga cosquillas en la nariz con paja limpia. Nunca cuelgue al becerro de"
                        + " las patas traseras. Llame al veterinario.");
        assertThat(Caution.values())
                .allSatisfy(caution ->
                        assertThat(PROMPTS.spoken(new Prompt.Warn(caution))).doesNotContainPattern("\\d"));
    }

    @Test
    void what_is_due_is_told_in_a_sentence() {
        Told told =
                new Told().open("A", "02:10", "417", "212").a("02:10", new Event.CalfBorn(Told.at("02:10")), HEIFER);
        CareAnswers phrases = CareAnswers.spoken(MESSAGES, ZoneOffset.UTC);
        Instant now = Told.time("02:20");
        List<DueItem> due = DueList.of(told.record(), Farm.of(told.herd()), now);
        assertThat(phrases.due(due, told.herd(), now))
                .startsWith("Con atraso: becerro cuatro uno siete, ")
                .contains(", desde las dos ")
                .endsWith(" más dentro de una hora.");
        assertThat(phrases.calf(told.record(), due, now))
                .startsWith("Becerro cuatro uno siete: hembra, nació a las dos diez, sin calostro registrado,"
                        + " sin cura de ombligo registrada; con atraso: ");
    }

    @Test
    void signs_are_told_in_spanish_and_a_farms_own_words_stay() {
        EventPhrases phrases = new EventPhrases(MESSAGES, ZONE);
        assertThat(phrases.of(new Event.SignNoted(Term.Sign.GUMS, null, "pale")))
                .isEqualTo("encías: pálidas");
        assertThat(phrases.of(new Event.SignNoted(Term.Sign.SWOLLEN, "tongue", null)))
                .isEqualTo("hinchazón: lengua");
        assertThat(phrases.of(new Event.SignNoted(Term.Sign.SUCK_REFLEX, null, "none")))
                .isEqualTo("sin reflejo de mamar");
        assertThat(phrases.of(new Event.SignNoted(Term.Sign.SWOLLEN, "left knee", null)))
                .isEqualTo("hinchazón: left knee");
    }

    private static String shown(Pending pending) {
        return PROMPTS.shown(new Prompt.Ask(pending));
    }

    private static String spoken(Pending pending) {
        return PROMPTS.spoken(new Prompt.Ask(pending));
    }

    private static Pending said(List<Doubt> doubts, SaidFact... facts) {
        return new Pending(
                new Statement(new CalfReference.Numbered("417"), Arrays.asList(facts)),
                new Target.Known(Told.calf("A"), "417"),
                doubts,
                Provenance.of(Provenance.Source.VOICE));
    }

    private static SaidFact now(Event event) {
        return new SaidFact(event, NOW, false);
    }

    private static SaidFact ago(Event event, int minutes) {
        return new SaidFact(event, NOW.minus(Duration.ofMinutes(minutes)), true);
    }
}
