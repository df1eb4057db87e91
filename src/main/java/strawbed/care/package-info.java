/**
 * What a calf's record asks for: what is due and when, which cautions hold, how its first feed stands, which figures
 * are out of the ordinary, what became of it, and how the herd does.
 *
 * <p>Entry types: {@link strawbed.care.DueList}, {@link strawbed.care.Caution}, {@link strawbed.care.FirstDose},
 * {@link strawbed.care.Plausibility}; {@link strawbed.care.PassiveImmunity}, {@link strawbed.care.BirthOutcome},
 * {@link strawbed.care.Vigour}; {@link strawbed.care.HerdImmunity}, {@link strawbed.care.HerdFigures}. Time comes in as an argument; there is no clock, no zone and no file here, and
 * nothing fails: what is not known yields nothing, or a {@link strawbed.care.Judged} that says why. Everything is immutable and safe for any thread. Nothing here
 * replaces the herd veterinarian's protocol, and the words people read or hear are made elsewhere.
 */
@NullMarked
package strawbed.care;

import org.jspecify.annotations.NullMarked;
