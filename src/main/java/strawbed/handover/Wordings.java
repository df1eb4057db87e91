package strawbed.handover;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.text.CalfNames;
import strawbed.text.DuePhrases;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** The words that the sections of a sheet share. */
record Wordings(
        Messages messages,
        Figures figures,
        CalfNames names,
        DuePhrases due,
        EventPhrases events,
        Herd herd,
        Shift shift) {
    String text(MessageKey key, Object... parts) {
        return messages.text(key, parts);
    }

    String count(long count) {
        return figures.number(BigDecimal.valueOf(count));
    }

    String name(CalfRecord calf) {
        return names.of(calf, herd);
    }

    String name(DueItem item) {
        return name(herd.calf(item.calf()).orElseThrow());
    }

    String onPaper(DueItem item) {
        return due.onPaper(item, shift.now());
    }

    String clock(Instant at) {
        return figures.clockAsSeenFrom(shift.now(), at);
    }

    String list(List<String> words) {
        return words.stream()
                .reduce((one, other) -> text(MessageKey.HANDOVER_NAMES_JOIN, one, other))
                .orElse("");
    }

    String sentences(List<String> sentences) {
        return sentences.stream()
                .reduce((one, other) -> text(MessageKey.HANDOVER_ALSO, one, other))
                .orElse("");
    }

    SheetSection section(String title, List<SheetEntry> entries) {
        return new SheetSection(
                title, text(MessageKey.HANDOVER_CONTINUED, title), entries, text(MessageKey.HANDOVER_NONE));
    }
}
