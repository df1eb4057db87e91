package strawbed.report.pdf;

/**
 * What a drawn thing is for whoever has the page read out: standard structure types of ISO 32000-1, 14.8.4.
 *
 * @param spoken what is said instead of a figure; blank for what is not one
 */
record Role(Kind kind, String spoken) {
    static final Role TITLE = new Role(Kind.H1, "");
    static final Role HEADING = new Role(Kind.H2, "");
    static final Role TEXT = new Role(Kind.P, "");
    /** Only for the eye: rules, signs, frames. */
    static final Role DECORATION = new Role(Kind.ARTIFACT, "");

    /** The kinds by their standard names. */
    enum Kind {
        H1,
        H2,
        P,
        FIGURE,
        ARTIFACT
    }

    /** All that stands one after the other in the same figure is read out as these words. */
    static Role figure(String spoken) {
        return new Role(Kind.FIGURE, spoken);
    }
}
