/**
 * From a parse tree to typed meaning: whose calf, which facts, when.
 *
 * <p>Entry type: {@link strawbed.statement.UtteranceInterpreter}. What people say is data, so nothing here throws for
 * it: the outcome is an {@link strawbed.statement.Interpretation}. An {@link java.lang.IllegalStateException} means
 * that a rule of the grammar carries a tag that this room does not know; {@link strawbed.statement.StatementReader}
 * lists the rules it reads, and start-up checks them. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.statement;

import org.jspecify.annotations.NullMarked;
