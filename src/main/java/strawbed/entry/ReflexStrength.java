package strawbed.entry;

import strawbed.event.Term;

/** How a calf sucks on a finger. */
public enum ReflexStrength implements Term {
    STRONG,
    WEAK,
    NONE
}
