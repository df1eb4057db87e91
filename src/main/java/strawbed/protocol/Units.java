package strawbed.protocol;

/** The units in which amounts are shown. */
public enum Units {
    AS_SPOKEN,
    US,
    METRIC
}
