package strawbed.care;

import static strawbed.protocol.Setting.*;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfDried;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.LickingNoted;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.NavelChecked;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SerumTested;
import strawbed.event.Event.ShelterGiven;
import strawbed.event.Term.Milestone;
import strawbed.protocol.Protocol;

/** What every calf needs from its birth on. The times and their sources are those of the farm's protocol. */
final class FirstDay {
    private final DueItems items;
    private final CalfRecord calf;
    private final Protocol protocol;
    private final Instant birth;
    private final List<Timed<ColostrumFed>> feeds;

    private FirstDay(DueItems items) {
        this.items = items;
        this.calf = items.calf();
        this.protocol = items.protocol();
        this.birth = items.birth();
        this.feeds = taken(calf);
    }

    static void addTo(DueItems items, Farm farm) {
        FirstDay day = new FirstDay(items);
        day.firstMinutes();
        day.dryAndSheltered(farm);
        day.navel();
        day.colostrum();
        day.pen();
        day.serum();
    }

    private void firstMinutes() {
        Optional<Timed<MilestoneReached>> stands = reached(Milestone.STANDING);
        // A calf that stands or drinks breathes, whether or not anybody said so.
        items.add(
                DueKind.BREATHING_CHECK,
                by(items.at(FIRST_BREATH_SECONDS)),
                Settled.doneBy(calf.first(BreathingNoted.class))
                        .orNeedless(Settled.Why.STANDS, stands)
                        .orNeedless(Settled.Why.FED, feeds.stream().findFirst()));
        items.add(
                DueKind.ON_BREASTBONE,
                by(items.at(ON_BREASTBONE_MINUTES)),
                Settled.doneBy(reached(Milestone.ON_ITS_BREASTBONE)).orNeedless(Settled.Why.STANDS, stands));
        items.add(DueKind.STAND, by(items.at(STANDING_MINUTES)), Settled.doneBy(stands));
    }

    /** "Not licked" makes drying due at once; before anybody looked there is time. In the cold licking is not enough. */
    private void dryAndSheltered(Farm farm) {
        Optional<Timed<LickingNoted>> licking = calf.last(LickingNoted.class);
        Optional<Timed<LickingNoted>> licked =
                licking.filter(noted -> noted.event().licked());
        Optional<Timed<LickingNoted>> notLicked =
                licking.filter(noted -> !noted.event().licked());
        Optional<Weather> weather = Weather.of(calf, farm, items.now());
        boolean cold = weather.filter(Weather::isCold).isPresent();
        Settled dried = Settled.doneBy(calf.first(CalfDried.class));
        Instant dueAt = notLicked.map(Timed::at).orElseGet(() -> items.at(DRY_MINUTES));
        items.add(DueKind.DRY, by(dueAt), cold ? dried : dried.orNeedless(Settled.Why.LICKED, licked));
        weather.filter(Weather::asksForShelter).ifPresent(this::shelter);
    }

    /** Shelter given since the birth holds as long as the weather does. */
    private void shelter(Weather weather) {
        Instant from = later(birth, weather.reading().at());
        items.add(
                DueKind.SHELTER,
                DueTimes.of(from, from.plus(protocol.time(DRY_MINUTES)), null),
                Settled.doneBy(calf.all(ShelterGiven.class).stream()
                        .filter(given -> weather.isHelpedBy(given.event().means()))),
                weather.reading());
    }

    private void navel() {
        List<Timed<NavelDipped>> dips = calf.dips();
        items.add(DueKind.NAVEL_DIP, by(items.at(FIRST_DIP_MINUTES)), Settled.doneBy(dips.stream()));
        if (protocol.isOn(REPEAT_DIP)) {
            within(DueKind.REPEAT_DIP, items.at(REPEAT_DIP_FROM_HOURS), items.at(REPEAT_DIP_UNTIL_HOURS), dips);
        }
        within(
                DueKind.NAVEL_LOOK,
                items.at(LOOK_AT_NAVEL_FROM_HOURS),
                items.at(LOOK_AT_NAVEL_UNTIL_HOURS),
                calf.all(NavelChecked.class));
        if (protocol.isOn(DIP_AROUND_FEEDS)) {
            dipsAroundFeeds(dips);
        }
    }

    private void dipsAroundFeeds(List<Timed<NavelDipped>> dips) {
        Instant end = items.at(DIP_AROUND_FEEDS_UNTIL_HOURS);
        List<Timed<ColostrumFed>> asking =
                feeds.stream().filter(fed -> isWithin(fed.at(), birth, end)).toList();
        for (int i = 0; i < asking.size(); i++) {
            dipAround(asking.get(i), i + 1 < asking.size() ? asking.get(i + 1).at() : end, dips);
        }
    }

    /**
     * A dip near the feed counts; a later one leaves nothing more to do for that feed, and the next feed asks anew.
     */
    private void dipAround(Timed<ColostrumFed> fed, Instant next, List<Timed<NavelDipped>> dips) {
        Instant before = fed.at().minus(protocol.time(DIP_BEFORE_FEED_MINUTES));
        Instant after = fed.at().plus(protocol.time(DIP_AFTER_FEED_MINUTES));
        items.add(
                DueKind.NAVEL_REDIP,
                DueTimes.of(fed.at(), after, later(next, after)),
                Settled.doneBy(dips.stream().filter(dip -> isWithin(dip.at(), before, after)))
                        .orNeedless(
                                Settled.Why.DIPPED_LATER,
                                dips.stream()
                                        .filter(dip -> dip.at().isAfter(after))
                                        .findFirst()),
                fed);
    }

    private void colostrum() {
        Optional<Timed<ColostrumFed>> first = feeds.stream().findFirst();
        DueTimes times = new DueTimes(
                birth, items.at(TARGET_WITHIN_HOURS), items.at(ACCEPTABLE_WITHIN_HOURS), items.at(LATE_WITHIN_HOURS));
        items.add(DueKind.FIRST_COLOSTRUM, times, Settled.doneBy(first), firstColostrumState(times));
        first.ifPresent(fed -> {
            Instant from = fed.at().plus(protocol.time(SECOND_FEED_FROM_HOURS));
            items.add(
                    DueKind.SECOND_COLOSTRUM,
                    DueTimes.of(from, fed.at().plus(protocol.time(SECOND_FEED_UNTIL_HOURS)), null),
                    Settled.doneBy(feeds.stream().filter(feed -> !feed.at().isBefore(from))),
                    fed);
        });
    }

    /** Past the last acceptable time it stays late, not missed: some uptake is left until the end of the first day. */
    private DueState firstColostrumState(DueTimes times) {
        DueTimes untilUptakeEnds =
                new DueTimes(times.from(), times.dueAt(), times.lateAfter(), items.at(ColostrumTiming.UPTAKE_ENDS));
        return untilUptakeEnds.stateAt(items.now());
    }

    private void pen() {
        Optional<Timed<CalfMoved>> moved = calf.first(CalfMoved.class);
        DueTimes times = by(moved.map(Timed::at).orElseGet(() -> items.at(TAG_AND_WEIGH_HOURS)));
        items.add(DueKind.TAG, times, Settled.doneBy(calf.first(EarTagFitted.class)));
        items.add(DueKind.WEIGH, times, Settled.doneBy(calf.first(CalfWeighed.class)));
    }

    private void serum() {
        Instant from = items.at(SAMPLE_FROM_HOURS);
        Instant until = items.at(SAMPLE_UNTIL_DAYS);
        items.add(
                DueKind.SERUM_SAMPLE,
                DueTimes.of(from, until, until),
                Settled.doneBy(
                        calf.all(SerumTested.class).stream().filter(tested -> isWithin(drawn(tested), from, until))));
    }

    private void within(DueKind kind, Instant from, Instant until, List<? extends Timed<? extends Event>> done) {
        items.add(
                kind,
                DueTimes.of(from, until, until),
                Settled.doneBy(done.stream().filter(each -> isWithin(each.at(), from, until))));
    }

    /** From birth on, due by this time, and never too late. */
    private DueTimes by(Instant dueAt) {
        return DueTimes.of(birth, dueAt, null);
    }

    private Optional<Timed<MilestoneReached>> reached(Milestone milestone) {
        return calf.all(MilestoneReached.class).stream()
                .filter(reached -> reached.event().milestone() == milestone)
                .findFirst();
    }

    /** The feeds of which it took anything, as events. */
    static List<Timed<ColostrumFed>> taken(CalfRecord calf) {
        List<Timed<ColostrumFed>> fed = calf.all(ColostrumFed.class);
        List<Feed> feeds = calf.feeds();
        List<Timed<ColostrumFed>> taken = new ArrayList<>(fed.size());
        for (int i = 0; i < fed.size(); i++) {
            if (feeds.get(i).litres().signum() > 0) {
                taken.add(fed.get(i));
            }
        }
        return taken;
    }

    /** When the blood was drawn: as it was said, else when the test was told. */
    static Instant drawn(Timed<SerumTested> tested) {
        return Optional.ofNullable(tested.event().drawnAt()).orElse(tested.at());
    }

    private static Instant later(Instant one, Instant other) {
        return one.isBefore(other) ? other : one;
    }

    private static boolean isWithin(Instant at, Instant from, Instant until) {
        return !at.isBefore(from) && !at.isAfter(until);
    }
}
