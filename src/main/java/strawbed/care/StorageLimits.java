package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * The farm's limits for handling stored colostrum, to be shown as facts: nothing on record tells whether they were kept.
 * The sources of the usual ones stand with their settings.
 *
 * @param atRoom how long it stands at room temperature at most
 * @param thawWater how warm the water is at most in which it thaws
 * @param heatTreatment how warm it is heat treated at most
 * @param heatTreatedFor how long it is heat treated at least
 */
public record StorageLimits(
        Duration atRoom, Temperature thawWater, Temperature heatTreatment, Duration heatTreatedFor) {
    public static StorageLimits of(Protocol protocol) {
        return new StorageLimits(
                protocol.time(Setting.ROOM_MINUTES),
                fahrenheit(protocol.number(Setting.THAW_WATER_MOST_FAHRENHEIT)),
                fahrenheit(protocol.number(Setting.HEAT_TREATMENT_MOST_FAHRENHEIT)),
                protocol.time(Setting.HEAT_TREATMENT_LEAST_MINUTES));
    }

    private static Temperature fahrenheit(BigDecimal degrees) {
        return new Temperature(degrees, TemperatureUnit.FAHRENHEIT);
    }
}
