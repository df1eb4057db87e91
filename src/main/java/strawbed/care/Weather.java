package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.BarnClimateNoted;
import strawbed.event.Term.Shelter;
import strawbed.measure.Temperature;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * Weather that asks for shelter, as the barn's air tells: below the calf's lower critical temperature, or a heat index
 * at which its welfare is at risk. That such weather asks for it is common practice, no published source.
 *
 * @param reading the air it rests on
 * @param isCold or else hot
 */
record Weather(Timed<BarnClimateNoted> reading, boolean isCold) {
    private static final Set<Shelter> AGAINST_COLD =
            Set.of(Shelter.HEAT_LAMP, Shelter.BLANKET, Shelter.JACKET, Shelter.WARM_BOX);

    /** Empty when the air is fine, or when nothing that still holds is known of it. */
    static Optional<Weather> of(CalfRecord calf, Farm farm, Instant now) {
        return farm.airAt(now)
                .flatMap(reading -> AgeStart.of(calf)
                        .flatMap(start -> of(reading, start.ageAt(reading.at()), farm.protocolFor(calf))));
    }

    private static Optional<Weather> of(Timed<BarnClimateNoted> reading, Duration age, Protocol protocol) {
        Temperature air = reading.event().temperature();
        if (air.inFahrenheit().compareTo(CriticalTemperature.fahrenheitAt(age)) < 0) {
            return Optional.of(new Weather(reading, true));
        }
        return Optional.ofNullable(reading.event().humidity())
                .filter(humidity ->
                        HeatIndex.of(air, humidity).compareTo(protocol.number(Setting.HEAT_INDEX_AT_RISK)) > 0)
                .map(humidity -> new Weather(reading, false));
    }

    /** Whether this shelter helps in this weather. */
    boolean isHelpedBy(Shelter shelter) {
        return isCold == AGAINST_COLD.contains(shelter);
    }
}
