/**
 * The facts of a calf's first hours, and only they.
 *
 * <p>Entry types: {@link strawbed.event.Event} (what happened, in the past tense), {@link strawbed.event.RecordedEvent}
 * (the fact with its envelope: when, whose, how it was said). Everything here is immutable and safe for any thread.
 * Nothing here decides whether a fact is plausible or what follows from it.
 */
@NullMarked
package strawbed.event;

import org.jspecify.annotations.NullMarked;
