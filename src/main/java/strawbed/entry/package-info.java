/**
 * What can be entered by big buttons: step by step, without words and without a screen of its own.
 *
 * <p>Entry types: {@link strawbed.entry.EntryDraft} for the facts of one calf or of the barn, {@link
 * strawbed.entry.CalfDraft} for a calf that is not on the list. Each gives the {@link strawbed.entry.Step} that is asked
 * now and takes an {@link strawbed.entry.Answer}; what is not possible is refused with a {@link
 * strawbed.entry.Refusal}, never with an exception, and every press can be taken back. What is possible but odd goes on
 * and is asked about as if it were spoken ({@link strawbed.statement.Doubts}). Immutable, safe for any thread.
 */
@NullMarked
package strawbed.entry;

import org.jspecify.annotations.NullMarked;
