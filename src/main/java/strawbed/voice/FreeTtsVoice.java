package strawbed.voice;

import com.sun.speech.freetts.en.us.cmu_us_kal.KevinVoiceDirectory;
import java.util.Arrays;
import strawbed.audio.Sound;

/** The FreeTTS voice "kevin16": English, pure Java, 16,000 samples a second. Owned by one thread. */
public final class FreeTtsVoice implements Voice {
    private static final String NAME = "kevin16";

    private final com.sun.speech.freetts.Voice voice;
    private final SampleCollector collector = new SampleCollector();

    /**
     * Loads the voice (about 0.2 s).
     *
     * @throws VoiceException when its data are not on the class path
     */
    public FreeTtsVoice() {
        voice = allocated();
        // Its sound is taken on the calling thread, so the voice's own output thread may end.
        voice.getOutputQueue().close();
        voice.setOutputQueue(null);
        voice.setAudioPlayer(collector);
    }

    private static com.sun.speech.freetts.Voice allocated() {
        try {
            // Asked directly and not by VoiceManager, which wants a system property for the whole program.
            com.sun.speech.freetts.Voice found = Arrays.stream(new KevinVoiceDirectory().getVoices())
                    .filter(candidate -> candidate.getName().equals(NAME))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("it is not among those that come with FreeTTS"));
            found.allocate();
            return found;
        } catch (RuntimeException | Error e) {
            // FreeTTS tells of missing data by a bare Error.
            throw new VoiceException("The voice " + NAME + " does not load; install the program again.", e);
        }
    }

    @Override
    public Sound speak(String text) {
        collector.clear();
        if (!text.isBlank() && !voice.speak(text)) {
            throw new VoiceException("The voice failed at \"" + text + "\"; read it on the screen.", null);
        }
        return Sound.of(collector.samples(), 0);
    }
}
