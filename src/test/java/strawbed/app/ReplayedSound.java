package strawbed.app;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioSource;
import strawbed.audio.MicrophoneState;
import strawbed.audio.Sound;

/** A microphone that gives what was put in, then silence; the clock goes on with each block. Owned by one thread. */
final class ReplayedSound implements SoundIn {
    private static final Duration BLOCK = Duration.ofMillis(20);

    private final SteppedClock clock;
    private final Deque<short[]> blocks = new ArrayDeque<>();
    private MicrophoneState state = MicrophoneState.LISTENING;
    private @Nullable MicrophoneState told;
    private long position;
    private double level;

    ReplayedSound(SteppedClock clock) {
        this.clock = clock;
    }

    /** Puts a sound behind what is there, whole blocks of it. */
    void add(Sound sound) {
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            blocks.add(sound.slice(at, at + AudioSource.BLOCK).copySamples());
        }
    }

    boolean isEmpty() {
        return blocks.isEmpty();
    }

    /** It goes away, or comes back. */
    void becomes(MicrophoneState other) {
        state = other;
    }

    /** Somebody else asks for its state from now on. */
    void isOpenedAnew() {
        told = null;
    }

    @Override
    public Optional<Sound> poll(Duration wait, boolean mayJump) {
        clock.goOn(BLOCK);
        if (state != MicrophoneState.LISTENING) {
            position += AudioSource.BLOCK;
            return Optional.empty();
        }
        Sound block = Sound.of(blocks.isEmpty() ? new short[AudioSource.BLOCK] : blocks.removeFirst(), position);
        position += block.length();
        level = 20 * Math.log10(Math.max(1, block.rms()) / -(double) Short.MIN_VALUE);
        return Optional.of(block);
    }

    @Override
    public Optional<MicrophoneState> changed() {
        boolean isNew = told != state;
        told = state;
        return isNew ? Optional.of(state) : Optional.empty();
    }

    @Override
    public String sentence() {
        return "Plug it in.";
    }

    @Override
    public boolean clips() {
        return false;
    }

    @Override
    public double level() {
        return level;
    }

    @Override
    public Losses losses() {
        return new Losses(0, 0, 0);
    }

    @Override
    public void close() {}
}
