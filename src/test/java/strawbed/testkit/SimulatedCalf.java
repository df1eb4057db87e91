package strawbed.testkit;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.SimulatedHerd.Fact;

/**
 * All that people tell of one invented calf, from its birth by usual practice, with tasks that come late or never.
 *
 * <p>Published: 6.5 % dead at birth or within 48 hours (Utah State University Extension 2010, after a national survey of
 * 2007), first colostrum at 2.8 hours in the mean (Urie 2018, Journal of Dairy Science 101), birth weight of Holsteins
 * 41.3 kg and bulls 7.8 % heavier (Fitch 1924, doi 10.3168/jds.S0022-0302(24)94016-1), serum protein 6.0 g/dL with a
 * standard deviation of 0.8 and serum Brix 9.2 with 0.9 (Deelen 2014). How the 6.5 % divide, and all else, is invented.
 */
@SuppressWarnings("NullAway") // The null checker cannot see in the compiled records which parts may be missing.
final class SimulatedCalf {
    private static final double DEAD_AT_BIRTH = 0.045;
    private static final double DEAD_WITHIN_TWO_DAYS = 0.02;
    private static final double DEAD_LATER = 0.03;
    private static final double MEAN_MINUTES_TO_COLOSTRUM = 2.8 * 60;
    private static final double POUNDS = 41.3 * 2.2046226;
    private static final double BULLS_HEAVIER = 1.078;
    private static final int DAY = 24 * 60;

    private final SimulatedHerd herd;
    private final Chance chance;
    private final String dam;
    private final int parity;
    private final Instant birth;
    private final Term.Sex sex;
    private final String number;
    private final @Nullable String twin;
    private final CalfId id;
    private int deathMinute;

    SimulatedCalf(
            SimulatedHerd herd,
            Chance chance,
            String dam,
            int parity,
            Instant birth,
            Term.Sex sex,
            String number,
            @Nullable String twin) {
        this.herd = herd;
        this.chance = chance;
        this.dam = dam;
        this.parity = parity;
        this.birth = birth.truncatedTo(ChronoUnit.MINUTES);
        this.sex = sex;
        this.number = number;
        this.twin = twin;
        this.id = new CalfId(chance.id(birth));
        this.deathMinute = Integer.MAX_VALUE;
    }

    void tell() {
        boolean isHard = chance.is(0.14);
        boolean isDead = chance.is(twin == null ? DEAD_AT_BIRTH : 2 * DEAD_AT_BIRTH);
        if (chance.is(DEAD_WITHIN_TWO_DAYS)) {
            deathMinute = 60 + chance.below(2 * DAY - 60);
        } else if (chance.is(DEAD_LATER)) {
            deathMinute = (2 + chance.below(58)) * DAY;
        }
        int seen = 1 + chance.below(6);
        boolean isNumbered = chance.is(0.8);
        opened(seen, isNumbered);
        ease(seen + 1, isHard);
        if (isDead) {
            at(seen + 2, new Event.CalfDied(birth, Term.DeathTime.AT_BIRTH));
            return;
        }
        firstMinutes(seen, isHard);
        int fed = 20 + (int) Math.min(DAY, chance.wait(MEAN_MINUTES_TO_COLOSTRUM - 20));
        navel(fed);
        colostrum(fed);
        tagged(isNumbered);
        later();
        if (deathMinute < Integer.MAX_VALUE) {
            int minute = deathMinute;
            deathMinute = Integer.MAX_VALUE;
            at(minute, new Event.CalfDied(after(minute), Term.DeathTime.LATER));
        }
    }

    private void opened(int minute, boolean isNumbered) {
        boolean knowsDam = !isNumbered || chance.is(0.93);
        Event opened = new Event.CalfOpened(isNumbered ? number : null, knowsDam ? dam : null);
        at(minute, opened, born(), new Event.SexNoted(sex));
        List<Event> more = new ArrayList<>();
        if (chance.is(0.7)) {
            more.add(new Event.DamNoted(chance.is(0.2) ? dam : null, parity));
        }
        if (chance.is(0.4)) {
            more.add(new Event.BreedNoted(chance.of("Holstein", "Holstein", "Jersey", "crossbred")));
        }
        if (twin != null && chance.is(0.9)) {
            more.add(new Event.TwinNoted(chance.is(0.5) ? twin : null, 2));
        }
        if (!more.isEmpty()) {
            at(minute + 2, more.toArray(new Event[0]));
        }
    }

    private Event born() {
        if (chance.is(0.8)) {
            return new Event.CalfBorn(new When.At(birth));
        }
        return chance.is(0.5)
                ? new Event.CalfFound(new When.At(birth))
                : new Event.CalfBorn(new When.Between(birth.minus(Duration.ofHours(2)), birth));
    }

    private void ease(int minute, boolean isHard) {
        if (chance.is(0.85)) {
            Event.CalvingEaseNoted noted = chance.is(0.4)
                    ? new Event.CalvingEaseNoted(null, isHard ? 3 + chance.below(3) : 1 + chance.below(2))
                    : new Event.CalvingEaseNoted(
                            isHard
                                    ? chance.of(
                                            Term.CalvingEase.DIFFICULT_ASSIST,
                                            Term.CalvingEase.VET_ASSIST,
                                            Term.CalvingEase.C_SECTION)
                                    : chance.of(Term.CalvingEase.UNASSISTED, Term.CalvingEase.EASY_ASSIST),
                            null);
            at(
                    minute,
                    noted,
                    new Event.PresentationNoted(
                            chance.is(0.95) ? Term.Presentation.FORWARDS : Term.Presentation.BACKWARDS));
        }
    }

    private void firstMinutes(int minute, boolean isHard) {
        boolean isWeak = chance.is(isHard ? 0.3 : 0.04);
        at(minute + 1, new Event.BreathingNoted(isWeak ? Term.Breathing.GASPING : Term.Breathing.WELL));
        if (isWeak) {
            at(minute + 2, new Event.BreathingStimulated(Term.Stimulation.STRAW_IN_THE_NOSE));
            at(minute + 4, new Event.BreathingNoted(Term.Breathing.WELL));
            at(minute + 30, temperature(99.5));
        }
        if (isHard && chance.is(0.3)) {
            at(minute + 5, new Event.VetCalled(null), new Event.SignNoted(Term.Sign.WEAK, null, null));
        }
        at(
                minute + 6,
                new Event.LickingNoted(chance.is(0.7)),
                new Event.MilestoneReached(Term.Milestone.ON_ITS_BREASTBONE));
        often(
                0.9,
                10 + chance.below(30),
                new Event.CalfDried(chance.of(Term.DryingMeans.TOWEL, Term.DryingMeans.STRAW)));
        often(0.8, 30 + chance.below(60), new Event.MilestoneReached(Term.Milestone.STANDING));
        often(0.6, 30 + chance.below(120), temperature(101.4));
        often(0.15, 40, new Event.ShelterGiven(chance.of(Term.Shelter.JACKET, Term.Shelter.HEAT_LAMP)));
        often(0.2, 60, new Event.HeartRateCounted(100 + chance.below(50)));
        often(0.2, 61, new Event.BreathingRateCounted(40 + chance.below(30)));
        often(0.05, 90, new Event.DamNursed());
    }

    private void navel(int fed) {
        often(0.95, 8 + chance.below(50), dip());
        often(0.7, fed + chance.below(40), dip());
        often(0.8, 12 * 60 + chance.below(14 * 60), dip());
        often(
                0.7,
                13 * 60 + chance.below(14 * 60),
                new Event.NavelChecked(chance.is(0.9) ? Term.NavelFinding.CLEAN : Term.NavelFinding.WET));
    }

    private void colostrum(int fed) {
        often(0.8, fed - 8, new Event.ColostrumTestedByBrix(chance.decimal(23.8, 3.5, 9, 35, 1)));
        often(
                0.05,
                fed - 7,
                new Event.ColostrumTestedByHydrometer(
                        BigDecimal.valueOf(20 + chance.below(110)),
                        new Temperature(BigDecimal.valueOf(72), TemperatureUnit.FAHRENHEIT)));
        if (chance.is(0.05)) {
            at(fed - 3, new Event.FeedRefused());
        }
        often(0.85, fed - 2, source());
        Term.FeedingMethod method = chance.is(0.7) ? Term.FeedingMethod.BOTTLE : Term.FeedingMethod.TUBE;
        Temperature warm = chance.is(0.4) ? fahrenheit(102, 1.5) : null;
        at(fed, new Event.ColostrumFed(quarts(chance.of("3", "3.5", "4", "4")), method, warm));
        often(0.15, fed + 10, new Event.ColostrumLeft(quarts(chance.of("0.5", "1"))));
        often(0.6, fed + 1, new Event.MilestoneReached(Term.Milestone.SUCKING));
        int second = fed + 6 * 60 + chance.below(8 * 60);
        if (chance.is(0.85)) {
            if (chance.is(0.4)) {
                at(second - 2, source());
            }
            at(second, new Event.ColostrumFed(quarts("2"), Term.FeedingMethod.BOTTLE, null));
        }
    }

    private Event source() {
        double share = chance.share();
        if (share < 0.45) {
            return new Event.ColostrumSourceNoted(Term.ColostrumSource.COW, dam, null, null);
        }
        if (share < 0.9) {
            return new Event.ColostrumSourceNoted(Term.ColostrumSource.BATCH, null, herd.someBatch(), null);
        }
        return new Event.ColostrumSourceNoted(
                chance.of(Term.ColostrumSource.POOLED, Term.ColostrumSource.REPLACER), null, null, null);
    }

    private void tagged(boolean isNumbered) {
        int minute = 2 * 60 + chance.below(26 * 60);
        if (!isNumbered) {
            at(minute - 1, new Event.CalfNumbered(number));
        }
        double pounds = sex == Term.Sex.MALE ? POUNDS * BULLS_HEAVIER : POUNDS;
        Mass weight = new Mass(chance.decimal(pounds, pounds / 10, 45, 140, 0), MassUnit.POUND);
        Event weighed = new Event.CalfWeighed(weight, chance.of(Term.WeighingMethod.SCALE, Term.WeighingMethod.TAPE));
        if (chance.is(0.9)) {
            at(minute, new Event.EarTagFitted(number, Term.TagScheme.FARM), weighed);
        }
        if (chance.is(0.6)) {
            String official = "840003" + String.format(java.util.Locale.ROOT, "%09d", chance.below(1_000_000_000));
            at(minute + 1, new Event.EarTagFitted(official, Term.TagScheme.OFFICIAL));
        }
        often(0.9, minute + 60, new Event.CalfMoved("hutch " + (1 + chance.below(400))));
    }

    private void later() {
        int drawn = 2 * DAY + chance.below(5 * DAY);
        if (chance.is(0.45)) {
            at(
                    drawn + 30,
                    new Event.SerumTested(
                            Term.SerumMeasure.PROTEIN, chance.decimal(6.0, 0.8, 4.4, 8.8, 1), after(drawn)));
        } else if (chance.is(0.2)) {
            at(
                    drawn + 30,
                    new Event.SerumTested(
                            Term.SerumMeasure.BRIX, chance.decimal(9.2, 0.9, 7.3, 12.4, 1), after(drawn)));
        }
        often(0.08, 3 * DAY + chance.below(20 * DAY), new Event.SignNoted(Term.Sign.SCOURING, null, null));
        often(0.1, 3 * DAY + chance.below(40 * DAY), new Event.TreatmentNoted(Term.Treatment.VACCINE, null));
        often(0.04, chance.below(3 * DAY), new Event.VoiceNoteTaken(null));
        often(
                0.3,
                56 * DAY + chance.below(20 * DAY),
                new Event.CalfWeighed(
                        new Mass(chance.decimal(180, 20, 110, 260, 0), MassUnit.POUND), Term.WeighingMethod.TAPE));
        // Somebody finds out much later what should have been told at the birth.
        often(0.01, 30 * DAY + chance.below(400 * DAY), new Event.SexNoted(sex));
    }

    private Event dip() {
        return chance.is(0.8)
                ? new Event.NavelDipped(Term.NavelAgent.IODINE, BigDecimal.valueOf(7))
                : new Event.NavelDipped(Term.NavelAgent.CHLORHEXIDINE, null);
    }

    private Event temperature(double mean) {
        return new Event.TemperatureTaken(fahrenheit(mean, 0.7));
    }

    private Temperature fahrenheit(double mean, double deviation) {
        return new Temperature(chance.decimal(mean, deviation, 92, 106, 1), TemperatureUnit.FAHRENHEIT);
    }

    private static Volume quarts(String amount) {
        return new Volume(new BigDecimal(amount), VolumeUnit.QUART);
    }

    private void often(double probability, int minute, Event event) {
        if (chance.is(probability)) {
            at(minute, event);
        }
    }

    /** Tells this so many minutes after the birth or a little later; of a calf that is dead by then nothing. */
    private void at(int minute, Event... events) {
        if (minute < deathMinute) {
            List<Fact> facts = new ArrayList<>();
            for (Event event : events) {
                facts.add(new Fact(id, after(minute), event));
            }
            int late = chance.is(0.05) ? chance.below(6 * 3600) : 4 + chance.below(40);
            herd.tell(after(minute).plusSeconds(late), facts, chance.is(0.015));
        }
    }

    private Instant after(int minute) {
        return birth.plus(Duration.ofMinutes(minute));
    }
}
