package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.care.AgeStart;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.event.Event;
import strawbed.measure.Volume;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.Timeline;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** The first day as marks: what was done, and what is still planned. */
public record FirstDayLine(CalfRecord calf, Instant now, Messages messages, Figures figures) {
    private static final List<Class<? extends Event>> CHECKS = List.of(
            Event.BreathingNoted.class,
            Event.MilestoneReached.class,
            Event.NavelChecked.class,
            Event.TemperatureTaken.class,
            Event.HeartRateCounted.class,
            Event.BreathingRateCounted.class);

    /**
     * The day, drawn.
     *
     * @param due the calf's items, of which the open ones are marked as planned
     */
    public Timeline timeline(List<DueItem> due) {
        Optional<AgeStart> age = AgeStart.of(calf);
        Instant start = age.map(AgeStart::at).orElse(now);
        boolean birth = calf.born().isPresent();
        List<Mark> marks = new ArrayList<>(done(start));
        due.stream()
                .filter(item -> item.state().isOpen() && item.state() != DueState.MISSED)
                .filter(item -> item.dueAt().compareTo(start.plus(Timeline.LENGTH)) <= 0)
                .forEach(item ->
                        kind(item.kind()).ifPresent(kind -> marks.add(mark(kind, start, item.dueAt(), "", false))));
        return new Timeline(start, birth, marks);
    }

    private List<Mark> done(Instant start) {
        List<Mark> marks = new ArrayList<>();
        for (Feed feed : calf.feeds()) {
            marks.add(mark(MarkKind.FEED, start, feed.at(), shortly(feed.volume()), true));
        }
        for (Timed<?> nursing : calf.nursings()) {
            marks.add(mark(MarkKind.FEED, start, nursing.at(), messages.text(CARD_NURSED_MARK), true));
        }
        for (Timed<?> dip : calf.dips()) {
            marks.add(mark(MarkKind.DIP, start, dip.at(), "", true));
        }
        CHECKS.stream()
                .flatMap(kind -> calf.all(kind).stream().map(Timed::at))
                .distinct()
                .sorted()
                .forEach(at -> marks.add(mark(MarkKind.CHECK, start, at, "", true)));
        return marks;
    }

    private Mark mark(MarkKind kind, Instant start, Instant at, String label, boolean done) {
        return new Mark(kind, Duration.between(start, at), figures.clock(at), label, done);
    }

    private String shortly(Volume said) {
        Volume volume = figures.shown(said);
        return messages.text(
                switch (volume.unit()) {
                    case QUART -> CARD_SHORT_QUART;
                    case PINT -> CARD_SHORT_PINT;
                    case LITRE -> CARD_SHORT_LITRE;
                },
                figures.number(volume.amount()));
    }

    private static Optional<MarkKind> kind(DueKind kind) {
        return switch (kind) {
            case FIRST_COLOSTRUM, SECOND_COLOSTRUM -> Optional.of(MarkKind.FEED);
            case NAVEL_DIP, NAVEL_REDIP, REPEAT_DIP -> Optional.of(MarkKind.DIP);
            case BREATHING_RECHECK, BREATHING_CHECK, COLD_RECHECK, ON_BREASTBONE, WATCH_CHECK, STAND, SUCK ->
                Optional.of(MarkKind.CHECK);
            case CALL_VET, SHELTER, DRY, NAVEL_LOOK, TAG, WEIGH, SERUM_SAMPLE -> Optional.empty();
        };
    }
}
