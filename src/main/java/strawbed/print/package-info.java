/**
 * Pages to printers: which printers there are, handing a PDF over at its true size, and a queue of files that outlives
 * the program.
 *
 * <p>Entry types: {@link strawbed.print.PrintQueue} keeps what is to be printed, {@link strawbed.print.Porter} carries it
 * to {@link strawbed.print.Printers}. That a page was handed over is all that can be known: a print system tells nobody
 * when, or whether, ink met paper. So nothing here says "printed". A page may be handed over twice, when the program
 * ends between handing over and noting it; none is lost.
 */
@NullMarked
package strawbed.print;

import org.jspecify.annotations.NullMarked;
