package strawbed.station;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strawbed.entry.EntryGroup;

/**
 * What people chose for this station.
 *
 * @param microphone its name; empty for the one that the system prefers
 * @param speaker its name; empty for the one that the system prefers
 * @param holdToTalk whether it listens only while the talk key is held
 * @param headset whether the voice is heard in a headset, so that it can listen while it speaks
 * @param voice whether it speaks at all
 * @param unspoken what it saves and reads back on the screen alone, as long as there is no doubt
 * @param dark light letters on dark
 * @param spanish whether screen and paper are Spanish
 * @param dotsPerInch as measured with a ruler; empty for what the system says
 * @param operators who may be chosen
 * @param announceAgain after what time a late task is announced again
 * @param putOffFor how long a task that was put off stays quiet
 * @param pedal what each key of a pedal, clicker or keyboard means, by the key's code
 */
public record Choices(
        Optional<String> microphone,
        Optional<String> speaker,
        boolean holdToTalk,
        boolean headset,
        boolean voice,
        Set<EntryGroup> unspoken,
        boolean dark,
        boolean spanish,
        Optional<Double> dotsPerInch,
        List<String> operators,
        Duration announceAgain,
        Duration putOffFor,
        Map<Integer, Meaning> pedal) {
    /** What holds where nobody chose. */
    public static final Choices USUAL = new Choices(
            Optional.empty(),
            Optional.empty(),
            false,
            false,
            true,
            Set.of(),
            false,
            false,
            Optional.empty(),
            List.of(),
            Duration.ofMinutes(10),
            Duration.ofMinutes(30),
            Map.of());

    public Choices {
        unspoken = Set.copyOf(unspoken);
        operators = List.copyOf(operators);
        pedal = Map.copyOf(pedal);
    }
}
