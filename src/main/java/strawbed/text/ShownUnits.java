package strawbed.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Units;

/**
 * Amounts in the units that a farm wants to see. What was spoken in these units stays as it was; what was not is
 * converted once, from what was spoken, and rounded half up to 0.1 L or a quarter quart, half a kilogram or a pound, and
 * a tenth of a degree; the steps are common practice, no published source.
 */
record ShownUnits(Units units) {
    Volume of(Volume said) {
        boolean isMetric = said.unit() == VolumeUnit.LITRE;
        return switch (units) {
            case AS_SPOKEN -> said;
            case METRIC ->
                isMetric ? said : new Volume(stepped(said.inLitres(), BigDecimal.ONE, "0.1"), VolumeUnit.LITRE);
            case US ->
                isMetric
                        ? new Volume(stepped(said.inLitres(), litres(VolumeUnit.QUART), "0.25"), VolumeUnit.QUART)
                        : said;
        };
    }

    Mass of(Mass said) {
        boolean isMetric = said.unit() == MassUnit.KILOGRAM;
        return switch (units) {
            case AS_SPOKEN -> said;
            case METRIC ->
                isMetric ? said : new Mass(stepped(said.inKilograms(), BigDecimal.ONE, "0.5"), MassUnit.KILOGRAM);
            case US ->
                isMetric
                        ? new Mass(
                                stepped(
                                        said.inKilograms(),
                                        new Mass(BigDecimal.ONE, MassUnit.POUND).inKilograms(),
                                        "1"),
                                MassUnit.POUND)
                        : said;
        };
    }

    Temperature of(Temperature said) {
        boolean isMetric = said.unit() == TemperatureUnit.CELSIUS;
        return switch (units) {
            case AS_SPOKEN -> said;
            case METRIC ->
                isMetric
                        ? said
                        : new Temperature(said.inCelsius().setScale(1, RoundingMode.HALF_UP), TemperatureUnit.CELSIUS);
            case US ->
                isMetric
                        ? new Temperature(
                                said.inFahrenheit().setScale(1, RoundingMode.HALF_UP), TemperatureUnit.FAHRENHEIT)
                        : said;
        };
    }

    private static BigDecimal litres(VolumeUnit unit) {
        return new Volume(BigDecimal.ONE, unit).inLitres();
    }

    /** How many units an amount is, to the nearest step. */
    private static BigDecimal stepped(BigDecimal amount, BigDecimal unit, String step) {
        BigDecimal stepInBase = unit.multiply(new BigDecimal(step));
        return amount.divide(stepInBase, 0, RoundingMode.HALF_UP).multiply(new BigDecimal(step));
    }
}
