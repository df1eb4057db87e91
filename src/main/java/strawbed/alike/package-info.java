/**
 * Which words sound alike: how far two pronunciations are apart, what can stand in for a word that the speech model
 * lacks, and which alternatives of a grammar may be taken for each other.
 *
 * <p>Entry types: {@link strawbed.alike.StandIns} and {@link strawbed.alike.AlikeChoices}. Pronunciations are given to
 * the room as a function from a word to its phones, those of the CMU Pronouncing Dictionary in small letters.
 */
@NullMarked
package strawbed.alike;

import org.jspecify.annotations.NullMarked;
