package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.event.CalfId;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;

/** What is to do: what is late, what was missed, what is due in the next shift, and what may be done in it. */
record Work(List<DueItem> open, Wordings words) {
    private static final Comparator<DueItem> BY_TIME =
            Comparator.comparing(Work::begins).thenComparing(DueItem::dueAt).thenComparing(DueItem::kind);

    SheetSection late() {
        return words.section(
                words.text(HANDOVER_LATE),
                open.stream()
                        .filter(item -> item.state() == DueState.LATE)
                        .map(item -> SheetEntry.toDo(
                                words.due().when(item, words.shift().now()),
                                words.name(item),
                                List.of(words.due().what(item)),
                                words.due().because(item, words.shift().now())))
                        .toList());
    }

    /** What was missed before this shift stood on the sheet of that one; here it is only counted. */
    SheetSection missed() {
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
        List<SheetEntry> entries = new ArrayList<>();
        byCalf.values().forEach(items -> entries.add(SheetEntry.told("", words.name(items.get(0)), missed(items))));
        if (earlier > 0) {
            entries.add(SheetEntry.told("", "", words.text(HANDOVER_MISSED_EARLIER, words.count(earlier))));
        }
        return words.section(words.text(HANDOVER_MISSED), entries);
    }

    private boolean isOfThisShift(DueItem item) {
        Instant limit = item.hardLimit();
        return limit == null || !limit.isBefore(words.shift().from());
    }

    private String missed(List<DueItem> items) {
        return words.list(items.stream()
                .map(item -> words.text(HANDOVER_MISSED_ITEM, words.due().what(item), words.clock(item.dueAt())))
                .toList());
    }

    /** In the order of the first time that stands there; what one calf needs at the same time is one entry. */
    SheetSection due() {
        Map<List<String>, List<String>> tasks = new LinkedHashMap<>();
        upcoming().stream()
                .filter(this::endsInNextShift)
                .forEach(item -> tasks.computeIfAbsent(
                                List.of(
                                        words.onPaper(item),
                                        words.name(item),
                                        item.calf().toString()),
                                key -> new ArrayList<>())
                        .add(words.due().what(item)));
        List<SheetEntry> entries = new ArrayList<>();
        tasks.forEach((key, what) -> entries.add(SheetEntry.toDo(key.get(0), key.get(1), what, "")));
        return words.section(words.text(HANDOVER_DUE, words.clock(words.shift().nextEnds())), entries);
    }

    /** By kind: the next shift may do it at a quiet hour, and need not. */
    SheetSection later() {
        Map<DueKind, List<DueItem>> byKind = new EnumMap<>(DueKind.class);
        upcoming().stream()
                .filter(item -> !endsInNextShift(item))
                .filter(item -> item.from().isBefore(words.shift().nextEnds()))
                .forEach(item -> byKind.computeIfAbsent(item.kind(), kind -> new ArrayList<>())
                        .add(item));
        List<SheetEntry> entries = new ArrayList<>();
        byKind.values()
                .forEach(items ->
                        entries.add(SheetEntry.strong("", "", words.due().what(items.get(0)), later(items))));
        return words.section(words.text(HANDOVER_LATER), entries);
    }

    private String later(List<DueItem> items) {
        return items.stream()
                .map(item -> words.text(HANDOVER_LATER_ITEM, words.name(item), words.onPaper(item)))
                .collect(Collectors.collectingAndThen(Collectors.toList(), words::list));
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
