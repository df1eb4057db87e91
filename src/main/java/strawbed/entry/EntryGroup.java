package strawbed.entry;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import strawbed.event.Event;

/** The first page: what a fact is about, in the order of the work. */
// The lists are never changed.
@SuppressWarnings("ImmutableEnumChecker")
public enum EntryGroup {
    BIRTH(List.of(
            Event.CalfOpened.class,
            Event.SexNoted.class,
            Event.CalfBorn.class,
            Event.CalfFound.class,
            Event.CalvingEaseNoted.class,
            Event.PresentationNoted.class,
            Event.TwinNoted.class,
            Event.CalfDied.class)),
    FIRST_MINUTES(List.of(
            Event.BreathingNoted.class,
            Event.BreathingStimulated.class,
            Event.LickingNoted.class,
            Event.CalfDried.class,
            Event.ShelterGiven.class,
            Event.MilestoneReached.class,
            Event.SignNoted.class)),
    NAVEL(List.of(Event.NavelDipped.class, Event.NavelChecked.class)),
    COLOSTRUM(List.of(
            Event.ColostrumFed.class,
            Event.ColostrumLeft.class,
            Event.FeedRefused.class,
            Event.DamNursed.class,
            Event.ColostrumTestedByBrix.class,
            Event.ColostrumTestedByHydrometer.class,
            Event.ColostrumSourceNoted.class)),
    MEASURES(List.of(
            Event.TemperatureTaken.class,
            Event.HeartRateCounted.class,
            Event.BreathingRateCounted.class,
            Event.CalfWeighed.class,
            Event.SerumTested.class)),
    CALF(List.of(
            Event.CalfNumbered.class,
            Event.EarTagFitted.class,
            Event.CalfMoved.class,
            Event.DamNoted.class,
            Event.BreedNoted.class)),
    CARE(List.of(Event.VetCalled.class, Event.TreatmentNoted.class, Event.VoiceNoteTaken.class)),
    BARN(List.of(Event.BarnClimateNoted.class, Event.ColostrumStored.class));

    private final List<Class<? extends Event>> events;

    EntryGroup(List<Class<? extends Event>> events) {
        this.events = events;
    }

    /** What an event is about; empty for those about the record itself, which nobody enters. */
    public static Optional<EntryGroup> of(Event event) {
        return Arrays.stream(values())
                .filter(group -> group.events.contains(event.getClass()))
                .findFirst();
    }

    /** The second page: the kinds of this group in their order. */
    public List<EntryKind> kinds() {
        return Arrays.stream(EntryKind.values())
                .filter(kind -> kind.group() == this)
                .toList();
    }
}
