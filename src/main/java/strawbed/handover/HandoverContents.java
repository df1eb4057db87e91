package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.calf.CalfRecord;
import strawbed.calf.CalfRecord.Entry;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.DueState;
import strawbed.care.Farm;
import strawbed.care.StoredColostrum;
import strawbed.event.CalfId;
import strawbed.event.Event.OperatorChosen;
import strawbed.event.RecordedEvent;
import strawbed.journal.OpenStatement;
import strawbed.protocol.Units;
import strawbed.report.Fact;
import strawbed.report.HandoverSheet;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.text.CalfNames;
import strawbed.text.DuePhrases;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.Messages;
import strawbed.text.StockPhrases;

/** Makes the sheet that a shift leaves to the next from the record. Safe for any thread. */
public final class HandoverContents {
    private final Wordings words;
    private final ZoneId zone;
    private final Units units;
    private final List<Entry> history;

    private HandoverContents(Herd herd, Shift shift, Messages messages, ZoneId zone) {
        this.zone = zone;
        units = Farm.of(herd).protocol().units();
        history = herd.history();
        words = new Wordings(
                messages,
                Figures.written(messages, zone, units),
                new CalfNames(messages),
                new DuePhrases(messages, zone),
                new EventPhrases(messages, zone, units),
                herd,
                shift);
    }

    /**
     * The sheet of this shift.
     *
     * @param herd as the record knew it when the shift handed over
     * @param open the statements that nobody confirmed, in the order in which they were kept
     * @param zone the farm's
     * @param farmName its name; may be blank
     */
    public static HandoverSheet of(
            Herd herd, List<OpenStatement> open, Shift shift, Messages messages, ZoneId zone, String farmName) {
        return new HandoverContents(herd, shift, messages, zone).sheet(open, farmName);
    }

    private HandoverSheet sheet(List<OpenStatement> statements, String farmName) {
        Shift shift = words.shift();
        return new HandoverSheet(
                words.text(HANDOVER_TITLE),
                farmName,
                words.text(
                        HANDOVER_PERIOD,
                        words.figures().dayAndClock(shift.from()),
                        words.figures().dayAndClock(shift.now())),
                words.text(HANDOVER_PRINTED, words.figures().dayAndClock(shift.now())),
                (page, pages) -> words.text(HANDOVER_PAGE, words.count(page), words.count(pages)),
                List.of(new Fact(
                        words.text(HANDOVER_RECORDED_BY), words.messages().orNotRecorded(operators()))),
                sections(statements),
                List.of(words.text(HANDOVER_HANDED_OVER), words.text(HANDOVER_TAKEN_OVER)),
                words.messages().locale().toLanguageTag());
    }

    /** What presses first, then what is to do, then what there is to know. */
    private List<SheetSection> sections(List<OpenStatement> statements) {
        Herd herd = words.herd();
        List<DueItem> open = DueList.open(herd, words.shift().now());
        Work work = new Work(open, words);
        Births births = new Births(words);
        Spoken spoken = new Spoken(statements, history, words);
        return List.of(
                work.late(),
                work.due(),
                work.later(),
                new WatchPlans(Farm.of(herd), words).section(),
                births.section(),
                spoken.unconfirmed(),
                spoken.notes(),
                stock(),
                new Cautions(concerned(births.calves(), open), words).section());
    }

    /** Blank where nobody recorded anything under a name. */
    private String operators() {
        Set<String> names = new LinkedHashSet<>();
        boolean nameless = false;
        for (Entry entry : history) {
            RecordedEvent recorded = entry.recorded();
            if (words.shift().recorded(recorded) && !(recorded.event() instanceof OperatorChosen)) {
                String operator = recorded.provenance().operator();
                if (operator == null) {
                    nameless = true;
                } else {
                    names.add(operator.strip());
                }
            }
        }
        String all = words.list(List.copyOf(names));
        return nameless && !names.isEmpty() ? words.text(HANDOVER_SOME_NAMELESS, all) : all;
    }

    private SheetSection stock() {
        Instant now = words.shift().now();
        StockPhrases phrases = new StockPhrases(words.messages(), zone, units);
        List<SheetEntry> entries = new ArrayList<>();
        for (StoredColostrum colostrum : StoredColostrum.of(words.herd(), now)) {
            entries.add(SheetEntry.told(phrases.name(colostrum), "", phrases.stands(colostrum, now)));
        }
        return words.section(words.text(HANDOVER_STOCK), entries);
    }

    /** The calves at which the sheet asks for work, and those of the shift. */
    private List<CalfRecord> concerned(List<CalfRecord> ofTheShift, List<DueItem> open) {
        Set<CalfId> wanted = open.stream()
                .filter(item -> item.state() != DueState.MISSED)
                .filter(item -> item.from().isBefore(words.shift().nextEnds()))
                .map(DueItem::calf)
                .collect(Collectors.toSet());
        return words.herd().calves().stream()
                .filter(calf -> wanted.contains(calf.id()) || ofTheShift.contains(calf))
                .toList();
    }
}
