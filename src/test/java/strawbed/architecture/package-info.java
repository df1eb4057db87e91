/** The doors between the rooms, held by tests. */
@NullMarked
package strawbed.architecture;

import org.jspecify.annotations.NullMarked;
