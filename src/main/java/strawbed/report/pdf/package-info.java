/**
 * Paper as a PDF file: black vector shapes and two embedded fonts; the hutch card on one small sheet, the handover sheet
 * on as many pages as it needs.
 *
 * <p>Entry types: {@link strawbed.report.pdf.PdfCardWriter} and {@link strawbed.report.pdf.PdfHandoverWriter}. Both are
 * made in three steps that know nothing of each other: the words come finished in a {@link strawbed.report.CalfCard} or
 * a {@link strawbed.report.HandoverSheet}, {@code CardLayout} or {@code SheetLayout} places them as boxes in millimetres,
 * {@code PdfFile} and {@code Page} draw the boxes. On the sheet nothing is shortened but its running head. A name never
 * stops a card: a letter the fonts lack becomes its base
 * letter or "?", words too long shrink, wrap or end in "…". A broken installation (a missing font) ends in a {@link
 * strawbed.report.pdf.CardPdfException}. Everything may be used by any thread.
 */
@NullMarked
package strawbed.report.pdf;

import org.jspecify.annotations.NullMarked;
