package strawbed.bench;

/** How a spoken sentence came out. */
public enum Outcome {
    /** One utterance, understood, with the calf and all events and values as the table says. */
    RIGHT("wholly right"),
    /** The program asked about the right statement. */
    ASKED_RIGHT("asked, right"),
    /** The program asked about a wrong statement. */
    ASKED_WRONG("asked, wrong"),
    /** Nothing came of it: the speaker has to say it again. */
    NOT_UNDERSTOOD("not understood"),
    /** Understood without doubt, and not as it was said: the only outcome that spoils a record unasked. */
    WRONG("wrong as understood");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** As the table names it. */
    public String words() {
        return words;
    }
}
