package strawbed.care;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.BarnClimateNoted;
import strawbed.event.Term.Shelter;

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
        return Optional.empty();
    }

    /** Whether this shelter helps in this weather. */
    boolean isHelpedBy(Shelter shelter) {
        return isCold == AGAINST_COLD.contains(shelter);
    }
}
