package strawbed.statement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.ParseTree;

/** What an utterance was taken for. */
public sealed interface Interpretation {
    /** The words it was taken from, as people write them. */
    List<String> words();

    /** What it comes to, whatever the words were: two outcomes with the same sense make the same record. */
    Object sense();

    /** The verdict's word in output and record. */
    String verdict();

    /** A statement without doubt. */
    record Understood(List<String> words, ParseTree tree, Statement statement) implements Interpretation {
        public Understood {
            words = List.copyOf(words);
        }

        @Override
        public Object sense() {
            return statement;
        }

        @Override
        public String verdict() {
            return "understood";
        }
    }

    /** A statement to ask about, with the reasons. */
    record Unsure(List<String> words, @Nullable ParseTree tree, Statement best, List<Doubt> doubts)
            implements Interpretation {
        public Unsure {
            words = List.copyOf(words);
            doubts = List.copyOf(doubts);
        }

        @Override
        public Object sense() {
            return best;
        }

        @Override
        public String verdict() {
            return "unsure";
        }

        /** Whether the rest of the sentence is still to come. */
        public boolean isIncomplete() {
            return doubts.stream().anyMatch(Doubt.Incomplete.class::isInstance);
        }
    }

    /**
     * A control phrase.
     *
     * @param calf the calf it asks about, for those that name one
     */
    record ControlHeard(
            List<String> words,
            ParseTree tree,
            Control control,
            @Nullable CalfReference calf) implements Interpretation {
        public ControlHeard {
            words = List.copyOf(words);
        }

        @Override
        public Object sense() {
            return List.of(control, String.valueOf(calf));
        }

        @Override
        public String verdict() {
            return "understood";
        }
    }

    /** A sentence of another grammar than ours: its tree is all there is to say. */
    record Matched(List<String> words, ParseTree tree) implements Interpretation {
        public Matched {
            words = List.copyOf(words);
        }

        @Override
        public Object sense() {
            return tree;
        }

        @Override
        public String verdict() {
            return "understood";
        }
    }

    /** Speech that is no statement, or noise. */
    record NoMatch(List<String> words) implements Interpretation {
        public NoMatch {
            words = List.copyOf(words);
        }

        @Override
        public Object sense() {
            return List.of();
        }

        @Override
        public String verdict() {
            return "nomatch";
        }
    }
}
