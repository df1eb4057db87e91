package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueList;
import strawbed.care.DueState;
import strawbed.care.Farm;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.text.MessageKey;

/** The calves that are watched after a hard birth: why, what was seen, and what is still to be looked at. */
record WatchPlans(Farm farm, Wordings words) {
    SheetSection section() {
        List<SheetEntry> entries = new ArrayList<>();
        for (CalfRecord calf : words.herd().calves()) {
            if (calf.isOpen()) {
                entry(calf).ifPresent(entries::add);
            }
        }
        return words.section(words.text(HANDOVER_WATCH), entries);
    }

    /** Empty when nothing of a plan is still to come. */
    private Optional<SheetEntry> entry(CalfRecord calf) {
        List<DueItem> all = DueList.of(calf, farm, words.shift().now());
        List<DueItem> plan = only(all, item -> item.kind() == DueKind.WATCH_CHECK || item.kind() == DueKind.SUCK);
        if (plan.stream().noneMatch(WatchPlans::isToCome)) {
            return Optional.empty();
        }
        List<DueItem> checks = only(plan, item -> item.kind() == DueKind.WATCH_CHECK);
        List<String> told = new ArrayList<>();
        ground(plan).ifPresent(told::add);
        list(HANDOVER_WATCH_DONE, checks, item -> item.doneAt().isPresent(), this::doneAt, told);
        list(HANDOVER_WATCH_MISSED, checks, item -> item.state() == DueState.MISSED, this::dueAt, told);
        list(HANDOVER_WATCH_TO_COME, checks, WatchPlans::isToCome, this::dueAt, told);
        plan.stream().filter(item -> item.kind() == DueKind.SUCK).findFirst().ifPresent(suck -> suck(suck, told));
        return Optional.of(SheetEntry.told(words.name(calf), "", words.sentences(told)));
    }

    private Optional<String> ground(List<DueItem> plan) {
        Timed<?> first = plan.get(0).ground().event();
        return Optional.ofNullable(first)
                .map(timed ->
                        words.text(HANDOVER_WATCH_GROUND, words.events().of(timed.event()), words.clock(timed.at())));
    }

    private void suck(DueItem suck, List<String> told) {
        suck.doneAt().ifPresent(at -> told.add(words.text(HANDOVER_WATCH_SUCK_SEEN, words.clock(at))));
        if (suck.state().isOpen()) {
            told.add(words.text(HANDOVER_WATCH_SUCK_OPEN, words.text(CARD_BY, dueAt(suck))));
        }
    }

    private void list(
            MessageKey key,
            List<DueItem> checks,
            Predicate<DueItem> which,
            Function<DueItem, String> time,
            List<String> told) {
        List<String> times = checks.stream().filter(which).map(time).toList();
        if (!times.isEmpty()) {
            told.add(words.text(key, words.list(times)));
        }
    }

    private String doneAt(DueItem item) {
        return words.clock(item.doneAt().orElseThrow());
    }

    private String dueAt(DueItem item) {
        return words.clock(item.dueAt());
    }

    private static List<DueItem> only(List<DueItem> items, Predicate<DueItem> which) {
        return items.stream()
                .filter(which)
                .sorted(Comparator.comparing(DueItem::dueAt))
                .toList();
    }

    private static boolean isToCome(DueItem item) {
        return item.state().isPressing() || item.state() == DueState.AHEAD;
    }
}
