/**
 * The hutch card as a PDF page: black vector shapes and two embedded fonts on one small sheet.
 *
 * <p>Entry type: {@link strawbed.report.pdf.PdfCardWriter}. A card is made in three steps that know nothing of each
 * other: the words come finished in a {@link strawbed.report.CalfCard}, {@code CardLayout} places them as boxes in
 * millimetres, {@code CardPage} draws the boxes. A name never stops a card: a letter the fonts lack becomes its base
 * letter or "?", words too long shrink, wrap or end in "…". A broken installation (a missing font) ends in a {@link
 * strawbed.report.pdf.CardPdfException}. Everything may be used by any thread.
 */
@NullMarked
package strawbed.report.pdf;

import org.jspecify.annotations.NullMarked;
