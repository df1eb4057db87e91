package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.SoundCondition;
import strawbed.care.AgeStart;
import strawbed.care.AntibodyMass;
import strawbed.care.Assumption;
import strawbed.care.BirthOutcome;
import strawbed.care.Caution;
import strawbed.care.ColostrumClass;
import strawbed.care.ColostrumTiming;
import strawbed.care.DoseSize;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.care.EaseClass;
import strawbed.care.FeedWarmth;
import strawbed.care.HerdMeasure;
import strawbed.care.HerdReport;
import strawbed.care.ImmunityCategory;
import strawbed.care.PassiveImmunity;
import strawbed.care.Settled;
import strawbed.care.StoredColostrum;
import strawbed.care.Weather;
import strawbed.care.WhyNot;
import strawbed.dialog.Target;
import strawbed.entry.CalfKind;
import strawbed.entry.EntryGroup;
import strawbed.entry.EntryKind;
import strawbed.entry.EntryUnit;
import strawbed.entry.GumColour;
import strawbed.entry.NumberedPlace;
import strawbed.entry.Question;
import strawbed.entry.ReflexStrength;
import strawbed.entry.SwollenPlace;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.exchange.ade.WhyNotExported;
import strawbed.protocol.CountedSign;
import strawbed.report.CardWord;
import strawbed.statement.Doubt;
import strawbed.station.Meaning;
import strawbed.station.PaperState;
import strawbed.station.Sign;
import strawbed.station.ThrownAway;

/** Every key has its text and every text its key. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MessagesTest {
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final Set<String> IN_BUNDLE =
            new TreeSet<>(ResourceBundle.getBundle(Messages.BUNDLE, Locale.ROOT).keySet());

    @Test
    void every_key_has_a_text() {
        assertThat(MessageKey.values())
                .extracting(MessageKey::inBundle)
                .isNotEmpty()
                .allSatisfy(key -> assertThat(IN_BUNDLE).contains(key));
    }

    @Test
    void every_text_has_a_key_or_is_the_word_of_a_list() {
        Set<String> known = Stream.of(
                        Arrays.stream(MessageKey.values()).map(MessageKey::inBundle),
                        listed().map(Messages::key),
                        Arrays.stream(Caution.values())
                                .flatMap(caution ->
                                        Stream.of(Messages.key(caution) + ".title", Messages.key(caution) + ".brief")),
                        Arrays.stream(HerdMeasure.values())
                                .flatMap(measure -> Stream.of(
                                        Messages.key(measure) + ".definition", Messages.key(measure) + ".benchmark")),
                        Arrays.stream(DueKind.values())
                                .flatMap(
                                        kind -> Stream.of(Messages.key(kind) + ".brief", Messages.key(kind) + ".rule")))
                .flatMap(keys -> keys)
                .collect(Collectors.toSet());
        assertThat(IN_BUNDLE)
                .filteredOn(key -> !key.startsWith("quantity."))
                .allSatisfy(key -> assertThat(known).contains(key.replaceFirst("\\.spoken$", "")));
    }

    @Test
    void every_constant_that_people_meet_has_a_word() {
        assertThat(listed())
                .hasSizeGreaterThan(80)
                .allSatisfy(constant -> assertThat(MESSAGES.word(constant)).isNotBlank());
        assertThat(Caution.values())
                .allSatisfy(caution ->
                        assertThat(new CautionPhrases(MESSAGES).title(caution)).isNotBlank());
    }

    @Test
    void no_text_loses_a_part_to_a_stray_quote() {
        ResourceBundle bundle = ResourceBundle.getBundle(Messages.BUNDLE, Locale.ROOT);
        assertThat(IN_BUNDLE).allSatisfy(key -> {
            String filled = MESSAGES.at(key, "<0>", "<1>", "<2>", "<3>", "<4>", "<5>", "<6>");
            String text = bundle.getString(key);
            assertThat(filled).doesNotContain("{");
            for (int part = 0; part < 7; part++) {
                assertThat(filled.contains("<" + part + ">")).isEqualTo(text.contains("{" + part + "}"));
            }
        });
    }

    @Test
    void a_language_without_texts_gets_the_english_ones() {
        assertThat(new Messages(Locale.KOREAN).word(Term.Sex.FEMALE)).isEqualTo("heifer");
    }

    @Test
    void numbers_follow_the_given_locale() {
        assertThat(new Written(new Messages(Locale.GERMANY)).number(new java.math.BigDecimal("3.5")))
                .isEqualTo("3,5");
    }

    static Stream<Enum<?>> listed() {
        Stream<Class<?>> terms = Arrays.stream(Term.class.getDeclaredClasses()).filter(Class::isEnum);
        List<Class<?>> others = List.of(
                Provenance.Source.class,
                Sign.class,
                Meaning.class,
                ThrownAway.class,
                PaperState.class,
                SoundCondition.class,
                DueKind.class,
                DueState.class,
                Caution.class,
                ColostrumTiming.class,
                AgeStart.Basis.class,
                Settled.Why.class,
                WhyNot.class,
                HerdMeasure.class,
                HerdReport.Grouping.class,
                HerdReport.Shift.class,
                HerdReport.DamAge.class,
                WhyNotExported.class,
                ImmunityCategory.class,
                PassiveImmunity.Note.class,
                BirthOutcome.Kind.class,
                EaseClass.class,
                Weather.Load.class,
                CountedSign.class,
                Assumption.class,
                ColostrumClass.class,
                DoseSize.class,
                FeedWarmth.class,
                AntibodyMass.MassGrade.class,
                StoredColostrum.StockState.class,
                Doubt.TagFault.class,
                CardWord.class,
                Target.Reason.class,
                CalfKind.class,
                EntryGroup.class,
                EntryKind.class,
                EntryUnit.class,
                GumColour.class,
                NumberedPlace.class,
                Question.class,
                ReflexStrength.class,
                SwollenPlace.class);
        return Stream.concat(terms, others.stream())
                .flatMap(list -> Arrays.stream(list.getEnumConstants()))
                .map(constant -> (Enum<?>) constant);
    }
}
