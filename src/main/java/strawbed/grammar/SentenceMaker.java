package strawbed.grammar;

/** Makes sentences. */
public final class SentenceMaker {
    /** Stands in a sentence where the grammar lets anything be said ({@code $GARBAGE}). */
    public static final String ANYTHING = "[unk]";
}
