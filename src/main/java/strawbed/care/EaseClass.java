package strawbed.care;

import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Term.CalvingEase;

/**
 * How hard a birth was, from its score or from the word that was said; a word is never turned into a score. An assisted
 * birth is not yet a difficult one: a leg put right and then an easy birth is assisted, and no more.
 *
 * <p>Sources: the five-step scale of the National Association of Animal Breeders, as quoted: 1 no problem, 2 slight
 * problem, 3 needed assistance, 4 considerable force, 5 extreme difficulty; that assisted is not difficult from Ohio
 * State University Extension VME-29 (2012). The words are those of the ICAR Animal Data Exchange list, which names
 * three of them difficult. Beef scales of the same five digits mean something else.
 */
public enum EaseClass {
    /** It went without help, or with a slight problem. */
    NOT_ASSISTED,
    /** It needed help, but not force. */
    ASSISTED,
    /** It needed considerable force, a veterinarian or surgery. */
    DIFFICULT;

    private static final int ASSISTED_FROM = 3;
    private static final int DIFFICULT_FROM = 4;

    /**
     * By what was told last, word or score. What was not recorded is not judged and is no easy birth; of those, nobody
     * saw the births of calves that were found.
     */
    public static Judged<EaseClass> of(CalfRecord calf) {
        Optional<CalvingEaseNoted> last = calf.history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(entry -> entry.recorded().event())
                .filter(CalvingEaseNoted.class::isInstance)
                .map(CalvingEaseNoted.class::cast)
                .reduce((earlier, later) -> later);
        return last.map(noted -> Judged.of(of(noted))).orElseGet(() -> Judged.not(WhyNot.NOT_RECORDED));
    }

    /** Of a score of 1 to 5. */
    public static EaseClass ofScore(int score) {
        if (score >= DIFFICULT_FROM) {
            return DIFFICULT;
        }
        return score >= ASSISTED_FROM ? ASSISTED : NOT_ASSISTED;
    }

    /** Of a word. */
    public static EaseClass ofWord(CalvingEase word) {
        return switch (word) {
            case UNASSISTED -> NOT_ASSISTED;
            case EASY_ASSIST -> ASSISTED;
            case DIFFICULT_ASSIST, VET_ASSIST, C_SECTION -> DIFFICULT;
        };
    }

    /** Whether it was helped, difficult or not. */
    public boolean isAssisted() {
        return this != NOT_ASSISTED;
    }

    private static EaseClass of(CalvingEaseNoted noted) {
        Integer score = noted.score();
        CalvingEase word = noted.ease();
        if (score != null) {
            return ofScore(score);
        }
        if (word != null) {
            return ofWord(word);
        }
        throw new AssertionError("calving ease without a word or a score");
    }
}
