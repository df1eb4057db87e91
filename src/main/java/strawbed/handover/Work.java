package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.event.CalfId;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.report.ToDo;

/** What is to do: what is late or was missed, what is due in the next shift, and what may be done in it. */
record Work(List<DueItem> open, Wordings words) {
    /** What a calf needs within this time is done in one go. Common practice, no published source. */
    private static final Duration ONE_GO = Duration.ofHours(1);

    private static final Comparator<DueItem> BY_TIME =
            Comparator.comparing(Work::begins).thenComparing(DueItem::dueAt).thenComparing(DueItem::kind);

    /** Late first, the calf with the gravest first; then what was missed: doing it now would not make up for it. */
    SheetSection late() {
        List<SheetEntry> entries = new ArrayList<>();
        Map<CalfId, List<DueItem>> byCalf = new LinkedHashMap<>();
        open.stream()
                .filter(item -> item.state() == DueState.LATE)
                .forEach(item -> byCalf.computeIfAbsent(item.calf(), calf -> new ArrayList<>())
                        .add(item));
        byCalf.values().forEach(items -> entries.add(late(items)));
        addMissed(entries);
        addRules(entries);
        return words.section(words.text(HANDOVER_LATE), entries);
    }

    private SheetEntry late(List<DueItem> items) {
        Instant now = words.shift().now();
        return SheetEntry.toDo(
                words.name(items.get(0)),
                items.stream()
                        .map(item ->
                                new ToDo(words.due().brief(item), words.due().when(item, now)))
                        .toList(),
                words.sentences(items.stream()
                        .flatMap(item -> words.due().askedBy(item, now).stream())
                        .distinct()
                        .toList()));
    }

    /** The rules by which it is late, each once: what no fact of a calf asked for. */
    private void addRules(List<SheetEntry> entries) {
        open.stream()
                .filter(item -> item.state() == DueState.LATE)
                .filter(item -> words.due().askedBy(item, words.shift().now()).isEmpty())
                .map(item ->
                        SheetEntry.told("", words.due().brief(item), words.due().rule(item)))
                .distinct()
                .forEach(entries::add);
    }

    /** What was missed before this shift stood on the sheet of that one; here it is only counted. */
    private void addMissed(List<SheetEntry> entries) {
        Map<CalfId, List<DueItem>> byCalf = new LinkedHashMap<>();
        long earlier = 0;
        for (DueItem item : open) {
            if (item.state() == DueState.MISSED) {
                if (isOfThisShift(item)) {
                    byCalf.computeIfAbsent(item.calf(), calf -> new ArrayList<>())
                            .add(item);
                } else {
                    earlier++;
                }
            }
        }
        byCalf.values()
                .forEach(items -> entries.add(
                        SheetEntry.told(words.name(items.get(0)), words.due().state(DueState.MISSED), missed(items))));
        if (earlier > 0) {
            entries.add(SheetEntry.plain(words.text(HANDOVER_MISSED_EARLIER, words.count(earlier))));
        }
    }

    private boolean isOfThisShift(DueItem item) {
        Instant limit = item.hardLimit();
        return limit == null || !limit.isBefore(words.shift().from());
    }

    private String missed(List<DueItem> items) {
        return words.list(items.stream()
                .map(item -> words.text(HANDOVER_MISSED_ITEM, words.due().brief(item), words.clock(item.dueAt())))
                .toList());
    }

    /**
     * In the order of time. What one calf needs within an hour is one entry, in the place of its first; each task has its
     * own time.
     */
    SheetSection due() {
        List<List<DueItem>> goes = new ArrayList<>();
        Map<CalfId, List<DueItem>> last = new LinkedHashMap<>();
        for (DueItem item : upcoming()) {
            if (endsInNextShift(item)) {
                List<DueItem> go = last.get(item.calf());
                if (go == null || !begins(item).isBefore(begins(go.get(0)).plus(ONE_GO))) {
                    go = new ArrayList<>();
                    goes.add(go);
                    last.put(item.calf(), go);
                }
                go.add(item);
            }
        }
        return words.section(
                words.text(HANDOVER_DUE, words.clock(words.shift().nextEnds())),
                goes.stream()
                        .map(go -> SheetEntry.toDo(words.name(go.get(0)), toDos(go), ""))
                        .toList());
    }

    private List<ToDo> toDos(List<DueItem> items) {
        return items.stream()
                .map(item -> new ToDo(words.due().brief(item), words.onPaper(item)))
                .toList();
    }

    /** What may be done in the next shift and need not; kinds that are alike for all calves together. */
    SheetSection later() {
        Map<DueKind, List<DueItem>> byKind = new EnumMap<>(DueKind.class);
        upcoming().stream()
                .filter(item -> !endsInNextShift(item))
                .filter(item -> item.from().isBefore(words.shift().nextEnds()))
                .forEach(item -> byKind.computeIfAbsent(item.kind(), kind -> new ArrayList<>())
                        .add(item));
        Map<String, List<String>> kinds = new LinkedHashMap<>();
        byKind.values()
                .forEach(items -> kinds.computeIfAbsent(later(items), calves -> new ArrayList<>())
                        .add(words.due().what(items.get(0))));
        List<SheetEntry> entries = new ArrayList<>();
        kinds.forEach((calves, what) -> entries.add(SheetEntry.told("", words.list(what), calves)));
        return words.section(
                words.text(HANDOVER_LATER, words.clock(words.shift().nextEnds())), entries);
    }

    private String later(List<DueItem> items) {
        return items.stream()
                .map(item -> words.text(HANDOVER_LATER_ITEM, words.name(item), words.onPaper(item)))
                .reduce((one, other) -> words.text(HANDOVER_LATER_JOIN, one, other))
                .orElse("");
    }

    private List<DueItem> upcoming() {
        return open.stream()
                .filter(item -> item.state() == DueState.DUE || item.state() == DueState.AHEAD)
                .sorted(BY_TIME)
                .toList();
    }

    private boolean endsInNextShift(DueItem item) {
        return !item.dueAt().isAfter(words.shift().nextEnds());
    }

    private static Instant begins(DueItem item) {
        return item.state() == DueState.AHEAD ? item.from() : item.dueAt();
    }
}
