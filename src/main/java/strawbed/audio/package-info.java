/**
 * Sound: samples from the microphone or a WAV file, cut into utterances, and sound out through the speaker.
 *
 * <p>Entry types: {@link strawbed.audio.WavSource}, {@link strawbed.audio.MicrophoneSource} and, for whoever must neither
 * wait nor fail, {@link strawbed.audio.LiveMicrophone} give {@link strawbed.audio.Sound} block by block, {@link
 * strawbed.audio.Endpointer} cuts it, {@link strawbed.audio.SoundCondition} judges an utterance. {@link
 * strawbed.audio.SpeakerSink} plays sound, such as a {@link strawbed.audio.Cue}. Inside this room and behind it all sound is
 * 16,000 samples a second, 16 bit, mono. What may go wrong: {@link strawbed.audio.AudioException} (a file), {@link
 * strawbed.audio.MicrophoneException} and {@link strawbed.audio.SpeakerException} (a device), each one sentence with the
 * remedy. {@code Sound} is immutable; every other type is owned by one thread unless it says otherwise.
 */
@NullMarked
package strawbed.audio;

import org.jspecify.annotations.NullMarked;
