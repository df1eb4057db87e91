package strawbed.station;

import java.util.List;
import java.util.Optional;

/**
 * All that the window shows at one time.
 *
 * @param sign whether anybody listens
 * @param signWord the same in a word
 * @param heading of a page that is worked at from near; empty on the page that is read from afar
 * @param note something that must be known, such as that there is no microphone; may be empty
 * @param operator who works, in a line; may be empty
 * @param body the middle
 * @param keys along the lower edge, from left to right
 * @param confirm what the confirming key or pedal does; empty to press the key that has the focus
 * @param cancel what the cancelling key or pedal does
 */
public record Screen(
        Sign sign,
        String signWord,
        String heading,
        String note,
        String operator,
        Body body,
        List<Key> keys,
        Optional<Act> confirm,
        Optional<Act> cancel) {
    public Screen {
        keys = List.copyOf(keys);
    }

    /** Whether it is worked at from near, and not read from two metres. */
    public boolean isNear() {
        return !heading.isEmpty();
    }
}
