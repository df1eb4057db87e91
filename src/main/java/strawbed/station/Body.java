package strawbed.station;

import java.util.List;
import strawbed.report.Timeline;

/** The middle of a screen. */
public sealed interface Body {
    /**
     * A statement that waits for its answer, or the answer to a question.
     *
     * @param number the calf's, to be read from two metres; may be empty
     * @param text in full sentences
     */
    record Telling(String number, String text) implements Body {}

    /**
     * Nothing waits.
     *
     * @param number of the calf named last; may be empty
     * @param word what came of it, to be read from two metres
     * @param text the same in a sentence
     * @param due what is due now and next, the most urgent first
     */
    record Ready(String number, String word, String text, List<DueRow> due) implements Body {
        public Ready {
            due = List.copyOf(due);
        }
    }

    /** Keys to choose from, in rows; at most as many as a page has room for. */
    record Choices(List<Key> keys) implements Body {
        public Choices {
            keys = List.copyOf(keys);
        }
    }

    /**
     * One calf.
     *
     * @param number to be read from two metres
     * @param facts who it is, in a line
     * @param day its first day, drawn
     * @param lanes the words for its feeds, its dips and looks at it
     * @param lines cautions and what is due, the first of them
     */
    record OneCalf(String number, String facts, Timeline day, List<String> lanes, List<String> lines) implements Body {
        public OneCalf {
            lanes = List.copyOf(lanes);
            lines = List.copyOf(lines);
        }
    }

    /** Lines to be read. */
    record Lines(List<String> lines) implements Body {
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A bar to be held against a ruler.
     *
     * @param text what to do
     * @param millimetres how long it should be
     */
    record Ruler(String text, int millimetres) implements Body {}
}
