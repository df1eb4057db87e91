package strawbed.exchange.ade;

import static strawbed.exchange.ade.WhyNotExported.ABOUT_THE_RECORD;
import static strawbed.exchange.ade.WhyNotExported.CALF_NOT_OPENED;
import static strawbed.exchange.ade.WhyNotExported.DAM_NOT_RECORDED;
import static strawbed.exchange.ade.WhyNotExported.EMPTY;
import static strawbed.exchange.ade.WhyNotExported.FEEDING_TIME_NOT_RECORDED;
import static strawbed.exchange.ade.WhyNotExported.NEEDS_A_DIAGNOSIS;
import static strawbed.exchange.ade.WhyNotExported.NO_ANIMAL;
import static strawbed.exchange.ade.WhyNotExported.NO_PLACE;
import static strawbed.exchange.ade.WhyNotExported.ONLY_SOUND;
import static strawbed.exchange.ade.WhyNotExported.TOLD_AGAIN;
import static strawbed.exchange.ade.WhyNotExported.WEIGHING_METHOD_NOT_RECORDED;
import static strawbed.exchange.ade.WhyNotExported.WITHIN_THE_FARM;

import strawbed.event.Event;

/**
 * Why an event of an opened calf is in no resource. Only asked of such events: what is exported is decided by the
 * resources alone.
 *
 * @param damKnown whether the calf's dam is on record
 * @param lastTold whether the event tells what is true now of something that is true only once
 */
record Reasons(boolean damKnown, boolean lastTold) implements Event.Cases<WhyNotExported> {
    @Override
    public WhyNotExported calfOpened(Event.CalfOpened e) {
        return CALF_NOT_OPENED;
    }

    @Override
    public WhyNotExported calfNumbered(Event.CalfNumbered e) {
        return toldAgain(e.number());
    }

    @Override
    public WhyNotExported damNoted(Event.DamNoted e) {
        String dam = e.dam();
        return e.parity() == null && dam != null && dam.isBlank() ? EMPTY : ofTheBirth();
    }

    @Override
    public WhyNotExported breedNoted(Event.BreedNoted e) {
        return toldAgain(e.breed());
    }

    @Override
    public WhyNotExported twinNoted(Event.TwinNoted e) {
        return ofTheBirth();
    }

    @Override
    public WhyNotExported sexNoted(Event.SexNoted e) {
        return TOLD_AGAIN;
    }

    @Override
    public WhyNotExported earTagFitted(Event.EarTagFitted e) {
        return EMPTY;
    }

    @Override
    public WhyNotExported calfBorn(Event.CalfBorn e) {
        return ofTheBirth();
    }

    @Override
    public WhyNotExported calfFound(Event.CalfFound e) {
        return ofTheBirth();
    }

    @Override
    public WhyNotExported calvingEaseNoted(Event.CalvingEaseNoted e) {
        return ofTheBirth();
    }

    @Override
    public WhyNotExported presentationNoted(Event.PresentationNoted e) {
        return ofTheBirth();
    }

    @Override
    public WhyNotExported calfDied(Event.CalfDied e) {
        return TOLD_AGAIN;
    }

    @Override
    public WhyNotExported breathingNoted(Event.BreathingNoted e) {
        return NEEDS_A_DIAGNOSIS;
    }

    @Override
    public WhyNotExported breathingStimulated(Event.BreathingStimulated e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported lickingNoted(Event.LickingNoted e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported calfDried(Event.CalfDried e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported shelterGiven(Event.ShelterGiven e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported milestoneReached(Event.MilestoneReached e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported signNoted(Event.SignNoted e) {
        return NEEDS_A_DIAGNOSIS;
    }

    @Override
    public WhyNotExported navelDipped(Event.NavelDipped e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported navelChecked(Event.NavelChecked e) {
        return NEEDS_A_DIAGNOSIS;
    }

    @Override
    public WhyNotExported temperatureTaken(Event.TemperatureTaken e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported heartRateCounted(Event.HeartRateCounted e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported breathingRateCounted(Event.BreathingRateCounted e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported calfWeighed(Event.CalfWeighed e) {
        return WEIGHING_METHOD_NOT_RECORDED;
    }

    @Override
    public WhyNotExported serumTested(Event.SerumTested e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported colostrumTestedByBrix(Event.ColostrumTestedByBrix e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported colostrumTestedByHydrometer(Event.ColostrumTestedByHydrometer e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported colostrumSourceNoted(Event.ColostrumSourceNoted e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported colostrumFed(Event.ColostrumFed e) {
        return FEEDING_TIME_NOT_RECORDED;
    }

    @Override
    public WhyNotExported colostrumLeft(Event.ColostrumLeft e) {
        return FEEDING_TIME_NOT_RECORDED;
    }

    @Override
    public WhyNotExported feedRefused(Event.FeedRefused e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported damNursed(Event.DamNursed e) {
        return FEEDING_TIME_NOT_RECORDED;
    }

    @Override
    public WhyNotExported calfMoved(Event.CalfMoved e) {
        return WITHIN_THE_FARM;
    }

    @Override
    public WhyNotExported vetCalled(Event.VetCalled e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported treatmentNoted(Event.TreatmentNoted e) {
        return NO_PLACE;
    }

    @Override
    public WhyNotExported voiceNoteTaken(Event.VoiceNoteTaken e) {
        return ONLY_SOUND;
    }

    @Override
    public WhyNotExported barnClimateNoted(Event.BarnClimateNoted e) {
        return NO_ANIMAL;
    }

    @Override
    public WhyNotExported colostrumStored(Event.ColostrumStored e) {
        return NO_ANIMAL;
    }

    @Override
    public WhyNotExported protocolAdopted(Event.ProtocolAdopted e) {
        return NO_ANIMAL;
    }

    @Override
    public WhyNotExported cardPrinted(Event.CardPrinted e) {
        return ABOUT_THE_RECORD;
    }

    @Override
    public WhyNotExported eventWithdrawn(Event.EventWithdrawn e) {
        return ABOUT_THE_RECORD;
    }

    @Override
    public WhyNotExported operatorChosen(Event.OperatorChosen e) {
        return ABOUT_THE_RECORD;
    }

    @Override
    public WhyNotExported soundsRemoved(Event.SoundsRemoved e) {
        return ABOUT_THE_RECORD;
    }

    @Override
    public WhyNotExported clockChanged(Event.ClockChanged e) {
        return ABOUT_THE_RECORD;
    }

    @Override
    public WhyNotExported zoneChanged(Event.ZoneChanged e) {
        return ABOUT_THE_RECORD;
    }

    private static WhyNotExported toldAgain(String said) {
        return said.isBlank() ? EMPTY : TOLD_AGAIN;
    }

    /** An earlier word stays the earlier word, also where the dam is not known. */
    private WhyNotExported ofTheBirth() {
        return lastTold && !damKnown ? DAM_NOT_RECORDED : TOLD_AGAIN;
    }
}
