package strawbed.care;

import strawbed.measure.Temperature;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * The lines for a calf's own temperature, compared exactly in Fahrenheit, the scale the sources use: 100.0 F is not
 * cold yet, 99.9 F is.
 * The lines and their sources are those of the farm's protocol.
 */
final class Cold {
    private Cold() {}

    static boolean isCold(Temperature temperature, Protocol protocol) {
        return temperature.inFahrenheit().compareTo(protocol.number(Setting.COLD_BELOW_FAHRENHEIT)) < 0;
    }

    static boolean isVeryCold(Temperature temperature, Protocol protocol) {
        return temperature.inFahrenheit().compareTo(protocol.number(Setting.VERY_COLD_BELOW_FAHRENHEIT)) < 0;
    }

    static boolean isWarm(Temperature temperature, Protocol protocol) {
        return temperature.inFahrenheit().compareTo(protocol.number(Setting.WARM_FROM_FAHRENHEIT)) >= 0;
    }
}
