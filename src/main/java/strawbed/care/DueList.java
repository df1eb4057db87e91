package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * What is due for calves at a given time, by the protocol in force at each one's birth.
 *
 * <p>One calf's items and the herd's open items come in one order: what is late or must be done within the hour first,
 * the kinds in the order of {@link DueKind} because a late tag matters less to a calf than colostrum that is only due;
 * then what is due later or lies ahead, the soonest first; then what was missed; then what is done or needless. Equals
 * follow their due time, then their kind, then the order in which the calves were opened.
 */
public final class DueList {
    /** What must be done within this time is urgent. Common practice, no published source. */
    private static final Duration URGENT = Duration.ofHours(1);

    private DueList() {}

    /** All items of a calf, the done and the needless ones too; of a dead calf nothing stays open. */
    public static List<DueItem> of(CalfRecord calf, Farm farm, Instant now) {
        List<DueItem> items =
                AgeStart.of(calf).map(start -> items(calf, start, farm, now)).orElseGet(List::of);
        return items.stream().sorted(order(now)).toList();
    }

    /**
     * The open items of all living calves: up to the age that the farm set for its due list, the serum sample up to
     * the age at which blood may still be drawn.
     */
    public static List<DueItem> open(Herd herd, Instant now) {
        Farm farm = Farm.of(herd);
        Duration shown = farm.protocol().time(Setting.DUE_LIST_HOURS);
        // By kind, so that the sorting finds long runs that are nearly in order.
        Map<DueKind, List<DueItem>> open = new EnumMap<>(DueKind.class);
        for (CalfRecord calf : herd.calves()) {
            if (calf.isOpen()) {
                AgeStart.of(calf).ifPresent(start -> addOpen(calf, start, farm, now, shown, open));
            }
        }
        // Stable sorting keeps the calves in order where all else is equal.
        return open.values().stream().flatMap(List::stream).sorted(order(now)).toList();
    }

    private static void addOpen(
            CalfRecord calf, AgeStart start, Farm farm, Instant now, Duration shown, Map<DueKind, List<DueItem>> open) {
        Protocol protocol = farm.protocolFor(calf);
        Duration age = start.ageAt(now);
        boolean young = age.compareTo(shown) < 0;
        if (!young && age.compareTo(protocol.time(Setting.SAMPLE_UNTIL_DAYS)) >= 0) {
            return;
        }
        for (DueItem item : items(calf, start, farm, now)) {
            if (item.state().isOpen() && (young || item.kind() == DueKind.SERUM_SAMPLE)) {
                open.computeIfAbsent(item.kind(), kind -> new ArrayList<>()).add(item);
            }
        }
    }

    private static List<DueItem> items(CalfRecord calf, AgeStart start, Farm farm, Instant now) {
        DueItems items = new DueItems(calf, start, now, farm.protocolFor(calf));
        FirstDay.addTo(items, farm);
        Rechecks.addTo(items);
        return items.all();
    }

    private static Comparator<DueItem> order(Instant now) {
        Instant urgentUntil = now.plus(URGENT);
        return Comparator.comparingInt((DueItem item) -> group(item, urgentUntil))
                .thenComparing(item -> isUrgent(item, urgentUntil) ? item.kind() : DueKind.BREATHING_RECHECK)
                .thenComparing(item -> item.state() == DueState.AHEAD ? item.from() : item.dueAt())
                .thenComparing(DueItem::kind);
    }

    private static int group(DueItem item, Instant urgentUntil) {
        return switch (item.state()) {
            case DUE, LATE -> isUrgent(item, urgentUntil) ? 0 : 1;
            case AHEAD -> 1;
            case MISSED -> 2;
            case DONE, NOT_NEEDED -> 3;
        };
    }

    private static boolean isUrgent(DueItem item, Instant urgentUntil) {
        return item.state().isPressing() && !item.dueAt().isAfter(urgentUntil);
    }
}
