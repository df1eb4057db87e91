/**
 * What a calf's hutch card says: its record, put into the words of the card.
 *
 * <p>Entry type: {@link strawbed.card.CardContents}. It draws nothing and reads no clock: the same record at the same
 * time gives the same card. What is not on record is said to be "not recorded". Nothing goes wrong here but a program
 * without its texts, which ends in a {@link java.util.MissingResourceException}. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.card;

import org.jspecify.annotations.NullMarked;
