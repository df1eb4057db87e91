package strawbed.entry;

import strawbed.event.Term;

/** Places that have a number. */
public enum NumberedPlace implements Term {
    HUTCH,
    PEN,
    GROUP_PEN
}
