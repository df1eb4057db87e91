package strawbed.care;

import java.util.Comparator;
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
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * A birth that was hard, as told or as the calf shows it.
 *
 * <p>Sources: a score of 3 or more on the five-step scale of the National Association of Animal Breeders calls for a
 * watch; yellow stain, swelling, abnormal breathing, weakness, limping, or not standing are signs of a hard birth. Both
 * are common practice, no published source.
 *
 * @param first the word on the birth, or else the first sign of it
 * @param isTold whether it was told, in the last word on it
 */
record HardBirth(Timed<?> first, boolean isTold) {
    private static final Set<CalvingEase> HARD =
            Set.of(CalvingEase.DIFFICULT_ASSIST, CalvingEase.VET_ASSIST, CalvingEase.C_SECTION);
    private static final Set<Sign> SIGNS =
            Set.of(Sign.MECONIUM, Sign.SWOLLEN, Sign.WEAK, Sign.LIMPING, Sign.CANNOT_STAND);

    /** Empty when nothing tells of a hard birth. */
    static Optional<HardBirth> of(CalfRecord calf, Protocol protocol) {
        boolean toldHard = calf.ease().filter(HARD::contains).isPresent()
                || calf.easeScore().filter(score -> isHard(score, protocol)).isPresent();
        if (toldHard) {
            return calf.all(CalvingEaseNoted.class).stream()
                    .filter(noted -> tells(noted.event(), protocol))
                    .findFirst()
                    .map(noted -> new HardBirth(noted, true));
        }
        return Stream.<Timed<? extends Event>>concat(
                        calf.all(SignNoted.class).stream(), calf.all(BreathingNoted.class).stream())
                .filter(seen -> tells(seen.event(), protocol))
                .min(Comparator.comparing(Timed::at))
                .map(seen -> new HardBirth(seen, false));
    }

    /** Whether this one event tells of a hard birth. */
    static boolean tells(Event event, Protocol protocol) {
        if (event instanceof CalvingEaseNoted noted) {
            Integer score = noted.score();
            return score == null ? noted.ease() != null && HARD.contains(noted.ease()) : isHard(score, protocol);
        }
        if (event instanceof SignNoted noted) {
            return SIGNS.contains(noted.sign());
        }
        return event instanceof BreathingNoted noted && noted.breathing() != Breathing.WELL;
    }

    private static boolean isHard(int score, Protocol protocol) {
        return score >= protocol.number(Setting.HARD_FROM_EASE_SCORE).intValue();
    }
}
