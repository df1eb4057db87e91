package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Utterance;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.Statement;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;
import strawbed.testkit.SpokenSentence;

/** Bursts of made-up sound stand for words; a scripted recogniser knows a burst by its loudness. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HearingTest {
    private static final UtteranceInterpreter INTERPRETER =
            new UtteranceInterpreter(Grammars.ofTheTable().grammar(), 0.5);

    private final Script script = new Script();
    private final List<short[]> source = new ArrayList<>();

    /** Recognises a sound by the loudness of its bursts, in order. */
    private static final class Script implements SpeechRecognizer {
        private final Map<String, String> words = new HashMap<>();

        void when(String bursts, String said) {
            words.put(bursts, said);
        }

        @Override
        public Utterance recognize(Sound sound) {
            String said = words.getOrDefault(bursts(sound), "[unk]");
            List<Hypothesis> readings = said.isEmpty() ? List.of() : List.of(Grammars.reading(said, 0));
            return new Utterance(sound, readings);
        }

        private static String bursts(Sound sound) {
            StringBuilder bursts = new StringBuilder();
            char last = ' ';
            short[] samples = sound.copySamples();
            for (int i = 0; i + 800 <= samples.length; i += 800) {
                int peak = 0;
                for (int k = i; k < i + 800; k++) {
                    peak = Math.max(peak, Math.abs((int) samples[k]));
                }
                char here = peak > 2000 ? (char) ('A' + Math.round(peak / 4000.0) - 1) : ' ';
                if (here != ' ' && last == ' ') {
                    bursts.append(here);
                }
                last = here;
            }
            return bursts.toString();
        }

        @Override
        public void close() {
            // Nothing is held.
        }
    }

    private void silence(double seconds) {
        SplittableRandom random = new SplittableRandom(source.size());
        short[] samples = new short[(int) (seconds * Sound.RATE)];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (short) (random.nextInt(21) - 10);
        }
        source.add(samples);
    }

    private void burst(char loudness) {
        SplittableRandom random = new SplittableRandom(loudness);
        short[] samples = new short[Sound.RATE / 2];
        int peak = (loudness - 'A' + 1) * 4000;
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (short) (random.nextInt(2 * peak + 1) - peak);
        }
        source.add(samples);
    }

    private List<Heard> hear() {
        Hearing hearing = new Hearing(
                script,
                INTERPRETER,
                new Listening(SpokenSentence.OPEN_CALVES, false),
                SpokenSentence.SPOKEN_AT,
                SpokenSentence.ZONE);
        List<Heard> heard = new ArrayList<>();
        long at = 0;
        for (short[] part : source) {
            for (int i = 0; i < part.length; i += 320) {
                short[] block = Arrays.copyOfRange(part, i, Math.min(part.length, i + 320));
                hearing.accept(Sound.of(block, at)).ifPresent(heard::add);
                at += block.length;
            }
        }
        hearing.finish().ifPresent(heard::add);
        return heard;
    }

    private static Optional<Statement> statement(Heard heard) {
        if (heard.meaning() instanceof Interpretation.Understood understood) {
            return Optional.of(understood.statement());
        }
        return Optional.empty();
    }

    @Test
    void facts_that_follow_within_two_seconds_belong_to_the_calf_just_named() {
        script.when("B", "calf twelve heifer");
        script.when("D", "navel dipped");
        silence(1);
        burst('B');
        silence(1);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard).hasSize(2);
        assertThat(heard.get(0).goesOn()).isFalse();
        assertThat(heard.get(1).goesOn()).isTrue();
        Statement whole = statement(heard.get(1)).orElseThrow();
        assertThat(SpokenSentence.calfOf(whole)).isEqualTo("12");
        assertThat(SpokenSentence.eventsOf(whole)).containsExactly("SexNoted sex=female", "NavelDipped");
    }

    @Test
    void facts_that_follow_later_belong_to_nobody() {
        script.when("B", "calf twelve heifer");
        script.when("D", "navel dipped");
        silence(1);
        burst('B');
        silence(3);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard).hasSize(2);
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void half_a_sentence_is_heard_again_together_with_its_rest() {
        script.when("B", "calf twelve weight eighty");
        script.when("D", "eight pounds");
        script.when("BD", "calf twelve weight eighty eight pounds");
        silence(1);
        burst('B');
        silence(1);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard.get(heard.size() - 1).goesOn()).isTrue();
        assertThat(SpokenSentence.eventsOf(
                        statement(heard.get(heard.size() - 1)).orElseThrow()))
                .containsExactly("CalfWeighed unit=pound, value=88");
    }

    @Test
    void a_calf_alone_waits_for_its_facts() {
        script.when("B", "calf twelve");
        script.when("D", "heifer");
        script.when("BD", "calf twelve heifer");
        silence(1);
        burst('B');
        silence(1);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard.get(0).meaning())
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.isIncomplete()).isTrue());
        assertThat(SpokenSentence.eventsOf(statement(heard.get(1)).orElseThrow()))
                .containsExactly("SexNoted sex=female");
    }

    @Test
    void another_calf_begins_another_statement() {
        script.when("B", "calf twelve heifer");
        script.when("D", "calf thirteen bull");
        silence(1);
        burst('B');
        silence(0.8);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard).hasSize(2).noneMatch(Heard::goesOn);
    }

    @Test
    void a_control_stands_for_itself() {
        script.when("B", "calf twelve heifer");
        script.when("D", "confirm entry");
        silence(1);
        burst('B');
        silence(0.8);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard).hasSize(2).noneMatch(Heard::goesOn);
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.ControlHeard.class);
    }

    @Test
    void noise_after_a_statement_changes_nothing() {
        script.when("B", "calf twelve heifer");
        script.when("D", "[unk]");
        script.when("BD", "calf twelve heifer scouring");
        silence(1);
        burst('B');
        silence(0.8);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard.get(1).goesOn()).isFalse();
        assertThat(heard.get(1).meaning()).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void free_speech_after_note_is_taken_up_to_the_pause() {
        script.when("B", "calf twelve note");
        script.when("D", "[unk]");
        script.when("BD", "calf twelve note [unk]");
        silence(1);
        burst('B');
        silence(0.8);
        burst('D');
        silence(1);

        List<Heard> heard = hear();
        assertThat(heard.get(1).goesOn()).isTrue();
        assertThat(SpokenSentence.eventsOf(statement(heard.get(1)).orElseThrow()))
                .containsExactly("VoiceNoteTaken");
        assertThat(heard.get(1).sound().duration())
                .isGreaterThan(heard.get(0).sound().duration());
    }
}
