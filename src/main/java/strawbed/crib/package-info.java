/**
 * What the sheet in the pen says: the examples that stand in the grammar's documentation comments, each of them tried.
 *
 * <p>Entry type: {@link strawbed.crib.CribContents}. Words that the grammar does not match, or that the program would
 * not take for the fact beside which they stand, are never on the sheet: they end in a {@link
 * strawbed.crib.CribException} that names their places. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.crib;

import org.jspecify.annotations.NullMarked;
