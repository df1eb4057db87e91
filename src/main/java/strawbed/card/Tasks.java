package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import strawbed.care.DueItem;
import strawbed.care.DueState;
import strawbed.report.ToDo;
import strawbed.text.DuePhrases;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** What is still to do, with clock times: a card is read hours after it was printed. */
record Tasks(Instant now, Messages messages, Figures figures, DuePhrases phrases) {
    private static final Duration A_DAY = Duration.ofDays(1);

    List<ToDo> of(List<DueItem> due) {
        return due.stream()
                .filter(item -> item.state().isOpen() && item.state() != DueState.MISSED)
                .map(item -> new ToDo(phrases.brief(item), when(item)))
                .toList();
    }

    private String when(DueItem item) {
        Instant from = item.from();
        if (item.state() != DueState.AHEAD || from == null) {
            return item.dueAt().isAfter(now)
                    ? messages.text(CARD_BY, figures.clockAsSeenFrom(now, item.dueAt()))
                    : messages.text(CARD_NOW);
        }
        // Of a window of days only the days matter.
        return Duration.between(from, item.dueAt()).compareTo(A_DAY) > 0
                ? messages.text(CARD_FROM_TO, figures.date(from), figures.date(item.dueAt()))
                : messages.text(
                        CARD_FROM_TO, figures.clockAsSeenFrom(now, from), figures.clockAsSeenFrom(from, item.dueAt()));
    }
}
