/**
 * The read-back voice: text to sound, offline.
 *
 * <p>Entry type: {@link strawbed.voice.Voice}. What may go wrong: {@link strawbed.voice.VoiceException} with the
 * remedy. A voice is owned by one thread.
 */
@NullMarked
package strawbed.voice;

import org.jspecify.annotations.NullMarked;
