package strawbed.statement;

import java.util.Set;

/**
 * What the interpreter knows of the farm's record while it listens.
 *
 * @param openCalves the numbers of the open calves
 * @param sameCalf whether "same calf" means one
 */
public record Listening(Set<String> openCalves, boolean sameCalf) {
    public Listening {
        openCalves = Set.copyOf(openCalves);
    }
}
