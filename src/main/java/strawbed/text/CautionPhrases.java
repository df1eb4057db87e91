package strawbed.text;

import strawbed.care.Caution;

/**
 * What a caution tells people to do. They hold beside the farm's own rules and the herd veterinarian's word, never in
 * their place, and name no dose; the sources stand with {@link Caution}. Immutable, safe for any thread.
 */
public final class CautionPhrases {
    private final Wording wording;

    /** For the eye. */
    public CautionPhrases(Messages messages) {
        this(new Written(messages));
    }

    CautionPhrases(Wording wording) {
        this.wording = wording;
    }

    /** Two or three words, such as "Hard birth". */
    public String title(Caution caution) {
        return wording.at(Messages.key(caution) + ".title");
    }

    /** One short line for paper. */
    public String brief(Caution caution) {
        return wording.at(Messages.key(caution) + ".brief");
    }

    /** The title and what to do, in full sentences. */
    public String caution(Caution caution) {
        return wording.text(MessageKey.CAUTION, title(caution), wording.word(caution));
    }
}
