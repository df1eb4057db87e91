/** What the station shows and what its keys do, without a window. */
@NullMarked
package strawbed.station;

import org.jspecify.annotations.NullMarked;
