package strawbed.station;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.entry.EntryGroup;
import strawbed.event.CalfId;
import strawbed.statement.Control;
import strawbed.statement.Statement;

/** What pressing a key asks for. */
public sealed interface Act {
    /** Another page. */
    record Go(Place place) implements Act {}

    /** What can be said as well. */
    record Order(Control control) implements Act {}

    /**
     * A statement that was put together by keys; it is asked about like a spoken one.
     *
     * @param mends the open statement in whose place it comes
     */
    record Enter(Statement statement, Optional<UUID> mends) implements Act {}

    /** The talk key went down, or up. */
    record Talk(boolean down) implements Act {}

    /** Another person works from now on; null for nobody. */
    record Operate(@Nullable String name) implements Act {}

    /** The sound of an open statement is wanted. */
    record Replay(UUID open) implements Act {}

    /** An open statement is heard once more, with what is known by now. */
    record HearAgain(UUID open) implements Act {}

    /** An open statement is thrown away; its sound is kept. */
    record Settle(UUID open, ThrownAway why) implements Act {}

    /** An open statement becomes a note on a calf. */
    record KeepAsNote(UUID open, CalfId calf) implements Act {}

    /** A line of this computer's settings. */
    record Set(String line, String value) implements Act {}

    /** Read backs about this are spoken, or only shown. */
    record Speak(EntryGroup group, boolean spoken) implements Act {}

    /** Another name to choose from. */
    record AddOperator(String name) implements Act {}

    /** The bar on the screen is to be longer, or shorter. */
    record Stretch(int steps) implements Act {}

    /** A key went down while one was to be learnt. */
    record Learn(Meaning meaning, int code) implements Act {}

    /** A calf's card on paper. */
    record PrintCard(CalfId calf) implements Act {}

    /** The sheet for the next shift. */
    record PrintHandover() implements Act {}

    /** Something is done about a page on its way to the printer. */
    record OfPaper(int number, PaperStep step) implements Act {}

    /** The end. */
    record Quit() implements Act {}
}
