package strawbed.care;

/** Why something is not judged. */
public enum WhyNot {
    /** No birth, finding or opening is on record. */
    NO_TIME_OF_BIRTH,
    /** It was told as before the birth. */
    BEFORE_BIRTH,
    /** The birth was told as later than now. */
    BORN_LATER_THAN_NOW,
    /** No colostrum was fed yet. */
    NOT_FED,
    /** The calf sucked its dam: how much is not known. */
    SUCKLED,
    /** What was fed does not make up the target yet. */
    TARGET_NOT_REACHED,
    /** It was not weighed, and there is no published mean weight for its breed. */
    NO_WEIGHT,
    /** The colostrum was not tested. */
    NOT_TESTED,
    /** The reading is outside the range that the estimate was made for. */
    OUTSIDE_RANGE,
    /** The reading cannot be true. */
    NOT_PLAUSIBLE,
    /** The milk's temperature was not said, and the hydrometer needs it. */
    NO_MILK_TEMPERATURE,
    /** No published figure for a first feed this late. */
    NO_PUBLISHED_FIGURE,
    /** No serum was tested. */
    NO_SAMPLE,
    /** The blood was drawn too early. */
    DRAWN_TOO_EARLY,
    /** The blood was drawn too late. */
    DRAWN_TOO_LATE,
    /** Fed on replacer: the lines for colostrum, and for protein and Brix of the serum, do not hold for it. */
    REPLACER,
    /** The calf is dead. */
    DEAD,
    /** It is not old enough yet. */
    TOO_YOUNG,
    /** Too few calves to say anything of the herd. */
    TOO_FEW,
    /** The calf scours: it has lost water, which raises protein and Brix. Its own verdict stands, the herd's is without it. */
    SCOURING,
    /** Nothing of it is on record. */
    NOT_RECORDED
}
