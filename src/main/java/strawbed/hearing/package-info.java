/**
 * From sound to meaning: ends utterances, has them recognised, joins the parts of a statement.
 *
 * <p>Entry types: {@link strawbed.hearing.FarmGrammar} (what can be said on this farm now) and {@link
 * strawbed.hearing.Hearing}. What people say never throws; a grammar with a mistake, a word that the model lacks or a
 * broken model do, before listening begins. A {@code Hearing} is owned by one thread, the rest is immutable.
 */
@NullMarked
package strawbed.hearing;

import org.jspecify.annotations.NullMarked;
