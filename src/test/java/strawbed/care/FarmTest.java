package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event.ColostrumStored;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FarmTest {
    private final Told told = new Told();

    @Test
    void a_batch_is_what_was_stored_under_its_number_last() {
        store("06:00", "9", "1");
        store("07:00", "9", "2");
        store("07:00", "8", "3");
        assertThat(litres("9", "06:59")).isEqualTo("1");
        assertThat(litres("9", "07:00")).isEqualTo("2");
        assertThat(litres("8", "07:00")).isEqualTo("3");
        assertThat(litres("9", "05:59")).isEqualTo("none");
        assertThat(litres("7", "08:00")).isEqualTo("none");
        assertThat(farm().stored()).hasSize(3);
    }

    @Test
    void a_batch_told_late_does_not_hide_a_later_one() {
        store("07:00", "9", "2");
        store("06:00", "9", "1");
        assertThat(litres("9", "08:00")).isEqualTo("2");
        assertThat(litres("9", "06:30")).isEqualTo("1");
    }

    private void store(String time, String batch, String litres) {
        told.tell(
                null,
                Told.time(time),
                new ColostrumStored(batch, new Volume(new BigDecimal(litres), VolumeUnit.LITRE), null, null));
    }

    private Farm farm() {
        return Farm.of(told.herd());
    }

    private String litres(String batch, String time) {
        return farm().storedAs(batch, Told.time(time))
                .map(stored -> stored.event().volume().inLitres().toPlainString())
                .orElse("none");
    }
}
