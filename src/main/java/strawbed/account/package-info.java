/**
 * All that is known, judged and assumed of one calf, in words: who it is, what happened, whether it got enough, what is
 * due and what to mind.
 *
 * <p>Entry type: {@link strawbed.account.CalfAccount}. Screen, command and paper show the same account. It reads no
 * clock: the same record at the same time gives the same account. What is not on record is said to be "not recorded",
 * what is not judged says why. Immutable, safe for any thread.
 */
@NullMarked
package strawbed.account;

import org.jspecify.annotations.NullMarked;
