package strawbed.station;

import java.util.Optional;
import java.util.UUID;
import strawbed.entry.CalfDraft;
import strawbed.entry.EntryDraft;
import strawbed.entry.EntryGroup;
import strawbed.event.CalfId;

/** Which page is shown, with what was pressed on it so far. */
public sealed interface Place {
    /** What is heard, what waits for an answer, what is due. */
    record Now() implements Place {}

    /** The calves of the first day. */
    record Calves(int page) implements Place {}

    /**
     * One calf.
     *
     * @param page 0 for its drawn day; behind it all that is to be said of it
     */
    record OneCalf(CalfId calf, int page) implements Place {}

    /**
     * Whose facts are entered.
     *
     * @param mends the open statement that is mended by it
     */
    record WhoseFacts(int page, Optional<UUID> mends) implements Place {}

    /** A calf that is not on the list is named. */
    record Naming(CalfDraft draft, Typed typed, Optional<UUID> mends) implements Place {}

    /**
     * Facts are entered.
     *
     * @param group whose kinds are shown; empty for the first page
     */
    record Entering(EntryDraft draft, Optional<EntryGroup> group, Typed typed, Optional<UUID> mends) implements Place {}

    /** What was said and not confirmed. */
    record OpenStatements(int page) implements Place {}

    /** One of them. */
    record OneOpen(UUID id) implements Place {}

    /** Whose note it is. */
    record NoteOf(UUID id, int page) implements Place {}

    /** Why it is thrown away. */
    record ThrowAway(UUID id) implements Place {}

    /** What else there is. */
    record More() implements Place {}

    /** What waits to be printed, and what was. */
    record Prints(int page) implements Place {}

    /** One of these pages, by its number. */
    record OnePrint(int number) implements Place {}

    /** Who works. */
    record Operators() implements Place {}

    /** How to listen, to speak, to look. */
    record Setup() implements Place {}

    /** What is read back by voice. */
    record Voice() implements Place {}

    /**
     * A person's name is written by keys.
     *
     * @param name so far
     * @param letters to choose the next one from; empty to choose a group of letters first
     */
    record NewOperator(String name, String letters) implements Place {}

    /** Which microphone. */
    record Microphones(int page) implements Place {}

    /**
     * What the keys of a pedal mean.
     *
     * @param learning what the next key that goes down shall mean
     */
    record Pedal(Optional<Meaning> learning) implements Place {}

    /** The length of a millimetre on this screen. */
    record Ruler() implements Place {}

    /** Whether to end. */
    record End() implements Place {}
}
