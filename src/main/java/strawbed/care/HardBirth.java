package strawbed.care;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.SignNoted;
import strawbed.event.Term.Breathing;
import strawbed.event.Term.CalvingEase;
import strawbed.event.Term.Sign;

/**
 * Whether a birth was hard, as told or as the calf shows it.
 *
 * <p>Sources: a score of 3 or more on the five-step scale of the National Association of Animal Breeders calls for a
 * watch; yellow stain, swelling, abnormal breathing, weakness, limping, or not standing are signs of a hard birth. Both
 * are common practice, no published source.
 */
final class HardBirth {
    private static final int HARD_FROM = 3;
    private static final Set<CalvingEase> HARD =
            Set.of(CalvingEase.DIFFICULT_ASSIST, CalvingEase.VET_ASSIST, CalvingEase.C_SECTION);
    private static final Set<Sign> SIGNS =
            Set.of(Sign.MECONIUM, Sign.SWOLLEN, Sign.WEAK, Sign.LIMPING, Sign.CANNOT_STAND);

    private HardBirth() {}

    /** Whether this one event tells of a hard birth. */
    static boolean tells(Event event) {
        if (event instanceof CalvingEaseNoted noted) {
            Integer score = noted.score();
            return score == null ? noted.ease() != null && HARD.contains(noted.ease()) : score >= HARD_FROM;
        }
        if (event instanceof SignNoted noted) {
            return SIGNS.contains(noted.sign());
        }
        return event instanceof BreathingNoted noted && noted.breathing() != Breathing.WELL;
    }

    /** Whether it was told to be hard, in the last word on it. */
    static boolean isTold(CalfRecord calf) {
        return calf.ease().filter(HARD::contains).isPresent()
                || calf.easeScore().filter(score -> score >= HARD_FROM).isPresent();
    }

    /** When the calf first showed a sign of it. */
    static Optional<Instant> firstSign(CalfRecord calf) {
        return Stream.<Timed<? extends Event>>concat(
                        calf.all(SignNoted.class).stream(), calf.all(BreathingNoted.class).stream())
                .filter(seen -> tells(seen.event()))
                .map(Timed::at)
                .min(Instant::compareTo);
    }

    static boolean is(CalfRecord calf) {
        return isTold(calf) || firstSign(calf).isPresent();
    }
}
