package strawbed.journal;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** Reads the fields of one stored fact back into the fact: the names in quotes are the record's, for ever. */
final class EventOfFields {
    private final StoredFields in;

    EventOfFields(StoredFields in) {
        this.in = in;
    }

    Event read() {
        if (in.version() < 1) {
            throw in.corrupt("versions begin at 1", null);
        }
        if (in.version() > EventCodec.VERSION) {
            throw in.newer("this version");
        }
        Event event;
        try {
            event = readVersion1();
        } catch (IllegalArgumentException e) {
            throw in.corrupt(String.valueOf(e.getMessage()), e);
        }
        in.end();
        return event;
    }

    private Event readVersion1() {
        return switch (in.type()) {
            case "CalfOpened" -> new Event.CalfOpened(in.text("number"), in.text("dam"));
            case "CalfNumbered" -> new Event.CalfNumbered(text("number"));
            case "DamNoted" -> new Event.DamNoted(in.text("dam"), in.whole("parity"));
            case "BreedNoted" -> new Event.BreedNoted(text("breed"));
            case "TwinNoted" -> new Event.TwinNoted(in.text("of"), whole("count"));
            case "SexNoted" -> new Event.SexNoted(term("sex", Term.Sex.class));
            case "EarTagFitted" -> new Event.EarTagFitted(text("number"), term("scheme", Term.TagScheme.class));
            case "CalfBorn" -> new Event.CalfBorn(when());
            case "CalfFound" -> new Event.CalfFound(when());
            case "CalvingEaseNoted" ->
                new Event.CalvingEaseNoted(in.term("ease", Term.CalvingEase.class), in.whole("score"));
            case "PresentationNoted" -> new Event.PresentationNoted(term("presentation", Term.Presentation.class));
            case "CalfDied" -> new Event.CalfDied(instant("at"), term("when", Term.DeathTime.class));
            case "BreathingNoted" -> new Event.BreathingNoted(term("breathing", Term.Breathing.class));
            case "BreathingStimulated" -> new Event.BreathingStimulated(term("means", Term.Stimulation.class));
            case "LickingNoted" -> new Event.LickingNoted(in.must("licked", in.truth("licked")));
            case "CalfDried" -> new Event.CalfDried(in.term("means", Term.DryingMeans.class));
            case "ShelterGiven" -> new Event.ShelterGiven(term("means", Term.Shelter.class));
            case "MilestoneReached" -> new Event.MilestoneReached(term("milestone", Term.Milestone.class));
            case "SignNoted" ->
                new Event.SignNoted(term("sign", Term.Sign.class), in.text("place"), in.text("finding"));
            case "NavelDipped" -> new Event.NavelDipped(in.term("agent", Term.NavelAgent.class), in.number("percent"));
            case "NavelChecked" -> new Event.NavelChecked(term("finding", Term.NavelFinding.class));
            case "TemperatureTaken" -> new Event.TemperatureTaken(in.must("value", temperature("value", "unit")));
            case "HeartRateCounted" -> new Event.HeartRateCounted(whole("per_minute"));
            case "BreathingRateCounted" -> new Event.BreathingRateCounted(whole("per_minute"));
            case "CalfWeighed" -> new Event.CalfWeighed(mass(), in.term("method", Term.WeighingMethod.class));
            case "SerumTested" ->
                new Event.SerumTested(term("kind", Term.SerumMeasure.class), number("value"), in.instant("drawn_at"));
            case "ColostrumTested" -> colostrumTested();
            case "ColostrumSourceNoted" ->
                new Event.ColostrumSourceNoted(
                        in.term("source", Term.ColostrumSource.class),
                        in.text("cow"),
                        in.text("batch"),
                        in.term("treatment", Term.ColostrumTreatment.class));
            case "ColostrumFed" ->
                new Event.ColostrumFed(
                        volume(),
                        in.term("method", Term.FeedingMethod.class),
                        temperature("temperature", "temperature_unit"));
            case "ColostrumLeft" -> new Event.ColostrumLeft(volume());
            case "FeedRefused" -> new Event.FeedRefused();
            case "DamNursed" -> new Event.DamNursed();
            case "CalfMoved" -> new Event.CalfMoved(text("place"));
            case "VetCalled" -> new Event.VetCalled(in.text("sound"));
            case "TreatmentNoted" -> new Event.TreatmentNoted(term("kind", Term.Treatment.class), in.text("sound"));
            case "VoiceNoteTaken" -> new Event.VoiceNoteTaken(in.text("sound"));
            case "BarnClimateNoted" ->
                new Event.BarnClimateNoted(
                        in.must("temperature", temperature("temperature", "unit")), in.number("humidity"));
            case "ColostrumStored" ->
                new Event.ColostrumStored(
                        text("batch"),
                        volume(),
                        in.number("brix"),
                        in.term("treatment", Term.ColostrumTreatment.class));
            case "ProtocolAdopted" -> new Event.ProtocolAdopted(in.must("settings", in.texts("settings")));
            case "CardPrinted" ->
                new Event.CardPrinted(
                        whole("number"), term("printout", Term.Printout.class), term("size", Term.CardSize.class));
            case "EventWithdrawn" -> new Event.EventWithdrawn(new EventId(in.must("event", in.id("event"))));
            case "OperatorChosen" -> new Event.OperatorChosen(in.text("operator"));
            case "SoundsRemoved" -> new Event.SoundsRemoved(whole("count"), in.must("bytes", in.count("bytes")));
            case "ClockChanged" -> new Event.ClockChanged(instant("expected"), instant("found"));
            case "ZoneChanged" -> new Event.ZoneChanged(in.must("from", in.zone("from")), in.must("to", in.zone("to")));
            default -> throw in.newer("this type");
        };
    }

    private Event colostrumTested() {
        return in.has("hydrometer")
                ? new Event.ColostrumTestedByHydrometer(number("hydrometer"), temperature("temperature", "unit"))
                : new Event.ColostrumTestedByBrix(number("brix"));
    }

    private When when() {
        return in.has("at") ? new When.At(instant("at")) : new When.Between(instant("earliest"), instant("latest"));
    }

    private Volume volume() {
        return new Volume(number("value"), in.must("unit", in.word("unit", VolumeUnit.values(), VolumeUnit::word)));
    }

    private Mass mass() {
        return new Mass(number("value"), in.must("unit", in.word("unit", MassUnit.values(), MassUnit::word)));
    }

    /** Both fields or none. */
    private @Nullable Temperature temperature(String amount, String unit) {
        if (!in.has(amount)) {
            return null;
        }
        return new Temperature(
                number(amount), in.must(unit, in.word(unit, TemperatureUnit.values(), TemperatureUnit::word)));
    }

    private String text(String name) {
        return in.must(name, in.text(name));
    }

    private int whole(String name) {
        return in.must(name, in.whole(name));
    }

    private BigDecimal number(String name) {
        return in.must(name, in.number(name));
    }

    private Instant instant(String name) {
        return in.must(name, in.instant(name));
    }

    private <T extends Enum<T> & Term> T term(String name, Class<T> list) {
        return in.must(name, in.term(name, list));
    }
}
