package strawbed.text;

import org.jspecify.annotations.Nullable;
import strawbed.calf.Told;
import strawbed.care.AgeStart;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.care.DueTimes;
import strawbed.care.Ground;
import strawbed.care.Settled;
import strawbed.protocol.Protocol;

/** Due items for tests of their words: of calf A, by the usual protocol. */
final class DueItems {
    private DueItems() {}

    static DueItem item(DueKind kind, DueState state, @Nullable String from, String dueAt) {
        return new DueItem(
                Told.calf("A"),
                kind,
                new DueTimes(from == null ? Told.MIDNIGHT : Told.time(from), Told.time(dueAt), Told.time(dueAt), null),
                state,
                new Settled.Not(),
                new Ground(AgeStart.Basis.BORN, null, Protocol.usual()));
    }
}
