package strawbed.journal;

import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.When;
import strawbed.measure.Temperature;

/** Writes each kind of fact as its fields: the names in quotes are the record's, for ever. */
final class FieldsOfEvent implements Event.Cases<WrittenFields> {
    @Override
    public WrittenFields calfOpened(Event.CalfOpened e) {
        return none().text("number", e.number()).text("dam", e.dam());
    }

    @Override
    public WrittenFields calfNumbered(Event.CalfNumbered e) {
        return none().text("number", e.number());
    }

    @Override
    public WrittenFields damNoted(Event.DamNoted e) {
        return none().text("dam", e.dam()).whole("parity", e.parity());
    }

    @Override
    public WrittenFields breedNoted(Event.BreedNoted e) {
        return none().text("breed", e.breed());
    }

    @Override
    public WrittenFields twinNoted(Event.TwinNoted e) {
        return none().text("of", e.of()).whole("count", e.count());
    }

    @Override
    public WrittenFields sexNoted(Event.SexNoted e) {
        return none().term("sex", e.sex());
    }

    @Override
    public WrittenFields earTagFitted(Event.EarTagFitted e) {
        return none().text("number", e.number()).term("scheme", e.scheme());
    }

    @Override
    public WrittenFields calfBorn(Event.CalfBorn e) {
        return when(e.when());
    }

    @Override
    public WrittenFields calfFound(Event.CalfFound e) {
        return when(e.when());
    }

    @Override
    public WrittenFields calvingEaseNoted(Event.CalvingEaseNoted e) {
        return none().term("ease", e.ease()).whole("score", e.score());
    }

    @Override
    public WrittenFields presentationNoted(Event.PresentationNoted e) {
        return none().term("presentation", e.presentation());
    }

    @Override
    public WrittenFields calfDied(Event.CalfDied e) {
        return none().instant("at", e.at()).term("when", e.when());
    }

    @Override
    public WrittenFields breathingNoted(Event.BreathingNoted e) {
        return none().term("breathing", e.breathing());
    }

    @Override
    public WrittenFields breathingStimulated(Event.BreathingStimulated e) {
        return none().term("means", e.means());
    }

    @Override
    public WrittenFields lickingNoted(Event.LickingNoted e) {
        return none().truth("licked", e.licked());
    }

    @Override
    public WrittenFields calfDried(Event.CalfDried e) {
        return none().term("means", e.means());
    }

    @Override
    public WrittenFields shelterGiven(Event.ShelterGiven e) {
        return none().term("means", e.means());
    }

    @Override
    public WrittenFields milestoneReached(Event.MilestoneReached e) {
        return none().term("milestone", e.milestone());
    }

    @Override
    public WrittenFields signNoted(Event.SignNoted e) {
        return none().term("sign", e.sign()).text("place", e.place()).text("finding", e.finding());
    }

    @Override
    public WrittenFields navelDipped(Event.NavelDipped e) {
        return none().term("agent", e.agent()).number("percent", e.percent());
    }

    @Override
    public WrittenFields navelChecked(Event.NavelChecked e) {
        return none().term("finding", e.finding());
    }

    @Override
    public WrittenFields temperatureTaken(Event.TemperatureTaken e) {
        return temperature(none(), "value", "unit", e.temperature());
    }

    @Override
    public WrittenFields heartRateCounted(Event.HeartRateCounted e) {
        return none().whole("per_minute", e.perMinute());
    }

    @Override
    public WrittenFields breathingRateCounted(Event.BreathingRateCounted e) {
        return none().whole("per_minute", e.perMinute());
    }

    @Override
    public WrittenFields calfWeighed(Event.CalfWeighed e) {
        return none().number("value", e.weight().amount())
                .text("unit", e.weight().unit().word())
                .term("method", e.method());
    }

    @Override
    public WrittenFields serumTested(Event.SerumTested e) {
        return none().term("kind", e.kind()).number("value", e.value()).instant("drawn_at", e.drawnAt());
    }

    @Override
    public WrittenFields colostrumTestedByBrix(Event.ColostrumTestedByBrix e) {
        return none().number("brix", e.brix());
    }

    @Override
    public WrittenFields colostrumTestedByHydrometer(Event.ColostrumTestedByHydrometer e) {
        return temperature(none().number("hydrometer", e.reading()), "temperature", "unit", e.milk());
    }

    @Override
    public WrittenFields colostrumSourceNoted(Event.ColostrumSourceNoted e) {
        return none().term("source", e.source())
                .text("cow", e.cow())
                .text("batch", e.batch())
                .term("treatment", e.treatment());
    }

    @Override
    public WrittenFields colostrumFed(Event.ColostrumFed e) {
        return temperature(
                none().number("value", e.volume().amount())
                        .text("unit", e.volume().unit().word())
                        .term("method", e.method()),
                "temperature",
                "temperature_unit",
                e.warmedTo());
    }

    @Override
    public WrittenFields colostrumLeft(Event.ColostrumLeft e) {
        return none().number("value", e.volume().amount())
                .text("unit", e.volume().unit().word());
    }

    @Override
    public WrittenFields feedRefused(Event.FeedRefused e) {
        return none();
    }

    @Override
    public WrittenFields damNursed(Event.DamNursed e) {
        return none();
    }

    @Override
    public WrittenFields calfMoved(Event.CalfMoved e) {
        return none().text("place", e.place());
    }

    @Override
    public WrittenFields vetCalled(Event.VetCalled e) {
        return none().text("sound", e.sound());
    }

    @Override
    public WrittenFields treatmentNoted(Event.TreatmentNoted e) {
        return none().term("kind", e.kind()).text("sound", e.sound());
    }

    @Override
    public WrittenFields voiceNoteTaken(Event.VoiceNoteTaken e) {
        return none().text("sound", e.sound());
    }

    @Override
    public WrittenFields barnClimateNoted(Event.BarnClimateNoted e) {
        return temperature(none(), "temperature", "unit", e.temperature()).number("humidity", e.humidity());
    }

    @Override
    public WrittenFields colostrumStored(Event.ColostrumStored e) {
        return none().text("batch", e.batch())
                .number("value", e.volume().amount())
                .text("unit", e.volume().unit().word())
                .number("brix", e.brix())
                .term("treatment", e.treatment());
    }

    @Override
    public WrittenFields protocolAdopted(Event.ProtocolAdopted e) {
        return none().texts("settings", e.settings());
    }

    @Override
    public WrittenFields cardPrinted(Event.CardPrinted e) {
        return none().whole("number", e.number()).term("printout", e.printout()).term("size", e.size());
    }

    @Override
    public WrittenFields eventWithdrawn(Event.EventWithdrawn e) {
        return none().text("event", e.event().toString());
    }

    @Override
    public WrittenFields operatorChosen(Event.OperatorChosen e) {
        return none().text("operator", e.operator());
    }

    @Override
    public WrittenFields soundsRemoved(Event.SoundsRemoved e) {
        return none().whole("count", e.count()).count("bytes", e.bytes());
    }

    @Override
    public WrittenFields clockChanged(Event.ClockChanged e) {
        return none().instant("expected", e.expected()).instant("found", e.found());
    }

    @Override
    public WrittenFields zoneChanged(Event.ZoneChanged e) {
        return none().text("from", e.from().getId()).text("to", e.to().getId());
    }

    private static WrittenFields none() {
        return new WrittenFields();
    }

    private static WrittenFields when(When when) {
        if (when instanceof When.Between window) {
            return none().instant("earliest", window.earliest()).instant("latest", window.latest());
        }
        return none().instant("at", when.midpoint());
    }

    private static WrittenFields temperature(
            WrittenFields fields, String amount, String unit, @Nullable Temperature value) {
        return value == null
                ? fields
                : fields.number(amount, value.amount()).text(unit, value.unit().word());
    }
}
