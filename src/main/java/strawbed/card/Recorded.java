package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.report.Fact;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** What was done with a calf and seen of it, in the order in which it happened; and what nobody recorded. */
record Recorded(CalfRecord calf, Messages messages, Figures figures, EventPhrases phrases) {
    private static final Set<Class<? extends Event>> FEEDS =
            Set.of(Event.ColostrumFed.class, Event.ColostrumLeft.class, Event.FeedRefused.class, Event.DamNursed.class);
    private static final Set<Class<? extends Event>> DIPS = Set.of(Event.NavelDipped.class);
    private static final Set<Class<? extends Event>> SIGNS = Set.of(
            Event.SignNoted.class, Event.BreathingNoted.class, Event.MilestoneReached.class, Event.NavelChecked.class);
    private static final Set<Class<? extends Event>> TESTS = Set.of(
            Event.ColostrumTestedByBrix.class,
            Event.ColostrumTestedByHydrometer.class,
            Event.SerumTested.class,
            Event.TemperatureTaken.class,
            Event.HeartRateCounted.class,
            Event.BreathingRateCounted.class);
    private static final Set<Class<? extends Event>> CARE = Set.of(
            Event.BreathingStimulated.class,
            Event.LickingNoted.class,
            Event.CalfDried.class,
            Event.ShelterGiven.class,
            Event.ColostrumSourceNoted.class,
            Event.CalfMoved.class,
            Event.VetCalled.class,
            Event.TreatmentNoted.class);

    /** Each under its clock time, with the day where that is another than the one before. */
    List<Fact> lines() {
        List<Fact> lines = new ArrayList<>();
        Instant before = calf.birth().map(born -> born.midpoint()).orElse(null);
        for (Timed<Event> timed : calf.all(Event.class)) {
            if (isListed(timed.event())) {
                lines.add(new Fact(time(before, timed.at()), phrases.of(timed.event())));
                before = timed.at();
            }
        }
        return lines;
    }

    /** The kinds of which there is nothing. */
    List<Fact> lacking() {
        return Stream.of(
                        lacking(FEEDS, CARD_FEEDS),
                        lacking(DIPS, CARD_DIPS),
                        lacking(SIGNS, CARD_SIGNS),
                        lacking(TESTS, CARD_TESTS))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Fact> lacking(Set<Class<? extends Event>> kinds, MessageKey label) {
        return kinds.stream().anyMatch(calf::has)
                ? Optional.empty()
                : Optional.of(new Fact(messages.text(label), messages.orNotRecorded("")));
    }

    private String time(@Nullable Instant before, Instant at) {
        return before == null ? figures.dayAndClock(at) : figures.clockAsSeenFrom(before, at);
    }

    private static boolean isListed(Event event) {
        return Stream.of(FEEDS, DIPS, SIGNS, TESTS, CARE).anyMatch(kinds -> kinds.contains(event.getClass()));
    }
}
