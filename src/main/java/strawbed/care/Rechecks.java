package strawbed.care;

import static strawbed.protocol.Setting.*;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.DamNursed;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.SignNoted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Event.VetCalled;
import strawbed.event.Term;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** What follows from a hard birth or from a finding that was not good. The times are those of the farm's protocol. */
final class Rechecks {
    private static final int WARM_READINGS = 2;

    /** How long before its time a watch check already counts. Common practice, no published source. */
    private static final Duration EARLY = Duration.ofMinutes(15);

    /** How long after its time the last watch check may be made. Common practice, no published source. */
    private static final Duration LAST_UNTIL = Duration.ofHours(24);

    private final DueItems items;
    private final CalfRecord calf;
    private final Protocol protocol;

    private Rechecks(DueItems items) {
        this.items = items;
        this.calf = items.calf();
        this.protocol = items.protocol();
    }

    static void addTo(DueItems items) {
        Rechecks rechecks = new Rechecks(items);
        rechecks.breathing();
        rechecks.cold();
        rechecks.veterinarian();
        HardBirth.of(items.calf(), items.protocol()).ifPresent(rechecks::watch);
    }

    private void breathing() {
        boolean alarm = false;
        @Nullable Timed<BreathingNoted> asking = null;
        for (Timed<BreathingNoted> noted : calf.all(BreathingNoted.class)) {
            again(DueKind.BREATHING_RECHECK, asking, BREATHING_AGAIN_MINUTES, new Settled.Done(noted));
            alarm = switch (noted.event().breathing()) {
                case NONE, GASPING -> true;
                case HARD -> alarm;
                case WELL -> false;
            };
            asking = alarm ? noted : null;
        }
        again(DueKind.BREATHING_RECHECK, asking, BREATHING_AGAIN_MINUTES, new Settled.Not());
    }

    private void cold() {
        int warmToGo = 0;
        @Nullable Timed<TemperatureTaken> asking = null;
        for (Timed<TemperatureTaken> taken : calf.temperatures()) {
            again(DueKind.COLD_RECHECK, asking, TEMPERATURE_AGAIN_MINUTES, new Settled.Done(taken));
            if (Cold.isCold(taken.event().temperature(), protocol)) {
                warmToGo = WARM_READINGS;
            } else if (warmToGo > 0) {
                warmToGo = Cold.isWarm(taken.event().temperature(), protocol) ? warmToGo - 1 : WARM_READINGS;
            }
            asking = warmToGo > 0 ? taken : null;
        }
        again(DueKind.COLD_RECHECK, asking, TEMPERATURE_AGAIN_MINUTES, new Settled.Not());
    }

    private void again(DueKind kind, @Nullable Timed<?> asking, Setting after, Settled settled) {
        if (asking != null) {
            Instant dueAt = asking.at().plus(protocol.time(after));
            items.add(kind, DueTimes.of(asking.at(), dueAt, null), settled, asking);
        }
    }

    /** Called at once, until it was, or until the calf is better. */
    private void veterinarian() {
        callFor(
                calf.all(BreathingNoted.class),
                Caution::isAlarming,
                noted -> noted.breathing() == Term.Breathing.WELL,
                Settled.Why.BREATHES_WELL);
        callFor(
                calf.temperatures(),
                taken -> Cold.isVeryCold(taken.temperature(), protocol),
                taken -> !Cold.isCold(taken.temperature(), protocol),
                Settled.Why.WARMER);
    }

    private <E extends Event> void callFor(
            List<Timed<E>> findings, Predicate<E> isAlarming, Predicate<E> isBetter, Settled.Why better) {
        @Nullable Timed<E> alarm = null;
        for (Timed<E> finding : findings) {
            if (alarm == null && isAlarming.test(finding.event())) {
                alarm = finding;
            } else if (alarm != null && isBetter.test(finding.event())) {
                call(alarm, better, Optional.of(finding));
                alarm = null;
            }
        }
        if (alarm != null) {
            call(alarm, better, Optional.empty());
        }
    }

    private void call(Timed<?> alarm, Settled.Why better, Optional<? extends Timed<?>> by) {
        items.add(
                DueKind.CALL_VET,
                DueTimes.of(alarm.at(), alarm.at(), null),
                Settled.doneBy(calf.all(VetCalled.class).stream()
                                .filter(called -> !called.at().isBefore(alarm.at())))
                        .orNeedless(better, by),
                alarm);
    }

    /**
     * A birth told to be hard is watched from birth, or from the finding. A sign that shows only after the first check
     * would be due starts the watch itself; common practice, no published source.
     */
    private void watch(HardBirth hard) {
        Instant birth = calf.found().map(found -> found.midpoint()).orElse(items.birth());
        List<Duration> plan = protocol.watch();
        boolean isLateSign = !hard.isTold() && hard.first().at().isAfter(birth.plus(plan.get(0)));
        Instant start = isLateSign ? hard.first().at() : birth;
        for (int i = 0; i < plan.size(); i++) {
            check(start, plan, i, hard.first());
        }
        Instant sucksBy = start.plus(protocol.time(NO_SUCK_HOURS));
        items.add(
                DueKind.SUCK,
                DueTimes.of(start, sucksBy, null),
                Settled.doneBy(calf.all(Event.class).stream().filter(seen -> sucks(seen.event())))
                        .orNeedless(
                                Settled.Why.FED, FirstDay.taken(calf).stream().findFirst()),
                hard.first());
    }

    /** Each check may be made until the next one's time begins, the last within the day; it is done with its second half. */
    private void check(Instant start, List<Duration> plan, int i, Timed<?> because) {
        Instant dueAt = start.plus(plan.get(i));
        Instant from = beginOfCheck(start, plan, i);
        Instant until = i + 1 < plan.size() ? beginOfCheck(start, plan, i + 1) : start.plus(LAST_UNTIL);
        Optional<? extends Timed<?>> temperature = calf.temperatures().stream()
                .filter(taken -> isWithin(taken, from, until))
                .findFirst();
        Optional<? extends Timed<?>> suck = calf.all(Event.class).stream()
                .filter(seen -> showsSuck(seen.event()) && isWithin(seen, from, until))
                .findFirst();
        Settled settled = temperature.isPresent() && suck.isPresent()
                ? new Settled.Done(later(temperature.get(), suck.get()))
                : new Settled.Not();
        items.add(DueKind.WATCH_CHECK, DueTimes.of(from, dueAt, until), settled, because);
    }

    /** A little early, but never before the check before it is due: so none ends before it is due itself. */
    private static Instant beginOfCheck(Instant start, List<Duration> plan, int i) {
        Instant early = start.plus(plan.get(i)).minus(EARLY);
        Instant before = i == 0 ? start : start.plus(plan.get(i - 1));
        return early.isBefore(before) ? before : early;
    }

    /** Suck was looked at: seen, or tried, whatever was found. */
    private static boolean showsSuck(Event event) {
        return sucks(event) || (event instanceof SignNoted noted && noted.sign() == Term.Sign.SUCK_REFLEX);
    }

    /** A calf that drinks from its dam or a bottle sucks; one that was tried and found without suck does not. */
    private static boolean sucks(Event event) {
        if (event instanceof SignNoted noted) {
            return noted.sign() == Term.Sign.SUCK_REFLEX && !"none".equals(noted.finding());
        }
        if (event instanceof MilestoneReached reached) {
            return reached.milestone() == Term.Milestone.SUCKING;
        }
        if (event instanceof ColostrumFed fed) {
            return fed.method() == Term.FeedingMethod.BOTTLE;
        }
        return event instanceof DamNursed;
    }

    private static Timed<?> later(Timed<?> one, Timed<?> other) {
        return one.at().isBefore(other.at()) ? other : one;
    }

    private static boolean isWithin(Timed<?> seen, Instant from, Instant until) {
        return !seen.at().isBefore(from) && seen.at().isBefore(until);
    }
}
