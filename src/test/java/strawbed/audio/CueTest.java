package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CueTest {
    /** 5 ms. */
    private static final int FRAME = Sound.RATE / 200;

    private static final int FRAME_MILLIS = 5;

    /** Two lengths that differ by less are taken for the same by an ear. Our own, on the safe side. */
    private static final double ALIKE = 1.3;

    /** Times of sound and of silence in turns, in ms, read from the envelope; the first is sound. */
    private static List<Integer> rhythm(Sound sound) {
        double[] levels = levels(sound);
        double loudest = IntStream.range(0, levels.length)
                .mapToDouble(i -> levels[i])
                .max()
                .orElseThrow();
        List<Integer> times = new ArrayList<>();
        boolean wasOn = false;
        for (double level : levels) {
            boolean on = level > loudest / 10;
            if (times.isEmpty() || on != wasOn) {
                times.add(0);
            }
            times.set(times.size() - 1, times.get(times.size() - 1) + FRAME_MILLIS);
            wasOn = on;
        }
        return times;
    }

    private static double[] levels(Sound sound) {
        return IntStream.range(0, sound.length() / FRAME)
                .mapToDouble(i -> sound.slice(i * FRAME, (i + 1) * FRAME).rms())
                .toArray();
    }

    private static List<Integer> pulses(List<Integer> rhythm) {
        return IntStream.range(0, rhythm.size())
                .filter(i -> i % 2 == 0)
                .mapToObj(rhythm::get)
                .toList();
    }

    private static boolean alike(List<Integer> one, List<Integer> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size()).allMatch(i -> alike(one.get(i), other.get(i)));
    }

    private static boolean alike(int one, int other) {
        return Math.max(one, other) <= ALIKE * Math.min(one, other);
    }

    /**
     * The patterns of IEC 60601-1-8: one, two, three, five or ten pulses of the same length. That a pulse has 75 to
     * 250 ms is from memory of the standard.
     */
    private static boolean isMedical(List<Integer> rhythm) {
        List<Integer> pulses = pulses(rhythm);
        return List.of(1, 2, 3, 5, 10).contains(pulses.size())
                && pulses.stream().allMatch(pulse -> pulse >= 75 && pulse <= 250)
                && pulses.stream().allMatch(pulse -> alike(pulse, pulses.get(0)));
    }

    /** In dB of full scale, over the time in which it sounds. */
    private static double levelWhileOn(Sound sound) {
        double[] levels = levels(sound);
        double loudest = IntStream.range(0, levels.length)
                .mapToDouble(i -> levels[i])
                .max()
                .orElseThrow();
        double power = IntStream.range(0, levels.length)
                .mapToDouble(i -> levels[i])
                .filter(level -> level > loudest / 10)
                .map(level -> level * level)
                .average()
                .orElseThrow();
        return 10 * Math.log10(power / (32_768.0 * 32_768.0));
    }

    /** Which part of the energy lies between two frequencies: a discrete Fourier transform against Parseval's sum. */
    private static double share(Sound sound, int fromHertz, int toHertz) {
        short[] samples = sound.copySamples();
        int first = (int) Math.ceil((double) fromHertz * samples.length / Sound.RATE);
        int last = (int) Math.floor((double) toHertz * samples.length / Sound.RATE);
        double inside = 0;
        for (int k = first; k <= last; k++) {
            double step = 2 * Math.PI * k / samples.length;
            double turnCos = Math.cos(step);
            double turnSin = Math.sin(step);
            double cos = 1;
            double sin = 0;
            double real = 0;
            double imaginary = 0;
            for (short sample : samples) {
                real += sample * cos;
                imaginary += sample * sin;
                double next = cos * turnCos - sin * turnSin;
                sin = sin * turnCos + cos * turnSin;
                cos = next;
            }
            inside += 2 * (real * real + imaginary * imaginary) / samples.length;
        }
        double whole = sound.rms() * sound.rms() * samples.length;
        return inside / whole;
    }

    private static Sound pulsesOf(int count, int millis) {
        short[] samples = new short[count * 2 * millis * 16];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = i / (millis * 16) % 2 == 0 ? (short) (i % 2 == 0 ? 9_000 : -9_000) : 0;
        }
        return Sound.of(samples, 0);
    }

    @ParameterizedTest
    @CsvSource({"HEARD, 50", "SAVED, 340", "QUESTION, 740", "PROBLEM, 900"})
    void each_is_short(Cue cue, long millis) {
        assertThat(cue.sound().duration().toMillis()).isEqualTo(millis);
    }

    @Test
    void their_rhythms_are_those_that_were_meant() {
        assertThat(pulses(rhythm(Cue.HEARD.sound()))).hasSize(1);
        assertThat(pulses(rhythm(Cue.SAVED.sound())))
                .as("short, long")
                .satisfies(pulses -> assertThat(pulses).hasSize(2).isSorted());
        assertThat(pulses(rhythm(Cue.QUESTION.sound())))
                .as("long, short, longest")
                .satisfies(pulses -> {
                    assertThat(pulses).hasSize(3);
                    assertThat(pulses.get(1)).isLessThan(pulses.get(0) / 2);
                    assertThat(pulses.get(2)).isGreaterThan(pulses.get(0));
                });
        assertThat(rhythm(Cue.PROBLEM.sound())).as("without a pause").containsExactly(900);
    }

    @Test
    void no_two_have_the_same_rhythm() {
        for (Cue one : Cue.values()) {
            for (Cue other : Cue.values()) {
                assertThat(alike(rhythm(one.sound()), rhythm(other.sound())))
                        .as("%s and %s", one, other)
                        .isEqualTo(one == other);
            }
        }
    }

    @Test
    void the_patterns_of_medical_alarms_are_known_when_they_come() {
        for (int count : new int[] {1, 2, 3, 5, 10}) {
            assertThat(isMedical(rhythm(pulsesOf(count, 150))))
                    .as("%s pulses", count)
                    .isTrue();
        }
        assertThat(isMedical(rhythm(pulsesOf(4, 150)))).isFalse();
    }

    @ParameterizedTest
    @EnumSource
    void none_sounds_like_a_medical_alarm(Cue cue) {
        assertThat(isMedical(rhythm(cue.sound()))).as("%s", rhythm(cue.sound())).isFalse();
    }

    @Test
    void a_problem_is_at_least_6_dB_louder_than_what_goes_well() {
        double problem = levelWhileOn(Cue.PROBLEM.sound());
        assertThat(problem - levelWhileOn(Cue.SAVED.sound())).isGreaterThanOrEqualTo(6);
        assertThat(problem).isGreaterThan(levelWhileOn(Cue.QUESTION.sound()));
        assertThat(levelWhileOn(Cue.HEARD.sound())).isLessThan(levelWhileOn(Cue.SAVED.sound()));
    }

    /** NUREG-0700: warning sounds between 200 and 5000 Hz. */
    @ParameterizedTest
    @EnumSource
    void almost_all_of_it_lies_where_people_and_small_speakers_are_good(Cue cue) {
        assertThat(share(cue.sound(), 200, 5_000)).isBetween(0.99, 1.0001);
        assertThat(share(cue.sound(), 500, 3_000)).isGreaterThan(0.95);
    }

    @Test
    void the_share_of_a_low_tone_is_small() {
        short[] low = new short[Sound.RATE / 2];
        for (int i = 0; i < low.length; i++) {
            low[i] = (short) (9_000 * Math.sin(2 * Math.PI * 100 * i / Sound.RATE));
        }
        assertThat(share(Sound.of(low, 0), 200, 5_000)).isLessThan(0.01);
    }

    @ParameterizedTest
    @EnumSource
    void it_is_not_clipped_and_does_not_click(Cue cue) {
        short[] samples = cue.sound().copySamples();
        int peak = IntStream.range(0, samples.length)
                .map(i -> Math.abs(samples[i]))
                .max()
                .orElseThrow();
        assertThat(peak).isLessThan(30_000);
        assertThat(SoundMeasure.atFullScale(cue.sound())).isZero();
        assertThat(samples[0]).isZero();
        assertThat(Math.abs(samples[samples.length - 1])).isLessThan((short) 100);
        for (int i = 1; i < samples.length; i++) {
            // No tone of 2 kHz or less moves faster than this from sample to sample.
            assertThat(Math.abs(samples[i] - samples[i - 1]))
                    .isLessThan((int) (peak * 2 * Math.PI * 2_000 / Sound.RATE));
        }
    }
}
