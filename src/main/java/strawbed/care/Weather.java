package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.BarnClimateNoted;
import strawbed.event.Term.Shelter;
import strawbed.measure.Temperature;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * What the barn's air is to a calf: cold below its lower critical temperature, hot above a heat index at which its
 * welfare is at risk. That either asks for shelter is common practice, no published source.
 *
 * @param reading the air it rests on
 * @param criticalFahrenheit the calf's lower critical temperature at the time of the reading
 * @param heatIndex see {@link HeatIndex}; null where the humidity was not told
 */
public record Weather(
        Timed<BarnClimateNoted> reading,
        BigDecimal criticalFahrenheit,
        @Nullable BigDecimal heatIndex,
        Load load) {
    /** How the air strains a calf. */
    public enum Load {
        NONE,
        COLD,
        /** Hot enough to put its welfare at risk. */
        HEAT_AT_RISK,
        /** So hot that heat stress is marked. */
        HEAT_MARKED
    }

    private static final Set<Shelter> AGAINST_COLD =
            Set.of(Shelter.HEAT_LAMP, Shelter.BLANKET, Shelter.JACKET, Shelter.WARM_BOX);

    /** Empty when nothing that still holds is known of the air, or the calf has no age. */
    public static Optional<Weather> of(CalfRecord calf, Farm farm, Instant now) {
        return farm.airAt(now)
                .flatMap(reading ->
                        AgeStart.of(calf).map(start -> of(reading, start.ageAt(reading.at()), farm.protocolFor(calf))));
    }

    private static Weather of(Timed<BarnClimateNoted> reading, Duration age, Protocol protocol) {
        Temperature air = reading.event().temperature();
        BigDecimal critical = CriticalTemperature.fahrenheitAt(age);
        BigDecimal humidity = reading.event().humidity();
        BigDecimal index = humidity == null ? null : HeatIndex.of(air, humidity);
        Load load = air.inFahrenheit().compareTo(critical) < 0 ? Load.COLD : heat(index, protocol);
        return new Weather(reading, critical, index, load);
    }

    private static Load heat(@Nullable BigDecimal index, Protocol protocol) {
        if (index == null || index.compareTo(protocol.number(Setting.HEAT_INDEX_AT_RISK)) <= 0) {
            return Load.NONE;
        }
        return index.compareTo(protocol.number(Setting.HEAT_INDEX_MARKED)) > 0 ? Load.HEAT_MARKED : Load.HEAT_AT_RISK;
    }

    boolean isCold() {
        return load == Load.COLD;
    }

    boolean asksForShelter() {
        return load != Load.NONE;
    }

    /** Whether this shelter helps in this weather. */
    boolean isHelpedBy(Shelter shelter) {
        return isCold() == AGAINST_COLD.contains(shelter);
    }
}
