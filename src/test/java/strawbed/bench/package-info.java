/**
 * Measures how well the program hears: makes its own speech, runs {@code strawbed hear} on it and on recordings of real
 * people, and writes a table. Entry: {@link strawbed.bench.Bench}. A voice or recording that is not here is left out by
 * name. One thread.
 */
@NullMarked
package strawbed.bench;

import org.jspecify.annotations.NullMarked;
