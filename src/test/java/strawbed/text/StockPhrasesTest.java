package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.care.StoredColostrum;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Units;

/** Colostrum in stock as it is told; the limits are those of the usual protocol, with their sources. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StockPhrasesTest {
    private static final StockPhrases PHRASES =
            new StockPhrases(new Messages(Locale.US), ZoneOffset.UTC, Units.AS_SPOKEN);

    @Test
    void it_keeps_then_must_be_used_then_is_past_its_time() {
        StoredColostrum chilled = stored("25", null);
        assertThat(PHRASES.name(chilled)).isEqualTo("batch 9");
        assertThat(PHRASES.stands(chilled, Told.time("10:00")))
                .isEqualTo("3 liters left; 25 percent Brix: good for a first feed; keeps until Tue 3 Mar 00:00");
        assertThat(PHRASES.stands(chilled, Told.time("40:00"))).endsWith("USE SOON, by 00:00");
        assertThat(PHRASES.stands(chilled, Told.time("50:00"))).endsWith("PAST ITS TIME since 00:00");
    }

    @Test
    void a_reading_that_cannot_be_has_no_verdict() {
        assertThat(PHRASES.stands(stored("45", null), Told.time("10:00")))
                .contains("45 percent Brix: not judged: the reading can hardly be true");
    }

    @Test
    void each_treatment_has_its_limits_with_their_sources() {
        assertThat(PHRASES.why(stored(null, Term.ColostrumTreatment.FROZEN)))
                .containsExactly(
                        "Frozen it keeps 365 days. Source: Ontario calf-care extension, Storing colostrum.",
                        "Thaw it in water no hotter than 122 °F, not at room heat. Source: Ontario calf-care"
                                + " extension, Storing colostrum.");
        assertThat(PHRASES.why(stored(null, null)))
                .containsExactly("In a refrigerator it keeps 2 days; at room temperature no longer than 30 min. Source:"
                        + " common practice, no published source; Ontario calf-care extension, Storing colostrum.");
        assertThat(PHRASES.why(stored(null, Term.ColostrumTreatment.HEAT_TREATED)))
                .hasSize(2)
                .last()
                .asString()
                .startsWith("Heat treated no hotter than 140 °F, for at least 1 h. Source: Donahue 2012");
    }

    private static StoredColostrum stored(@Nullable String brix, Term.@Nullable ColostrumTreatment treatment) {
        Told told = new Told();
        told.tell(
                null,
                Told.MIDNIGHT,
                new Event.ColostrumStored(
                        "9",
                        new Volume(new BigDecimal(3), VolumeUnit.LITRE),
                        brix == null ? null : new BigDecimal(brix),
                        treatment));
        List<StoredColostrum> stock = StoredColostrum.of(told.herd(), Told.MIDNIGHT);
        assertThat(stock).hasSize(1);
        return stock.get(0);
    }
}
