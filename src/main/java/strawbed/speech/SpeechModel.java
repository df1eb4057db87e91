package strawbed.speech;

/** A loaded model of a language. May be shared among threads; closed after its recognisers. */
public interface SpeechModel extends AutoCloseable {
    /** Whether the word can be recognised; a word that the model lacks is never heard, without a warning. */
    boolean knows(String word);

    /**
     * A new recogniser for these sentences and for "none of them"; quick to make (about 0.03 s for 10,000 sentences).
     *
     * @param alternatives how many readings to give at most, at least 1
     * <p>Ask {@link Vocabulary#unknownWords} first: a recogniser is not made when the model lacks a word.
     */
    SpeechRecognizer recognizer(Vocabulary vocabulary, int alternatives);

    /** A new recogniser for any words of the language, with one reading each; it hears our own words badly. */
    SpeechRecognizer anyWords();

    /** The name of the model, for the journal. */
    String name();

    /** Lets the native memory go; a second call does nothing. */
    @Override
    void close();
}
