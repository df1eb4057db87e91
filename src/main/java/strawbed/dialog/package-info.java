/**
 * From what was understood to what is confirmed: read back, ask, confirm, cancel, repeat, undo.
 *
 * <p>Entry type: {@link strawbed.dialog.Dialog}, a pure state machine: it takes an input and gives the next state with
 * what is to be done. It never writes, speaks or reads a clock. Voice and button are the same input. "Saved" is a
 * prompt that only follows {@link strawbed.dialog.DialogInput.Committed}. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.dialog;

import org.jspecify.annotations.NullMarked;
