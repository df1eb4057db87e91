/**
 * The record to and from other programs: JSON Lines without loss, CSV for spreadsheets.
 *
 * <p>Entry types: {@link strawbed.exchange.RecordWriter}, {@link strawbed.exchange.RecordReader}, {@link
 * strawbed.exchange.EventSheet}, {@link strawbed.exchange.CalfSheet}, {@link strawbed.exchange.CalfList}. What is wrong
 * in a file is told as {@link strawbed.exchange.Fault}s with their lines; a file that cannot be read or written at all
 * is an {@link strawbed.exchange.ExchangeException}. Nothing here writes to a record. All classes keep nothing between
 * calls, so any thread may use them.
 */
@NullMarked
package strawbed.exchange;

import org.jspecify.annotations.NullMarked;
