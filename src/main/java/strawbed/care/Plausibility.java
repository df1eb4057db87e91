package strawbed.care;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Event.BarnClimateNoted;
import strawbed.event.Event.BreathingRateCounted;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumStored;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.ColostrumTestedByHydrometer;
import strawbed.event.Event.HeartRateCounted;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SerumTested;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Term;
import strawbed.measure.Temperature;

/** Which figures of an event are out of the ordinary. Both ends of a range are ordinary; a missing figure is too. */
public final class Plausibility {
    private static final String COMMON = "common practice, no published source";
    private static final Range COLOSTRUM_BRIX = new Range(
            "colostrum brix",
            "%",
            "8.5",
            "35.4",
            "range seen in the German Holstein heat-treatment study 2020 (PMC7106573)");
    private static final Range SERUM_BRIX = new Range("serum brix", "%", "7.3", "12.4", "range seen by Deelen 2014");
    private static final Range SERUM_PROTEIN =
            new Range("serum protein", "g/dL", "4.4", "8.8", "range seen by Deelen 2014");
    private static final Range SERUM_ANTIBODY =
            new Range("serum antibody", "g/L", "2.1", "59.1", "range seen by Deelen 2014");
    private static final Range WEIGHT = new Range("weight", "kg", "15", "70", COMMON);
    private static final Range CALF_TEMPERATURE = new Range("calf temperature", "C", "32", "43", COMMON);
    private static final Range HEART_RATE = new Range("heart rate", "per minute", "40", "250", COMMON);
    private static final Range BREATHING_RATE = new Range("breathing rate", "per minute", "10", "150", COMMON);
    private static final Range FEED = new Range("feed", "L", "0", "6", COMMON);
    private static final Range WARMED_TO = new Range("feed temperature", "C", "30", "50", COMMON);
    private static final Range HYDROMETER = new Range("hydrometer", "mg/mL", "0", "160", COMMON);
    private static final Range MILK_TEMPERATURE = new Range("milk temperature", "C", "0", "60", COMMON);
    private static final Range BARN_TEMPERATURE = new Range("barn temperature", "C", "-40", "50", COMMON);
    private static final Range HUMIDITY = new Range("humidity", "%", "0", "100", "by definition");
    private static final Range DIP_STRENGTH = new Range("navel dip strength", "%", "0", "10", COMMON);

    private Plausibility() {}

    /** The odd figures of this event, in the order of its parts; mostly none. */
    public static List<Oddity> of(Event event) {
        List<Oddity> odd = new ArrayList<>();
        if (event instanceof ColostrumTestedByBrix tested) {
            COLOSTRUM_BRIX.check(tested.brix(), odd);
        } else if (event instanceof ColostrumStored stored) {
            COLOSTRUM_BRIX.check(stored.brix(), odd);
        } else if (event instanceof ColostrumTestedByHydrometer tested) {
            HYDROMETER.check(tested.reading(), odd);
            MILK_TEMPERATURE.check(celsius(tested.milk()), odd);
        } else if (event instanceof ColostrumFed fed) {
            FEED.check(fed.volume().inLitres(), odd);
            WARMED_TO.check(celsius(fed.warmedTo()), odd);
        } else if (event instanceof SerumTested tested) {
            ofSerum(tested.kind()).check(tested.value(), odd);
        } else if (event instanceof CalfWeighed weighed) {
            WEIGHT.check(weighed.weight().inKilograms(), odd);
        } else if (event instanceof TemperatureTaken taken) {
            CALF_TEMPERATURE.check(celsius(taken.temperature()), odd);
        } else if (event instanceof HeartRateCounted counted) {
            HEART_RATE.check(BigDecimal.valueOf(counted.perMinute()), odd);
        } else if (event instanceof BreathingRateCounted counted) {
            BREATHING_RATE.check(BigDecimal.valueOf(counted.perMinute()), odd);
        } else if (event instanceof NavelDipped dipped) {
            DIP_STRENGTH.check(dipped.percent(), odd);
        } else if (event instanceof BarnClimateNoted noted) {
            BARN_TEMPERATURE.check(celsius(noted.temperature()), odd);
            HUMIDITY.check(noted.humidity(), odd);
        }
        return List.copyOf(odd);
    }

    private static Range ofSerum(Term.SerumMeasure kind) {
        return switch (kind) {
            case PROTEIN -> SERUM_PROTEIN;
            case BRIX -> SERUM_BRIX;
            case IGG -> SERUM_ANTIBODY;
        };
    }

    private static @Nullable BigDecimal celsius(@Nullable Temperature temperature) {
        return Optional.ofNullable(temperature).map(Temperature::inCelsius).orElse(null);
    }

    private record Range(String quantity, String unit, BigDecimal low, BigDecimal high, String source) {
        Range(String quantity, String unit, String low, String high, String source) {
            this(quantity, unit, new BigDecimal(low), new BigDecimal(high), source);
        }

        void check(@Nullable BigDecimal value, List<Oddity> odd) {
            if (value != null && (value.compareTo(low) < 0 || value.compareTo(high) > 0)) {
                odd.add(new Oddity(quantity, value, unit, low, high, source));
            }
        }
    }
}
