package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** All that was told of a calf, as it happened; what was withdrawn stays and says so. */
record History(CalfRecord calf, Messages messages, Figures figures, EventPhrases phrases) {
    /** What is told later than this is told from memory. Common practice, no published source. */
    private static final Duration LATER = Duration.ofMinutes(15);

    List<Line> lines() {
        return calf.history().stream()
                .filter(entry -> !(entry.recorded().event() instanceof EventWithdrawn))
                .sorted(Comparator.comparing(
                                (CalfRecord.Entry entry) -> entry.recorded().occurredAt())
                        .thenComparing(entry -> entry.recorded().sequence()))
                .map(this::line)
                .toList();
    }

    private Line line(CalfRecord.Entry entry) {
        RecordedEvent recorded = entry.recorded();
        List<String> remarks = new ArrayList<>();
        if (Duration.between(recorded.occurredAt(), recorded.recordedAt()).compareTo(LATER) > 0) {
            remarks.add(messages.text(
                    ACCOUNT_TOLD_LATER, figures.clockAsSeenFrom(recorded.occurredAt(), recorded.recordedAt())));
        }
        if (entry.withdrawn()) {
            remarks.add(withdrawal(recorded.id())
                    .map(by -> messages.text(
                            ACCOUNT_WITHDRAWN_AT, figures.clockAsSeenFrom(recorded.occurredAt(), by.recordedAt())))
                    .orElseGet(() -> messages.text(ACCOUNT_WITHDRAWN)));
        }
        String what = phrases.of(recorded.event());
        return new Line(
                figures.dayAndClock(recorded.occurredAt()),
                entry.withdrawn() ? messages.text(ACCOUNT_NO_LONGER, what) : what,
                remarks);
    }

    /** A withdrawal told under another calf is not found here. */
    private Optional<RecordedEvent> withdrawal(EventId id) {
        return calf.history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(CalfRecord.Entry::recorded)
                .filter(recorded -> recorded.event() instanceof EventWithdrawn by
                        && by.event().equals(id))
                .findFirst();
    }
}
