package strawbed.card;

import java.math.BigDecimal;
import java.util.List;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** Invented calves of an invented farm; the calf of the card is A. */
final class Calves {
    private Calves() {}

    static Told easyBirth() {
        return new Told()
                .open("A", "02:10", "417", "212")
                .a(
                        "02:10",
                        new Event.CalfBorn(Told.at("02:10")),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.CalvingEaseNoted(Term.CalvingEase.UNASSISTED, null),
                        new Event.PresentationNoted(Term.Presentation.FORWARDS),
                        new Event.DamNoted(null, 3))
                .a("02:12", new Event.BreathingNoted(Term.Breathing.WELL), new Event.LickingNoted(true))
                .a("02:30", new Event.NavelDipped(Term.NavelAgent.IODINE, new BigDecimal(7)))
                .a("02:50", new Event.ColostrumTestedByBrix(new BigDecimal("24.5")))
                .a("02:55", fed("3", Term.FeedingMethod.BOTTLE))
                .a("03:05", new Event.MilestoneReached(Term.Milestone.STANDING))
                .a(
                        "03:20",
                        new Event.CalfWeighed(new Mass(new BigDecimal(88), MassUnit.POUND), null),
                        new Event.EarTagFitted("4127", Term.TagScheme.FARM),
                        new Event.EarTagFitted("840003123456789", Term.TagScheme.OFFICIAL));
    }

    static Told foundWithSigns() {
        return new Told()
                .open("A", "05:10", "512", null)
                .a(
                        "05:10",
                        new Event.CalfFound(Told.at("05:10")),
                        new Event.SexNoted(Term.Sex.MALE),
                        new Event.SignNoted(Term.Sign.SWOLLEN, "tongue", null),
                        new Event.SignNoted(Term.Sign.MECONIUM, null, null))
                .a(
                        "05:20",
                        new Event.TemperatureTaken(new Temperature(new BigDecimal("99.5"), TemperatureUnit.FAHRENHEIT)))
                .a("06:40", fed("2", Term.FeedingMethod.TUBE));
    }

    static Told mixedTwins() {
        return new Told()
                .open("A", "23:40", "13", "300")
                .open("B", "24:05", "14", "300")
                .a(
                        "23:40",
                        new Event.CalfBorn(new When.Between(Told.time("22:00"), Told.time("24:00"))),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.TwinNoted("14", 2))
                .of("B", "24:05", new Event.CalfBorn(Told.at("24:05")), new Event.SexNoted(Term.Sex.MALE));
    }

    static Told nothingKnown() {
        return new Told().open("A", "03:00", "9", null);
    }

    static Told withoutNumber() {
        return new Told().open("A", "03:00", null, "306").a("03:00", new Event.CalfBorn(Told.at("03:00")));
    }

    static Told dead() {
        return easyBirth().a("05:40", new Event.CalfDied(Told.time("05:40"), Term.DeathTime.LATER));
    }

    static List<Told> all() {
        return List.of(easyBirth(), foundWithSigns(), mixedTwins(), nothingKnown(), withoutNumber(), dead());
    }

    static Event.ColostrumFed fed(String quarts, Term.FeedingMethod method) {
        return new Event.ColostrumFed(new Volume(new BigDecimal(quarts), VolumeUnit.QUART), method, null);
    }
}
