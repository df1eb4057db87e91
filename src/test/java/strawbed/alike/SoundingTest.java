package strawbed.alike;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundingTest {
    private static Sounding sounding(String phones) {
        return Sounding.of(List.of(phones), SoundingTest::split);
    }

    private static List<String> split(String phones) {
        return Arrays.asList(phones.split(" "));
    }

    @Test
    void a_phone_is_as_far_from_another_as_the_other_from_it_and_never_far_from_itself() {
        for (Phone one : Phone.values()) {
            assertThat(one.distance(one)).isZero();
            assertThat(one.weight()).isPositive();
            for (Phone other : Phone.values()) {
                assertThat(one.distance(other)).as(one + " " + other).isEqualTo(other.distance(one));
                if (one != other) {
                    assertThat(one.distance(other))
                            .as(one + " " + other)
                            .isGreaterThan(0)
                            .isLessThanOrEqualTo(1);
                }
            }
        }
    }

    /**
     * Source: G. A. Miller and P. E. Nicely, An Analysis of Perceptual Confusions Among Some English Consonants, Journal of
     * the Acoustical Society of America 27 (1955): in noise, place is lost first, while voicing and nasality stay; from
     * memory.
     */
    @Test
    void consonants_that_listeners_confuse_in_noise_are_nearer_than_those_they_do_not() {
        assertThat(Phone.P.distance(Phone.K)).isLessThan(Phone.P.distance(Phone.Z));
        assertThat(Phone.M.distance(Phone.N)).isLessThan(Phone.M.distance(Phone.B));
        assertThat(Phone.F.distance(Phone.TH)).isLessThan(Phone.F.distance(Phone.M));
        assertThat(Phone.B.distance(Phone.D)).isLessThan(Phone.B.distance(Phone.S));
        assertThat(Phone.M.distance(Phone.N)).isLessThan(Phone.M.distance(Phone.S));
    }

    @Test
    void the_same_sounds_are_wholly_close_and_different_ones_are_not() {
        assertThat(sounding("b r ih k s").closeness(sounding("b r ih k s"))).isEqualTo(1);
        assertThat(sounding("b r ih k s").distance(sounding("b r ih k s"))).isZero();
        assertThat(sounding("k ae f").closeness(sounding("n ey v ax l"))).isLessThan(0.3);
    }

    @Test
    void the_distance_is_that_of_the_cheapest_edits() {
        double lostN = Phone.N.weight();
        assertThat(sounding("f ih f t iy n").distance(sounding("f ih f t iy"))).isCloseTo(lostN, within(1e-9));
        assertThat(sounding("f ih f t iy").distance(sounding("f ih f t iy n"))).isCloseTo(lostN, within(1e-9));
        assertThat(sounding("m ae").distance(sounding("n ae"))).isCloseTo(Phone.M.distance(Phone.N), within(1e-9));
    }

    @Test
    void what_has_no_sound_is_close_to_nothing() {
        Sounding none = Sounding.of(List.of("12"), word -> List.of());
        assertThat(none.closeness(none)).isZero();
        assertThat(none.closeness(sounding("k ae f"))).isZero();
        assertThat(Sounding.of(List.of("x"), word -> List.of("pau"))).isEqualTo(none);
    }

    @Test
    void a_sound_that_the_dictionary_does_not_have_is_refused() {
        assertThatThrownBy(() -> sounding("k qq"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("qq");
    }
}
