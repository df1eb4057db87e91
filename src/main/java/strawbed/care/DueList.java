package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;

/**
 * What is due for calves at a given time.
 *
 * <p>One calf's items and the herd's open items come in one order: what is pressing (due or late) first, the kinds in
 * the order of {@link DueKind} because a late tag matters less to a calf than colostrum that is only due; then what is
 * ahead, the soonest first; then what was missed; then what is done or needless. Equals follow their due time, then the
 * order in which the calves were opened.
 */
public final class DueList {
    private static final Duration FIRST_DAY = Duration.ofHours(24);
    private static final Duration SERUM_DAYS = Duration.ofDays(7);

    private DueList() {}

    /** All items of a calf, the done and the needless ones too; of a dead calf nothing stays open. */
    public static List<DueItem> of(CalfRecord calf, Instant now) {
        return AgeStart.of(calf).stream()
                .flatMap(start -> items(calf, start, now).stream())
                .sorted(order())
                .toList();
    }

    /**
     * The open items of all living calves: within 24 hours of the birth or the finding, the serum sample within 7 days.
     */
    public static List<DueItem> open(Herd herd, Instant now) {
        List<DueItem> open = new ArrayList<>();
        for (CalfRecord calf : herd.calves()) {
            if (calf.isOpen()) {
                AgeStart.of(calf)
                        .filter(start -> start.ageAt(now).compareTo(SERUM_DAYS) < 0)
                        .ifPresent(start -> items(calf, start, now).stream()
                                .filter(item -> item.state().isOpen() && isAsked(item.kind(), start.ageAt(now)))
                                .forEach(open::add));
            }
        }
        return open.stream().sorted(order()).toList();
    }

    private static boolean isAsked(DueKind kind, Duration age) {
        return kind == DueKind.SERUM_SAMPLE || age.compareTo(FIRST_DAY) < 0;
    }

    private static List<DueItem> items(CalfRecord calf, AgeStart start, Instant now) {
        DueItems items = new DueItems(calf, start, now);
        FirstDay.addTo(items);
        Rechecks.addTo(items);
        return items.all();
    }

    /** Stable sorting keeps the calves in order where all else is equal. */
    private static Comparator<DueItem> order() {
        return Comparator.comparingInt((DueItem item) -> group(item.state()))
                .thenComparing(item -> item.state().isPressing() ? item.kind() : DueKind.BREATHING_RECHECK)
                .thenComparing(DueItem::dueAt)
                .thenComparing(DueItem::kind);
    }

    private static int group(DueState state) {
        return switch (state) {
            case DUE, LATE -> 0;
            case AHEAD -> 1;
            case MISSED -> 2;
            case DONE, NOT_NEEDED -> 3;
        };
    }
}
