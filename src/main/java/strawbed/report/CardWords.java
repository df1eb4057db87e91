package strawbed.report;

/** The words of one language that stand on a card whatever calf it is about. */
public interface CardWords {
    /** Which language, such as {@code en-US}. */
    String language();

    String word(CardWord word);

    /** Such as "6 h". */
    String hours(int hours);

    /** How much is left out for want of room. */
    String more(int count);

    /** How many cautions stand on the screen only. */
    String onScreen(int cautions);

    /** The same, where others stand on the card. */
    String moreOnScreen(int cautions);
}
