/**
 * Quantities with their units: the amount as spoken is the record, everything else is derived with exact factors.
 *
 * <p>Entry types: {@link strawbed.measure.Volume}, {@link strawbed.measure.Mass}, {@link
 * strawbed.measure.Temperature}. All are immutable and safe for any thread. Constructors refuse what cannot be a
 * quantity with an {@link java.lang.IllegalArgumentException} that names the value; whether a quantity is plausible is
 * asked elsewhere.
 */
@NullMarked
package strawbed.measure;

import org.jspecify.annotations.NullMarked;
