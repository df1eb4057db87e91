package strawbed.care;

import java.time.Duration;
import strawbed.calf.CalfRecord;
import strawbed.event.Event.CalfDied;
import strawbed.event.Term.DeathTime;
import strawbed.protocol.Setting;

/**
 * What became of a calf that was born. A calf dead up to the age that the protocol sets, that age included, counts as
 * stillborn.
 *
 * <p>Sources: alive, born dead or died within 48 hours are the outcomes that the United States Department of
 * Agriculture's scale tells apart, as quoted; 24 or 48 hours from an extension article and Utah State University
 * Extension 2010. Those also ask for 260 days of gestation, which the record does not hold: what was told as a calf is
 * counted as one.
 *
 * @param isAssumed whether an age decided that is counted from an assumed birth
 */
public record BirthOutcome(Kind kind, boolean isAssumed) {
    /** What became of it. */
    public enum Kind {
        /** It was born alive, and no death is on record. */
        BORN_ALIVE,
        BORN_DEAD,
        /** It died no older than the protocol's limit. */
        DIED_WITHIN_LIMIT,
        /** It died older than that: a calf's death, not a stillbirth. */
        DIED_LATER
    }

    /** Not judged where it died at no known age. */
    public static Judged<BirthOutcome> of(CalfRecord calf, Farm farm) {
        CalfDied death = calf.death().orElse(null);
        if (death == null) {
            return Judged.of(new BirthOutcome(Kind.BORN_ALIVE, false));
        }
        if (death.when() == DeathTime.AT_BIRTH) {
            return Judged.of(new BirthOutcome(Kind.BORN_DEAD, false));
        }
        Duration limit = farm.protocolFor(calf).time(Setting.STILLBIRTH_WITHIN_HOURS);
        return AgeStart.ageOf(calf, death.at())
                .then(age -> Judged.of(new BirthOutcome(
                        age.compareTo(limit) <= 0 ? Kind.DIED_WITHIN_LIMIT : Kind.DIED_LATER,
                        AgeStart.of(calf).filter(AgeStart::isEstimated).isPresent())));
    }

    /** Whether it was dead when it was born. */
    static boolean isBornDead(CalfRecord calf) {
        return calf.death()
                .map(CalfDied::when)
                .filter(DeathTime.AT_BIRTH::equals)
                .isPresent();
    }

    /** Whether it counts as stillborn. */
    public boolean isStillborn() {
        return kind == Kind.BORN_DEAD || kind == Kind.DIED_WITHIN_LIMIT;
    }
}
