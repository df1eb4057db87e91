package strawbed.care;

import org.jspecify.annotations.Nullable;
import strawbed.calf.Timed;
import strawbed.protocol.Protocol;

/**
 * What an item rests on.
 *
 * @param basis how well the birth is known that the calf's age is counted from
 * @param event the event that asked for the item; null where the birth did
 * @param protocol the protocol in force at the calf's birth
 */
public record Ground(AgeStart.Basis basis, @Nullable Timed<?> event, Protocol protocol) {
    /** Whether its times are counted from an assumed birth. */
    public boolean isAssumed() {
        return event == null && basis != AgeStart.Basis.BORN;
    }
}
