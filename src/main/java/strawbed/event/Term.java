package strawbed.event;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A value that comes from a closed list of words. The word is what the grammar's tags say and what the record keeps;
 * changing one would make old records unreadable.
 */
public interface Term {
    String name();

    /** The word in the record: the constant's name in lower case with spaces, where nothing else is said. */
    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The constant with this word, or empty when the list has no such word. */
    static <T extends Enum<T> & Term> Optional<T> find(Class<T> list, String word) {
        return Arrays.stream(list.getEnumConstants())
                .filter(term -> term.word().equals(word))
                .findFirst();
    }

    /**
     * The constant with this word.
     *
     * @throws IllegalArgumentException if the list has no such word
     */
    static <T extends Enum<T> & Term> T of(Class<T> list, String word) {
        return find(list, word)
                .orElseThrow(() -> new IllegalArgumentException("\"" + word + "\" is none of the words for "
                        + list.getSimpleName() + ": "
                        + Arrays.stream(list.getEnumConstants()).map(Term::word).toList()));
    }

    /** The sex of a calf. */
    enum Sex implements Term {
        FEMALE,
        MALE
    }

    /** How a birth went, in the words of the ICAR Animal Data Exchange list for calving ease. */
    enum CalvingEase implements Term {
        UNASSISTED("EasyUnassisted"),
        EASY_ASSIST("EasyAssisted"),
        DIFFICULT_ASSIST("DifficultExtraAssistance"),
        VET_ASSIST("DifficultVeterinaryCare"),
        C_SECTION("CaesareanOrSurgery");

        private final String word;

        CalvingEase(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    /** How the calf lay at birth. */
    enum Presentation implements Term {
        FORWARDS,
        BACKWARDS,
        BREECH
    }

    /** When a calf died. */
    enum DeathTime implements Term {
        AT_BIRTH,
        LATER
    }

    /** How a calf breathes. */
    enum Breathing implements Term {
        WELL,
        HARD,
        GASPING,
        NONE
    }

    /** What was done to make a calf breathe. */
    enum Stimulation implements Term {
        STRAW_IN_THE_NOSE,
        RUBBED,
        COLD_WATER_ON_HEAD
    }

    /** What a calf was dried with. */
    enum DryingMeans implements Term {
        TOWEL,
        STRAW
    }

    /** What keeps a calf warm, or cool. */
    enum Shelter implements Term {
        HEAT_LAMP,
        BLANKET,
        JACKET,
        SHADE,
        WARM_BOX
    }

    /** What a navel is dipped in. */
    enum NavelAgent implements Term {
        IODINE,
        CHLORHEXIDINE
    }

    /** How a navel looks. */
    enum NavelFinding implements Term {
        CLEAN,
        WET,
        SWOLLEN,
        BLEEDING
    }

    /** What a newborn calf does for the first time. */
    enum Milestone implements Term {
        HEAD_UP,
        ON_ITS_BREASTBONE,
        STANDING,
        SUCKING
    }

    /** What can be seen on a calf. */
    enum Sign implements Term {
        WEAK,
        LIMPING,
        CANNOT_STAND,
        MECONIUM,
        SWOLLEN,
        GUMS,
        SUCK_REFLEX,
        SCOURING
    }

    /** How a calf was weighed. */
    enum WeighingMethod implements Term {
        SCALE,
        TAPE,
        GUESS
    }

    /** Who gives out the number on an ear tag. */
    enum TagScheme implements Term {
        FARM,
        OFFICIAL
    }

    /** How colostrum was fed. */
    enum FeedingMethod implements Term {
        BOTTLE,
        TUBE
    }

    /** Where colostrum comes from. */
    enum ColostrumSource implements Term {
        COW,
        POOLED,
        REPLACER,
        BATCH
    }

    /** What was done to colostrum. */
    enum ColostrumTreatment implements Term {
        FROZEN,
        HEAT_TREATED
    }

    /** What was measured in a calf's serum. */
    enum SerumMeasure implements Term {
        PROTEIN,
        BRIX,
        /** Antibody (immunoglobulin G) as a laboratory tells it. */
        IGG
    }

    /** What somebody says was given; what it was is in the sound. */
    enum Treatment implements Term {
        TREATMENT,
        VACCINE
    }

    /** What is printed of a calf: for a living one its card, for a dead one what was recorded. */
    enum Printout implements Term {
        HUTCH_CARD,
        RECORD_SHEET
    }

    /** The sizes of what is printed of a calf. */
    enum CardSize implements Term {
        FOUR_BY_SIX_INCH,
        A6,
        FOUR_BY_SIX_INCH_UPRIGHT,
        A6_UPRIGHT
    }
}
