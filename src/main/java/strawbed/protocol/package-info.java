/**
 * The farm's protocol: what it does for its calves and when, as agreed with the herd veterinarian.
 *
 * <p>Entry types: {@link strawbed.protocol.Protocol}, what one protocol says, and {@link strawbed.protocol.Protocols},
 * which was in force when. {@link strawbed.protocol.Setting} lists all that can be set, each with its unit in its name,
 * its usual value, its plausible range, its reason and its source. Everything is immutable and safe for any thread. A
 * value that cannot be is not refused with an exception: {@link strawbed.protocol.Protocol#faults} tells of it.
 */
@NullMarked
package strawbed.protocol;

import org.jspecify.annotations.NullMarked;
