/**
 * What one shift hands over to the next: the record of a shift, put into the words of a sheet.
 *
 * <p>Entry type: {@link strawbed.handover.HandoverContents}. It draws nothing and reads no clock: the same record and
 * shift give the same sheet. What is not on record is said to be "not recorded", and a section with nothing in it says
 * "none". Nothing goes wrong here but a program without its texts, which ends in a
 * {@link java.util.MissingResourceException}. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.handover;

import org.jspecify.annotations.NullMarked;
