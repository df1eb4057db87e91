package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord.Entry;
import strawbed.event.Event.VoiceNoteTaken;
import strawbed.event.RecordedEvent;
import strawbed.journal.OpenStatement;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;

/** What was said and is no fact yet: statements that nobody confirmed, and notes that are sound only. */
record Spoken(List<OpenStatement> statements, List<Entry> history, Wordings words) {
    /** Older ones stood on an earlier sheet; here they are only counted. */
    SheetSection unconfirmed() {
        List<SheetEntry> entries = new ArrayList<>();
        long earlier = 0;
        for (OpenStatement open : statements) {
            if (words.shift().contains(open.recordedAt())) {
                entries.add(SheetEntry.told(words.clock(open.statement().from()), "", said(open)));
            } else if (open.recordedAt().isBefore(words.shift().from())) {
                earlier++;
            }
        }
        if (earlier > 0) {
            entries.add(SheetEntry.plain(words.text(HANDOVER_OPEN_EARLIER, words.count(earlier))));
        }
        return words.section(words.text(HANDOVER_OPEN), entries);
    }

    private String said(OpenStatement open) {
        String heard = String.join(" ", open.statement().words()).strip();
        return heard.isEmpty() ? words.text(HANDOVER_OPEN_NO_WORDS) : words.text(HANDOVER_OPEN_WORDS, heard);
    }

    SheetSection notes() {
        return words.section(
                words.text(HANDOVER_NOTES),
                history.stream()
                        .filter(entry -> !entry.withdrawn())
                        .map(Entry::recorded)
                        .filter(recorded -> words.shift().contains(recorded.recordedAt()))
                        .flatMap(recorded -> note(recorded).stream())
                        .toList());
    }

    private Optional<SheetEntry> note(RecordedEvent recorded) {
        if (!(recorded.event() instanceof VoiceNoteTaken note)) {
            return Optional.empty();
        }
        String number = Long.toString(recorded.sequence());
        String who = Optional.ofNullable(recorded.calf())
                .flatMap(words.herd()::calf)
                .map(words::name)
                .orElseGet(() -> words.text(BARN));
        return Optional.of(SheetEntry.told(
                who,
                words.clock(recorded.occurredAt()),
                words.text(note.sound() == null ? HANDOVER_NOTE_NO_SOUND : HANDOVER_NOTE_NUMBER, number)));
    }
}
