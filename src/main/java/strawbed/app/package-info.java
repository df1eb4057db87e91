/**
 * The program: settings, wiring and commands. The only room that knows all others, and the only one that reads the
 * system's clock, zone, streams and environment.
 *
 * <p>Entry type: {@link strawbed.app.Main}. Every failure ends here as one plain sentence on the error stream and an
 * exit code: 0 done, 1 failed, 2 bad input.
 */
@NullMarked
package strawbed.app;

import org.jspecify.annotations.NullMarked;
