/**
 * The record as a SQLite file, and the only room that speaks SQL.
 *
 * <p>Entry type: {@link strawbed.journal.sqlite.SqliteEventJournal}. One program writes at a time, any number may read.
 * Every failure of SQLite, of the file or of its schema becomes a {@link strawbed.journal.JournalException} here, with
 * the cause kept. Safe for any thread; calls wait for each other.
 */
@NullMarked
package strawbed.journal.sqlite;

import org.jspecify.annotations.NullMarked;
