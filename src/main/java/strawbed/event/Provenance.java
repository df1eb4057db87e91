package strawbed.event;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a fact came into the record.
 *
 * @param source the way it came
 * @param words what was heard, in the words people read; empty for a button or a command
 * @param verdict how sure the hearing was, such as understood or unsure; null when nothing was heard
 * @param grammar the version of the grammar; null when nothing was heard
 * @param model the name of the speech model; null when nothing was heard
 * @param sound the file name of the sound in the record's sound folder; null when there is none
 * @param operator who worked then; null when nobody was chosen
 */
public record Provenance(
        Source source,
        List<String> words,
        @Nullable String verdict,
        @Nullable String grammar,
        @Nullable String model,
        @Nullable String sound,
        @Nullable String operator) {
    public Provenance {
        words = List.copyOf(words);
    }

    /** Of a fact that nobody spoke, and nobody was chosen as operator. */
    public static Provenance of(Source source) {
        return new Provenance(source, List.of(), null, null, null, null, null);
    }

    /** The same with this operator. */
    public Provenance by(@Nullable String name) {
        return new Provenance(source, words, verdict, grammar, model, sound, name);
    }

    /** The ways into the record. */
    public enum Source implements Term {
        VOICE,
        BUTTON,
        COMMAND,
        /** Out of a list that another program wrote. */
        IMPORT
    }
}
