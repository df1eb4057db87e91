package strawbed.entry;

import strawbed.measure.MassUnit;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.VolumeUnit;

/** The units on the number pads. */
public enum EntryUnit {
    QUART,
    PINT,
    LITRE,
    POUND,
    KILOGRAM,
    FAHRENHEIT,
    CELSIUS,
    PERCENT,
    PER_MINUTE,
    MILLIGRAMS_A_MILLILITRE,
    GRAMS_A_DECILITRE,
    GRAMS_A_LITRE;

    VolumeUnit volume() {
        return VolumeUnit.valueOf(name());
    }

    MassUnit mass() {
        return MassUnit.valueOf(name());
    }

    TemperatureUnit temperature() {
        return TemperatureUnit.valueOf(name());
    }

    static EntryUnit of(Enum<?> measure) {
        return valueOf(measure.name());
    }

    boolean isMetric() {
        return this == LITRE || this == KILOGRAM || this == CELSIUS;
    }
}
