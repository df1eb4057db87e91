package strawbed.care;

/** What an estimate rests on without being measured. Whoever shows the estimate names these. */
public enum Assumption {
    /** The birth was not timed. */
    BIRTH_NOT_TIMED,
    /** The weight is the mean of the breed. */
    WEIGHT_OF_BREED,
    /** Somebody guessed the weight. */
    WEIGHT_GUESSED,
    /** One liter of colostrum is taken as one kilogram, the habit of the trade. */
    LITER_IS_KILOGRAM,
    /** The antibody is estimated from Brix. */
    ANTIBODY_FROM_BRIX,
    /** One test is taken for several feeds, and nobody said that they were of one colostrum. */
    ONE_COLOSTRUM,
    /** How much plasma a calf has, as the protocol says. */
    PLASMA_SHARE,
    /** The share that is taken up is that of published trials with feeds of this age. */
    UPTAKE_OF_TRIALS
}
