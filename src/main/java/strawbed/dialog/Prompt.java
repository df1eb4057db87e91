package strawbed.dialog;

import org.jspecify.annotations.Nullable;
import strawbed.care.Caution;
import strawbed.event.CalfId;
import strawbed.event.Event;

/** What is said and shown to the person. The words are in the room {@code text}. */
public sealed interface Prompt {
    /** What was understood; a yes saves it. */
    record ReadBack(Pending pending) implements Prompt {}

    /** What was understood, with what is doubtful about it. */
    record Ask(Pending pending) implements Prompt {}

    /** A caution that must be seen at once, before any confirmation. */
    record Warn(Caution caution) implements Prompt {}

    /** The facts are safe on disk. */
    record Saved(int facts, @Nullable String calf) implements Prompt {}

    /** The facts are not on disk, and the statement is still pending. */
    record NotSaved(String reason) implements Prompt {}

    /** What was said, or its sound, could not be kept; it is tried again with all that follows. */
    record NotKept(String reason) implements Prompt {}

    /** The statement was thrown away on the person's word; its sound is kept. */
    record Cancelled() implements Prompt {}

    /** The last entry no longer counts; it stays in the record as withdrawn. */
    record Undone(int facts) implements Prompt {}

    /** Nobody confirmed: the statement is among the open ones. */
    record KeptOpen() implements Prompt {}

    /** Speech that is no statement; its sound is kept. */
    record NotUnderstood() implements Prompt {}

    /** There is no statement to answer. */
    record NothingPending() implements Prompt {}

    /** There is nothing to undo. */
    record NothingToUndo() implements Prompt {}

    /** A yes is not enough: this statement cannot be saved as it stands. */
    record CannotConfirm(Pending pending) implements Prompt {}

    /** The calf that was asked about is not in the record. */
    record NoSuchCalf() implements Prompt {}

    /** What is due, for the program to answer. */
    record TellDue() implements Prompt {}

    /** How a calf is, for the program to answer. */
    record TellCalf(CalfId calf) implements Prompt {}

    /** A card is wanted. */
    record PrintCard(CalfId calf) implements Prompt {}

    /**
     * A card was written.
     *
     * @param file where it is
     * @param notNoted why it is a copy that the record does not know; null for a print that it knows
     */
    record CardWritten(CalfId calf, String file, @Nullable String notNoted) implements Prompt {}

    /** A card could not be written. */
    record CardNotWritten(String reason) implements Prompt {}

    /** Nothing was announced that could be put off: due items are shown when asked for, not announced. */
    record NothingToPutOff() implements Prompt {}

    /** Something about the record itself that was noted in it, such as a clock that jumped. */
    record Noticed(Event event) implements Prompt {}

    /** The recorder stops listening for statements. */
    record Paused() implements Prompt {}

    /** The recorder listens again. */
    record Awake() implements Prompt {}
}
