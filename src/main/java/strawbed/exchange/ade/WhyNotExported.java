package strawbed.exchange.ade;

/** Why an event is not in the exported document. */
public enum WhyNotExported {
    /** It no longer counts. */
    WITHDRAWN,
    /** It is about the record, such as a withdrawal or a print, and says nothing of an animal. */
    ABOUT_THE_RECORD,
    /** The same was told again later, and the later word is exported. */
    TOLD_AGAIN,
    /** The opening of the calf's record is not there or was withdrawn. */
    CALF_NOT_OPENED,
    /** It is about no single animal, and the standard requires one. */
    NO_ANIMAL,
    /** The dam is not known, and the standard makes a birth an event of the dam. */
    DAM_NOT_RECORDED,
    /** How the calf was weighed was not said, and the standard reads a weight without a method as one of a load cell. */
    WEIGHING_METHOD_NOT_RECORDED,
    /** How long the feed took was not said, and the standard requires it; it also counts feed by weight only. */
    FEEDING_TIME_NOT_RECORDED,
    /** The standard has health and diagnosis only as a verdict, and a sign that was seen is none. */
    NEEDS_A_DIAGNOSIS,
    /** The calf moved within the farm; the standard's movements are between farms. */
    WITHIN_THE_FARM,
    /** What was said is in a sound, which the standard cannot hold. */
    ONLY_SOUND,
    /** The number or the word is empty. */
    EMPTY,
    /** No resource that is written has a place for it. */
    NO_PLACE
}
