package strawbed.entry;

import strawbed.event.Term;

/** How a calf's gums look. */
public enum GumColour implements Term {
    PINK,
    PALE,
    BLUE
}
