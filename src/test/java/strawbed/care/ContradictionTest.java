package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** What is asked about because it cannot be. Common practice, no published source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ContradictionTest {
    private static final Instant BIRTH = Instant.parse("2026-03-03T02:00:00Z");
    private static final Instant NOW = Instant.parse("2026-03-03T06:00:00Z");
    private static final Event FED =
            new Event.ColostrumFed(new Volume(new BigDecimal(3), VolumeUnit.QUART), null, null);

    @Test
    void a_feed_at_one_of_a_calf_born_at_two_cannot_be() {
        Instant one = Instant.parse("2026-03-03T01:00:00Z");
        assertThat(of(FED, one, new When.At(BIRTH))).containsExactly(new Contradiction.BeforeBirth(one, BIRTH));
        assertThat(of(FED, BIRTH.minusMillis(1), new When.At(BIRTH))).hasSize(1);
        assertThat(of(FED, BIRTH, new When.At(BIRTH))).isEmpty();
    }

    @Test
    void inside_the_window_of_a_birth_anything_can_be() {
        When window = new When.Between(BIRTH, BIRTH.plusSeconds(7200));
        assertThat(of(FED, BIRTH.plusSeconds(1), window)).isEmpty();
        assertThat(of(FED, BIRTH.minusSeconds(1), window))
                .containsExactly(new Contradiction.BeforeBirth(BIRTH.minusSeconds(1), BIRTH));
    }

    @Test
    void without_a_birth_on_record_nothing_comes_before_it() {
        assertThat(of(FED, BIRTH.minusSeconds(3600), null)).isEmpty();
    }

    @Test
    void the_dam_her_colostrum_and_the_birth_may_be_older_than_the_calf() {
        Instant before = BIRTH.minusSeconds(60);
        List<Event> older = List.of(
                new Event.DamNoted("417", 2),
                new Event.TwinNoted(null, 2),
                new Event.CalvingEaseNoted(Term.CalvingEase.EASY_ASSIST, null),
                new Event.ColostrumTestedByBrix(new BigDecimal("24.5")),
                new Event.VetCalled(null),
                new Event.VoiceNoteTaken(null));
        assertThat(older)
                .allSatisfy(event ->
                        assertThat(of(event, before, new When.At(BIRTH))).isEmpty());
        assertThat(of(new Event.NavelDipped(null, null), before, new When.At(BIRTH)))
                .hasSize(1);
        assertThat(of(new Event.SexNoted(Term.Sex.MALE), before, new When.At(BIRTH)))
                .hasSize(1);
    }

    @Test
    void a_second_birth_at_another_time_cannot_be() {
        assertThat(of(born(BIRTH.plusSeconds(121)), BIRTH.plusSeconds(121), new When.At(BIRTH)))
                .containsExactly(new Contradiction.SecondBirth(BIRTH, BIRTH.plusSeconds(121)));
        assertThat(of(born(BIRTH.minusSeconds(121)), BIRTH.minusSeconds(121), new When.At(BIRTH)))
                .containsExactly(new Contradiction.SecondBirth(BIRTH, BIRTH.minusSeconds(121)));
        assertThat(of(born(BIRTH.plusSeconds(120)), BIRTH.plusSeconds(120), new When.At(BIRTH)))
                .as("the same birth, told twice")
                .isEmpty();
    }

    @Test
    void what_lies_ahead_did_not_happen() {
        Instant ahead = NOW.plusMillis(1);
        assertThat(of(FED, ahead, null)).containsExactly(new Contradiction.LaterThanNow(ahead));
        assertThat(of(FED, NOW, null)).isEmpty();
    }

    private static List<Contradiction> of(Event event, Instant at, @Nullable When birth) {
        return Contradiction.of(event, at, birth, NOW);
    }

    private static Event born(Instant at) {
        return new Event.CalfBorn(new When.At(at));
    }
}
