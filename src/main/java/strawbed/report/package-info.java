/**
 * What stands on paper, a calf's hutch card or a shift's handover sheet: finished words, times and marks, without any
 * thought of paper.
 *
 * <p>Entry types: {@link strawbed.report.CalfCard} and {@link strawbed.report.HandoverSheet}. Everything in it was worked out and put into words elsewhere; this
 * room only keeps it together. All types are immutable and safe for any thread. Constructors refuse what cannot be
 * printed with an {@link java.lang.IllegalArgumentException} or a {@link java.lang.NullPointerException}; a blank where
 * a reader would expect a word becomes "not recorded", because on paper a blank looks like a "no".
 */
@NullMarked
package strawbed.report;

import org.jspecify.annotations.NullMarked;
