package strawbed.statement;

import java.util.List;

/**
 * What a sound was taken for.
 *
 * @param misgivings why it is asked about or not believed, as far as that lies in the sound; empty where nothing speaks
 *     against it
 */
record Weighed(Interpretation meaning, List<Misgiving> misgivings) {
    Weighed {
        misgivings = List.copyOf(misgivings);
    }
}
