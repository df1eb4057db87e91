/**
 * What is known of each calf, folded from the record's events and from nothing else.
 *
 * <p>Entry type: {@link strawbed.calf.Herd}, which gives {@link strawbed.calf.CalfRecord}s. Folding never fails: an
 * event that fits nothing stays in the calf's history and changes nothing. Everything here is immutable and safe for
 * any thread. What should be done for a calf is decided elsewhere.
 */
@NullMarked
package strawbed.calf;

import org.jspecify.annotations.NullMarked;
