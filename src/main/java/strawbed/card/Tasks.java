package strawbed.card;

import java.time.Instant;
import java.util.List;
import strawbed.care.DueItem;
import strawbed.care.DueState;
import strawbed.report.ToDo;
import strawbed.text.DuePhrases;

/** What is still to do, with clock times: a card is read hours after it was printed. */
record Tasks(Instant now, DuePhrases phrases) {
    List<ToDo> of(List<DueItem> due) {
        return due.stream()
                .filter(item -> item.state().isOpen() && item.state() != DueState.MISSED)
                .map(item -> new ToDo(phrases.brief(item), phrases.onPaper(item, now)))
                .toList();
    }
}
