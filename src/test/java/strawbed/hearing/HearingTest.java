package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.AudioSource;
import strawbed.audio.Sound;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.VoiceNoteTaken;
import strawbed.speech.Ending;
import strawbed.speech.SpeechRecognizer;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;
import strawbed.testkit.Listener;
import strawbed.testkit.ScriptedRecognizer;
import strawbed.testkit.SpokenSentence;
import strawbed.testkit.Tones;

/** What pauses do. The sound is made of tones, the words come from a script. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HearingTest {
    private static final double SPOKEN = 1;
    private static final double SHORT_PAUSE = 1;
    private static final Duration SPEAKS = Duration.ofMillis(2_500);
    private static final double LONG_PAUSE = 4;

    private final ScriptedRecognizer recognizer = new ScriptedRecognizer();
    private final Hearing hearing = new Hearing(
            Recognizers.four(recognizer::another),
            Listener.INTERPRETER,
            new Listening(SpokenSentence.OPEN_CALVES, false),
            SpokenSentence.SPOKEN_AT,
            SpokenSentence.ZONE);
    private final List<Double> starts = new ArrayList<>();
    private double end = 1;

    @Test
    void a_statement_in_one_breath_is_heard() {
        say("calf twelve heifer", 1);

        assertThat(listen()).singleElement().satisfies(heard -> {
            assertThat(heard.goesOn()).isFalse();
            assertThat(events(heard)).containsExactly(SexNoted.class);
            assertThat(heard.sound().start().plus(heard.sound().duration())).isGreaterThan(Duration.ofSeconds(3));
        });
    }

    @Test
    void every_sound_is_heard_four_times() {
        say("calf twelve heifer", 1);
        listen();

        assertThat(recognizer.timesAsked()).isEqualTo(4);
    }

    @Test
    void recognisers_are_told_whether_a_sound_ends_in_quiet_or_was_cut_off() {
        say("calf twelve heifer", 1);
        listen();
        assertThat(recognizer.endings()).hasSize(4).containsOnly(Ending.IN_QUIET);
    }

    @Test
    void a_key_that_is_let_go_in_the_midst_of_a_word_cuts_it_off() {
        say("calf twelve heifer", 1);
        listenUpTo(sound().slice(0, (int) (2.9 * Sound.RATE)));
        assertThat(recognizer.endings()).isEmpty();

        assertThat(hearing.finish()).isPresent();
        assertThat(recognizer.endings()).hasSize(4).containsOnly(Ending.CUT_OFF);
    }

    @Test
    void what_runs_too_long_is_cut_off() {
        double[] samples = Tones.noise(19, 0.001, new Random(4));
        Tones.mix(samples, Tones.syllables(17, 0.3), 2);

        assertThat(listenUpTo(Tones.sound(samples))).isNotEmpty();
        assertThat(recognizer.endings().subList(0, 4)).containsOnly(Ending.CUT_OFF);
    }

    @Test
    void recognisers_work_while_a_person_speaks() {
        ScriptedRecognizer plain = recognizer.another();
        Hearing live = listeningBy(plain);
        say("calf twelve heifer", 1);
        Sound sound = sound();
        for (int at = 0; at < (int) (2.9 * Sound.RATE); at += AudioSource.BLOCK) {
            live.accept(sound.slice(at, at + AudioSource.BLOCK));
        }

        assertThat(plain.taken()).isBetween(Duration.ofMillis(1_000), Duration.ofMillis(1_400));
        assertThat(recognizer.timesAsked()).isZero();
    }

    @Test
    void other_recognisers_get_all_of_an_utterance_that_goes_on() {
        Optional<SpeechRecognizer> anyWords = Optional.of(recognizer.another());
        say("calf twelve heifer", 1);
        List<Heard> heard = new ArrayList<>();
        Sound sound = sound();
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            hearing.accept(sound.slice(at, at + AudioSource.BLOCK)).ifPresent(heard::add);
            if (at == 0 || at == (int) (2.9 * Sound.RATE)) {
                hearing.use(Recognizers.four(recognizer::another).with(anyWords), Listener.INTERPRETER);
            }
        }

        assertThat(heard)
                .singleElement()
                .satisfies(one -> assertThat(events(one)).containsExactly(SexNoted.class));
    }

    @Test
    void a_whole_statement_ends_though_the_place_does_not_become_quiet() {
        recognizer.at(SPEAKS, "calf twelve heifer");

        List<Heard> heard = inLastingNoise();

        Duration end = heard.get(0).sound().start().plus(heard.get(0).sound().duration());
        assertThat(end).isBetween(Duration.ofMillis(4_000), Duration.ofMillis(4_300));
        assertThat(events(heard.get(0))).containsExactly(SexNoted.class);
    }

    @Test
    void noise_behind_a_whole_statement_does_not_keep_it_open() {
        recognizer.at(SPEAKS, "calf twelve heifer");
        recognizer.at(Duration.ofSeconds(3), "[unk]");

        Duration end = inLastingNoise().get(0).sound().duration();

        assertThat(end).isLessThan(Duration.ofSeconds(4));
    }

    @Test
    void half_a_statement_and_a_note_are_not_cut_short() {
        recognizer.at(SPEAKS, "calf twelve note");
        recognizer.at(Duration.ofSeconds(3), "[unk]");
        assertThat(inLastingNoise().get(0).sound().duration()).isGreaterThan(Duration.ofSeconds(6));
    }

    @Test
    void talk_in_which_no_sentence_opens_is_heard_once_and_kept_whole() {
        recognizer.at(SPEAKS, "whether it can");

        Heard heard = inLastingNoise().get(0);

        assertThat(heard.meaning()).isEqualTo(new Interpretation.NoMatch(List.of("whether", "it", "can")));
        assertThat(heard.sound().duration()).isGreaterThan(Duration.ofSeconds(6));
        assertThat(recognizer.timesAsked()).isEqualTo(1);
    }

    @Test
    void a_sentence_with_a_word_heard_wrongly_is_no_talk() {
        recognizer.at(SPEAKS, "[unk] calf twelve whether it can");

        inLastingNoise();
        assertThat(recognizer.timesAsked()).isEqualTo(4);
    }

    @Test
    void what_was_taken_for_talk_is_heard_by_all_if_it_is_a_sentence_after_all() {
        recognizer.at(SPEAKS, "calf twelve note");
        ScriptedRecognizer follower = recognizer.another();
        Hearing live = listeningBy(recognizer.another().firstHearing("half twelve note"), Optional.of(follower));
        Sound sound = lastingNoise();
        List<Heard> heard = new ArrayList<>();
        List<Duration> taken = new ArrayList<>();
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            live.accept(sound.slice(at, at + AudioSource.BLOCK)).ifPresent(heard::add);
            taken.add(follower.taken());
        }

        assertThat(events(heard.get(0))).containsExactly(VoiceNoteTaken.class);
        assertThat(recognizer.timesAsked()).isEqualTo(5);
        assertThat(taken).as("5 s behind the first word").allMatch(time -> time.compareTo(Duration.ofSeconds(6)) < 0);
        assertThat(heard.get(0).sound().duration()).isGreaterThan(Duration.ofSeconds(6));
    }

    /** Another hearing of the script, in which the sound as it is goes to this recogniser. */
    private Hearing listeningBy(ScriptedRecognizer plain) {
        return listeningBy(plain, Optional.empty());
    }

    private Hearing listeningBy(ScriptedRecognizer plain, Optional<SpeechRecognizer> any) {
        return new Hearing(
                new Recognizers(plain, recognizer.another(), recognizer.another(), recognizer.another(), any),
                Listener.INTERPRETER,
                new Listening(SpokenSentence.OPEN_CALVES, false),
                SpokenSentence.SPOKEN_AT,
                SpokenSentence.ZONE);
    }

    /** Seven seconds of noise as loud as speech from the second second on. */
    private List<Heard> inLastingNoise() {
        return listenUpTo(lastingNoise());
    }

    private static Sound lastingNoise() {
        double[] samples = Tones.noise(12, 0.001, new Random(4));
        Tones.mix(samples, Tones.syllables(7, 0.3), 2);
        return Tones.sound(samples);
    }

    /** What was heard of a sound after which the source goes on. */
    private List<Heard> listenUpTo(Sound sound) {
        List<Heard> heard = new ArrayList<>();
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            hearing.accept(sound.slice(at, at + AudioSource.BLOCK)).ifPresent(heard::add);
        }
        return heard;
    }

    @Test
    void a_knock_is_forgotten() {
        ScriptedRecognizer plain = recognizer.another();
        Hearing live = listeningBy(plain);
        double[] samples = Tones.noise(4, 0.001, new Random(4));
        Tones.mix(samples, Tones.tone(300, 0.3, Sound.RATE, (int) (0.07 * Sound.RATE)), 2);
        Sound sound = Tones.sound(samples);
        List<Duration> taken = new ArrayList<>();
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            assertThat(live.accept(sound.slice(at, at + AudioSource.BLOCK))).isEmpty();
            taken.add(plain.taken());
        }

        assertThat(taken).anyMatch(time -> !time.isZero()).endsWith(Duration.ZERO);
        assertThat(recognizer.timesAsked()).isZero();
    }

    @Test
    void speech_begins_with_its_first_word() {
        say("calf twelve heifer", 1);

        Heard heard = listen().get(0);
        assertThat(heard.speech().start()).isEqualTo(SpokenSentence.SPOKEN_AT.plusMillis(2_500));
        assertThat(heard.speech().zone()).isEqualTo(SpokenSentence.ZONE);
        assertThat(statement(heard).facts())
                .extracting(SaidFact::occurredAt)
                .containsExactly(heard.speech().start());
    }

    @Test
    void a_half_sentence_is_joined_with_its_rest() {
        say("calf twelve", 1);
        say("heifer", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard).hasSize(2);
        assertThat(heard.get(0).meaning()).isInstanceOf(Interpretation.Unsure.class);
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(heard.get(1).meaning().words()).containsExactly("calf", "twelve", "heifer");
        assertThat(events(heard.get(1))).containsExactly(SexNoted.class);
        assertThat(heard.get(1).speech()).isEqualTo(heard.get(0).speech());
        assertThat(heard.get(1).sound().start()).isEqualTo(heard.get(0).sound().start());
    }

    @Test
    void a_pause_between_number_and_unit_is_mended() {
        say("calf twelve weight eighty eight", 1);
        say("pounds", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.Understood.class);
    }

    @Test
    void a_calf_whose_name_took_a_pause_is_mended() {
        say("calf", 1);
        say("twelve heifer", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(0).meaning()).isInstanceOf(Interpretation.NoMatch.class);
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(events(heard.get(1))).containsExactly(SexNoted.class);
    }

    @Test
    void what_follows_within_two_seconds_is_of_the_same_calf() {
        say("calf twelve heifer", 1);
        say("navel dipped", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(statement(heard.get(1)).calf())
                .isEqualTo(statement(heard.get(0)).calf());
        assertThat(events(heard.get(1))).containsExactly(SexNoted.class, NavelDipped.class);
    }

    @Test
    void facts_may_follow_again_and_again() {
        say("calf twelve heifer", 1);
        say("navel dipped", SHORT_PAUSE);
        say("standing", SHORT_PAUSE);

        assertThat(events(listen().get(2))).hasSize(3);
    }

    @Test
    void what_follows_later_stands_for_itself() {
        say("calf twelve heifer", 1);
        say("navel dipped", LONG_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isEqualTo(new Interpretation.NoMatch(List.of("navel", "dipped")));
    }

    @Test
    void a_half_sentence_is_not_joined_with_what_comes_later() {
        say("calf twelve", 1);
        say("heifer", LONG_PAUSE);

        assertThat(listen().get(1).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void another_calf_within_two_seconds_is_another_statement() {
        say("calf twelve heifer", 1);
        say("calf thirteen bull", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(SpokenSentence.calfOf(statement(heard.get(1)))).isEqualTo("13");
    }

    @Test
    void a_control_ends_the_statement_before_it() {
        say("calf twelve heifer", 1);
        say("confirm entry", SHORT_PAUSE);
        say("navel dipped", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.ControlHeard.class);
        assertThat(heard.get(2).goesOn()).isFalse();
        assertThat(heard.get(2).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void an_answer_ends_the_statement_before_it() {
        say("calf twelve heifer", 1);
        say("navel dipped", SHORT_PAUSE);

        List<Heard> heard = listen(hearing::settle);
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void free_speech_after_note_is_joined() {
        say("calf twelve note", 1);
        say("the gate is broken", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(events(heard.get(1))).containsExactly(VoiceNoteTaken.class);
        assertThat(heard.get(1).sound().duration()).isGreaterThan(Duration.ofSeconds(3));
    }

    @Test
    void free_speech_that_is_none_of_our_words_is_joined_too() {
        say("calf twelve heifer note", 1);
        say("[unk]", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(events(heard.get(1))).containsExactly(SexNoted.class, VoiceNoteTaken.class);
    }

    @Test
    void noise_after_a_statement_changes_nothing() {
        say("calf twelve heifer", 1);
        say("[unk]", SHORT_PAUSE);

        List<Heard> heard = listen();
        assertThat(heard.get(0).meaning()).isInstanceOf(Interpretation.Understood.class);
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void noise_after_half_a_sentence_does_not_mend_it() {
        say("calf twelve", 1);
        say("[unk]", SHORT_PAUSE);

        assertThat(listen().get(1).goesOn()).isFalse();
        assertThat(recognizer.timesAsked()).as("four hearings of each part").isEqualTo(2 * 4);
    }

    @Test
    void noise_after_noise_is_not_heard_again_with_it() {
        say("[unk]", 1);
        say("[unk] [unk]", SHORT_PAUSE);

        assertThat(listen()).extracting(Heard::goesOn).containsExactly(false, false);
        assertThat(recognizer.timesAsked()).as("four hearings of each part").isEqualTo(2 * 4);
    }

    @Test
    void a_word_that_was_too_short_alone_is_heard_again_with_what_follows() {
        say("[unk]", 1);
        say("twelve heifer", SHORT_PAUSE);

        listen();
        assertThat(recognizer.timesAsked()).as("each part, and both as one").isEqualTo(3 * 4);
    }

    @Test
    void talk_that_opens_no_sentence_is_not_heard_again_with_what_follows() {
        say("whether it can", 1);
        say("twelve heifer", SHORT_PAUSE);

        assertThat(listen()).extracting(Heard::goesOn).containsExactly(false, false);
        assertThat(recognizer.timesAsked()).as("four hearings of each part").isEqualTo(2 * 4);
    }

    @Test
    void a_sound_without_words_is_no_match() {
        starts.add(end + 1);
        end += 1 + SPOKEN;

        assertThat(listen()).extracting(Heard::meaning).containsExactly(new Interpretation.NoMatch(List.of()));
    }

    @Test
    void the_end_of_the_source_ends_the_last_statement() {
        say("calf twelve heifer", 1);
        List<Heard> heard = new ArrayList<>();
        Sound sound = sound();
        for (int at = 0; at < (int) (2.9 * Sound.RATE); at += AudioSource.BLOCK) {
            hearing.accept(sound.slice(at, at + AudioSource.BLOCK)).ifPresent(heard::add);
        }
        assertThat(heard).isEmpty();
        assertThat(hearing.isSpeaking()).isTrue();

        Optional<Heard> last = hearing.finish();
        assertThat(last).hasValueSatisfying(end -> assertThat(events(end)).containsExactly(SexNoted.class));
    }

    @Test
    void a_change_of_the_record_counts_from_the_next_statement_on() {
        say("calf nineteen heifer", 1);
        say("calf nineteen heifer", LONG_PAUSE);

        List<Heard> heard = listen(() -> hearing.use(new Listening(Set.of("19"), false)));
        assertThat(heard.get(0).meaning()).isInstanceOf(Interpretation.Unsure.class);
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.Understood.class);
    }

    /** Puts a second of speech after a pause; its words are found in the middle of it. */
    private void say(String words, double pause) {
        double start = end + pause;
        starts.add(start);
        recognizer.at(Duration.ofMillis(Math.round((start + SPOKEN / 2) * 1000)), words);
        end = start + SPOKEN;
    }

    private List<Heard> listen() {
        return listen(() -> {});
    }

    private List<Heard> listen(Runnable afterEach) {
        List<Heard> heard = new ArrayList<>();
        Sound sound = sound();
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            hearing.accept(sound.slice(at, at + AudioSource.BLOCK)).ifPresent(one -> {
                heard.add(one);
                afterEach.run();
            });
        }
        hearing.finish().ifPresent(heard::add);
        assertThat(heard).as("utterances").hasSameSizeAs(starts);
        return heard;
    }

    private Sound sound() {
        double[] samples = Tones.noise(end + 2, 0.001, new Random(4));
        starts.forEach(start -> Tones.mix(samples, Tones.syllables(SPOKEN, 0.3), start));
        return Tones.sound(samples);
    }

    private static Statement statement(Heard heard) {
        return heard.meaning() instanceof Interpretation.Unsure unsure
                ? unsure.best()
                : ((Interpretation.Understood) heard.meaning()).statement();
    }

    private static List<Object> events(Heard heard) {
        assertThat(heard.meaning()).isInstanceOf(Interpretation.Understood.class);
        return statement(heard).facts().stream()
                .<Object>map(fact -> fact.event().getClass())
                .toList();
    }
}
