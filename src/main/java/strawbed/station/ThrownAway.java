package strawbed.station;

import strawbed.event.Term;

/** Why an open statement is thrown away. */
public enum ThrownAway implements Term {
    NOISE,
    TALK,
    RECORDED,
    SAID_WRONGLY;

    /** As the record keeps it, whatever the language of the screen. */
    @Override
    public String word() {
        return "thrown away: " + Term.super.word();
    }
}
