package strawbed.event;

import java.time.Duration;
import java.time.Instant;

/** When something happened: at a known instant, or somewhere in a window. */
public sealed interface When {
    /** The instant for sorting and for figures: the known one, or the middle of the window. */
    Instant midpoint();

    /** A known instant. */
    record At(Instant at) implements When {
        @Override
        public Instant midpoint() {
            return at;
        }
    }

    /**
     * Some time in a window, ends included.
     *
     * @param earliest not after latest
     */
    record Between(Instant earliest, Instant latest) implements When {
        public Between {
            if (earliest.isAfter(latest)) {
                throw new IllegalArgumentException(
                        "a window cannot end at " + latest + ", before it begins at " + earliest);
            }
        }

        @Override
        public Instant midpoint() {
            return earliest.plus(Duration.between(earliest, latest).dividedBy(2));
        }
    }
}
