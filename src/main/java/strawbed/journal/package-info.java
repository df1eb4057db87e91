/**
 * What the record can do and how a fact is written down, whatever keeps it.
 *
 * <p>Entry types: {@link strawbed.journal.EventJournal} (append, read back, statements that wait for an answer) and
 * {@link strawbed.journal.EventCodec} (a fact as JSON and back). What may go wrong is a {@link
 * strawbed.journal.JournalException} with a reason. The records and the codec are safe for any thread.
 */
@NullMarked
package strawbed.journal;

import org.jspecify.annotations.NullMarked;
