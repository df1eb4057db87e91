package strawbed.care;

import static java.time.Duration.ZERO;
import static java.time.Duration.ofDays;
import static java.time.Duration.ofHours;
import static java.time.Duration.ofMinutes;
import static java.time.Duration.ofSeconds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.care.DueItems.Settled;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.LickingNoted;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SerumTested;
import strawbed.event.Term.Milestone;

/** What every calf needs from its birth on. The sources of the times stand with {@link DueKind}. */
final class FirstDay {
    private static final Duration FIRST_BREATH = ofSeconds(30);
    private static final Duration BREASTBONE = ofMinutes(15);
    private static final Duration FIRST_DIP = ofMinutes(30);
    private static final Duration AROUND_A_FEED = ofMinutes(30);
    private static final Duration STANDING = ofMinutes(60);
    private static final Duration REPEAT_DIP_FROM = ofHours(12);
    private static final Duration DAY = ofHours(24);
    private static final Duration SERUM_UNTIL = ofDays(7);

    /** Looked for together with the first dip. Common practice, no published source. */
    private static final Duration DRYING = FIRST_DIP;

    private final DueItems items;
    private final CalfRecord calf;
    private final Instant birth;
    private final Instant dayEnd;

    private FirstDay(DueItems items) {
        this.items = items;
        this.calf = items.calf();
        this.birth = items.at(ZERO);
        this.dayEnd = items.at(DAY);
    }

    static void addTo(DueItems items) {
        FirstDay day = new FirstDay(items);
        day.firstMinutes();
        day.navel();
        day.colostrum();
        day.pen();
        day.serum();
    }

    private void firstMinutes() {
        boolean stands = calf.reached(Milestone.STANDING).isPresent();
        // A calf that stands or drinks breathes, whether or not anybody said so.
        items.add(
                DueKind.BREATHING_CHECK,
                birth,
                items.at(FIRST_BREATH),
                null,
                Settled.done(calf.has(BreathingNoted.class))
                        .orNeedless(stands || calf.firstFeed().isPresent()));
        items.add(
                DueKind.ON_BREASTBONE,
                birth,
                items.at(BREASTBONE),
                null,
                Settled.done(calf.reached(Milestone.ON_ITS_BREASTBONE).isPresent())
                        .orNeedless(stands));
        items.add(DueKind.STAND, birth, items.at(STANDING), null, Settled.done(stands));
        // "Not licked" makes drying due at once; before anybody looked there is time.
        Optional<Instant> notLicked = calf.last(LickingNoted.class)
                .filter(noted -> !noted.event().licked())
                .map(Timed::at);
        items.add(
                DueKind.DRY,
                birth,
                notLicked.orElse(items.at(DRYING)),
                null,
                Settled.done(calf.isDried()).orNeedless(calf.licked().orElse(false)));
    }

    private void navel() {
        List<Timed<NavelDipped>> dips = calf.dips();
        items.add(DueKind.NAVEL_DIP, birth, items.at(FIRST_DIP), null, Settled.done(!dips.isEmpty()));
        Instant repeatFrom = items.at(REPEAT_DIP_FROM);
        items.add(
                DueKind.REPEAT_DIP,
                repeatFrom,
                dayEnd,
                dayEnd,
                Settled.done(dips.stream().anyMatch(dip -> isWithin(dip.at(), repeatFrom, dayEnd))));
        List<Instant> fed = calf.feeds().stream()
                .filter(feed -> feed.litres().signum() > 0)
                .map(Feed::at)
                .filter(at -> isWithin(at, birth, dayEnd))
                .toList();
        for (int i = 0; i < fed.size(); i++) {
            redip(fed.get(i), i + 1 < fed.size() ? fed.get(i + 1) : dayEnd, dips);
        }
    }

    /**
     * A dip within the half hours around the feed counts; a later one leaves nothing more to do for that feed, and the
     * next feed asks anew.
     */
    private void redip(Instant fed, Instant next, List<Timed<NavelDipped>> dips) {
        Instant before = fed.minus(AROUND_A_FEED);
        Instant after = fed.plus(AROUND_A_FEED);
        items.add(
                DueKind.NAVEL_REDIP,
                fed,
                after,
                next.isBefore(after) ? after : next,
                Settled.done(dips.stream().anyMatch(dip -> isWithin(dip.at(), before, after)))
                        .orNeedless(dips.stream().anyMatch(dip -> dip.at().isAfter(after))));
    }

    private void colostrum() {
        Optional<Feed> first = calf.firstFeed();
        items.add(
                DueKind.FIRST_COLOSTRUM,
                birth,
                items.at(ColostrumTiming.TARGET.end()),
                items.at(ColostrumTiming.LATE.end()),
                Settled.done(first.isPresent()),
                firstColostrumState());
        first.map(Feed::at).ifPresent(fed -> {
            Instant from = fed.plus(FirstDose.SECOND_FROM);
            items.add(
                    DueKind.SECOND_COLOSTRUM,
                    from,
                    fed.plus(FirstDose.SECOND_BY),
                    null,
                    Settled.done(calf.feeds().stream()
                            .anyMatch(feed ->
                                    feed.litres().signum() > 0 && !feed.at().isBefore(from))));
        });
    }

    /** Past the last acceptable time it stays late, not missed: some uptake is left until the end of the day. */
    private DueState firstColostrumState() {
        Duration age = Duration.between(birth, items.now());
        if (age.isNegative()) {
            return DueState.AHEAD;
        }
        return switch (ColostrumTiming.of(age)) {
            case BEST, TARGET, ACCEPTABLE -> DueState.DUE;
            case LATE, OVERDUE, LITTLE_UPTAKE -> DueState.LATE;
            case HARDLY_ANY -> DueState.MISSED;
        };
    }

    private void pen() {
        Instant leaves = calf.first(CalfMoved.class).map(Timed::at).orElse(dayEnd);
        items.add(DueKind.TAG, birth, leaves, null, Settled.done(calf.has(EarTagFitted.class)));
        items.add(DueKind.WEIGH, birth, leaves, null, Settled.done(calf.has(CalfWeighed.class)));
    }

    private void serum() {
        Instant until = items.at(SERUM_UNTIL);
        items.add(
                DueKind.SERUM_SAMPLE,
                dayEnd,
                until,
                until,
                Settled.done(calf.all(SerumTested.class).stream()
                        .anyMatch(tested -> isWithin(drawn(tested), dayEnd, until))));
    }

    private static Instant drawn(Timed<SerumTested> tested) {
        return Optional.ofNullable(tested.event().drawnAt()).orElse(tested.at());
    }

    private static boolean isWithin(Instant at, Instant from, Instant until) {
        return !at.isBefore(from) && !at.isAfter(until);
    }
}
