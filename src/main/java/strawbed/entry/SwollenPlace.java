package strawbed.entry;

import strawbed.event.Term;

/** Where a calf can be swollen. */
public enum SwollenPlace implements Term {
    HEAD,
    TONGUE,
    LEG
}
