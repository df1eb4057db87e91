package strawbed.app;

import java.util.Optional;
import strawbed.audio.Sound;

/** Says nothing, and so never keeps the station from listening. */
final class SilentMouth implements Mouth {
    @Override
    public void say(String text) {}

    @Override
    public void play(Sound sound) {}

    @Override
    public Optional<String> trouble() {
        return Optional.empty();
    }

    @Override
    public boolean isSpeaking() {
        return false;
    }

    @Override
    public void stop() {}
}
