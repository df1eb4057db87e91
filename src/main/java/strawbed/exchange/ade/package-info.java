/**
 * The record in the words of the ICAR Animal Data Exchange standard (ADE, JSON).
 *
 * <p>Entry type: {@link strawbed.exchange.ade.AdeExport}. A value that the standard requires and nobody recorded is
 * never made up, and no calf is called ill or healthy: what does not fit is listed with the reason. The same record
 * gives the same text. Everything that is handed out is immutable and safe for any thread; nothing here fails for what
 * stands in a record.
 */
@NullMarked
package strawbed.exchange.ade;

import org.jspecify.annotations.NullMarked;
