package strawbed.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A sign of a newborn calf's vigour that a farm can choose to count. What is normal stands with the care rules. */
public enum CountedSign {
    BREATHING,
    HEAD_UP,
    ON_BREASTBONE,
    STANDING,
    SUCKING,
    TEMPERATURE,
    HEART_RATE,
    BREATHING_RATE,
    GUMS,
    SUCK_REFLEX,
    NO_YELLOW_STAIN,
    NO_SWELLING,
    NO_WEAKNESS,
    NO_LIMP;

    /** The word in the protocol. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** All are counted where the farm says nothing. */
    static Allowed allowed() {
        List<String> words = Arrays.stream(values()).map(CountedSign::word).toList();
        return new Allowed.Words(String.join(", ", words), words);
    }
}
