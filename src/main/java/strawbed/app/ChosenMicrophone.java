package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import strawbed.audio.LiveMicrophone;
import strawbed.audio.MicrophoneState;
import strawbed.audio.Sound;

/** The microphone that people chose, and what was lost with all that were chosen. Owned by one thread. */
final class ChosenMicrophone implements SoundIn {
    private final Clock clock;
    private final Instant origin;
    private Optional<String> name;
    private LiveMicrophone microphone;
    private Losses before = new Losses(0, 0, 0);

    /** @param origin the instant of the first sample */
    ChosenMicrophone(Optional<String> name, Clock clock, Instant origin) {
        this.clock = clock;
        this.origin = origin;
        this.name = name;
        this.microphone = open();
    }

    private LiveMicrophone open() {
        return LiveMicrophone.open(name.orElse(null), clock, origin);
    }

    /** Goes on with another one, if it is another one. */
    void choose(Optional<String> other) {
        if (!other.equals(name)) {
            before = losses();
            microphone.close();
            name = other;
            microphone = open();
        }
    }

    @Override
    public Optional<Sound> poll(Duration wait, boolean mayJump) {
        return microphone.poll(wait, mayJump);
    }

    @Override
    public Optional<MicrophoneState> changed() {
        return microphone.changed();
    }

    @Override
    public String sentence() {
        return microphone.sentence();
    }

    @Override
    public boolean clips() {
        return microphone.clips();
    }

    @Override
    public double level() {
        return microphone.level();
    }

    @Override
    public Losses losses() {
        return new Losses(
                before.dropped() + microphone.dropped(),
                before.overruns() + microphone.overruns(),
                before.gone() + microphone.losses());
    }

    @Override
    public void close() {
        microphone.close();
    }
}
