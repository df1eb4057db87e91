package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.care.DueItems.Settled;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.DamNursed;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.SignNoted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Term;

/** What follows from a hard birth or from a finding that was not good. The sources stand with {@link DueKind}. */
final class Rechecks {
    private static final Duration BREATHING_AGAIN = Duration.ofMinutes(1);
    private static final Duration TEMPERATURE_AGAIN = Duration.ofMinutes(30);
    private static final int WARM_READINGS = 2;

    private static final List<Duration> WATCH =
            List.of(Duration.ofMinutes(30), Duration.ofHours(1), Duration.ofHours(2), Duration.ofHours(4));

    /** How long before its time a watch check already counts. Common practice, no published source. */
    private static final Duration EARLY = Duration.ofMinutes(15);

    private final DueItems items;
    private final CalfRecord calf;

    private Rechecks(DueItems items) {
        this.items = items;
        this.calf = items.calf();
    }

    static void addTo(DueItems items) {
        Rechecks rechecks = new Rechecks(items);
        rechecks.breathing();
        rechecks.cold();
        rechecks.watchStart().ifPresent(rechecks::watch);
    }

    private void breathing() {
        boolean alarm = false;
        @Nullable Instant asked = null;
        for (Timed<BreathingNoted> noted : calf.all(BreathingNoted.class)) {
            again(DueKind.BREATHING_RECHECK, asked, BREATHING_AGAIN, Settled.DONE);
            alarm = switch (noted.event().breathing()) {
                case NONE, GASPING -> true;
                case HARD -> alarm;
                case WELL -> false;
            };
            asked = alarm ? noted.at() : null;
        }
        again(DueKind.BREATHING_RECHECK, asked, BREATHING_AGAIN, Settled.NO);
    }

    private void cold() {
        int warmToGo = 0;
        @Nullable Instant asked = null;
        for (Timed<TemperatureTaken> taken : calf.temperatures()) {
            again(DueKind.COLD_RECHECK, asked, TEMPERATURE_AGAIN, Settled.DONE);
            if (Cold.isCold(taken.event().temperature())) {
                warmToGo = WARM_READINGS;
            } else if (warmToGo > 0) {
                warmToGo = Cold.isWarm(taken.event().temperature()) ? warmToGo - 1 : WARM_READINGS;
            }
            asked = warmToGo > 0 ? taken.at() : null;
        }
        again(DueKind.COLD_RECHECK, asked, TEMPERATURE_AGAIN, Settled.NO);
    }

    private void again(DueKind kind, @Nullable Instant asked, Duration after, Settled settled) {
        if (asked != null) {
            items.add(kind, asked, asked.plus(after), null, settled);
        }
    }

    /**
     * A birth told to be hard is watched from birth, or from the finding. A sign that shows only after the first check
     * would be due starts the watch itself; common practice, no published source.
     */
    private Optional<Instant> watchStart() {
        Instant birth = calf.found().map(found -> found.midpoint()).orElse(items.at(Duration.ZERO));
        if (HardBirth.isTold(calf)) {
            return Optional.of(birth);
        }
        return HardBirth.firstSign(calf).map(sign -> sign.isAfter(birth.plus(WATCH.get(0))) ? sign : birth);
    }

    /** Each check may be made until the next one's time begins, the last within the day. */
    private void watch(Instant start) {
        for (int i = 0; i < WATCH.size(); i++) {
            Instant dueAt = start.plus(WATCH.get(i));
            Instant from = dueAt.minus(EARLY);
            Instant until =
                    i + 1 < WATCH.size() ? start.plus(WATCH.get(i + 1)).minus(EARLY) : start.plus(Duration.ofHours(24));
            boolean temperature = calf.temperatures().stream().anyMatch(taken -> isWithin(taken, from, until));
            boolean suck = calf.all(Event.class).stream()
                    .anyMatch(seen -> showsSuck(seen.event()) && isWithin(seen, from, until));
            items.add(DueKind.WATCH_CHECK, from, dueAt, until, Settled.done(temperature && suck));
        }
    }

    /** A calf that drinks from its dam or a bottle sucks. */
    private static boolean showsSuck(Event event) {
        if (event instanceof SignNoted noted) {
            return noted.sign() == Term.Sign.SUCK_REFLEX;
        }
        if (event instanceof MilestoneReached reached) {
            return reached.milestone() == Term.Milestone.SUCKING;
        }
        if (event instanceof ColostrumFed fed) {
            return fed.method() == Term.FeedingMethod.BOTTLE;
        }
        return event instanceof DamNursed;
    }

    private static boolean isWithin(Timed<?> seen, Instant from, Instant until) {
        return !seen.at().isBefore(from) && seen.at().isBefore(until);
    }
}
