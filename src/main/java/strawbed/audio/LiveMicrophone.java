package strawbed.audio;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A microphone that may be missing, go away and come back while somebody listens. It is opened on threads of its own, once
 * in two seconds for as long as it takes. {@code poll}, {@code changed} and {@code close} belong to one thread, which
 * never waits longer than it asked for; all other methods are safe for any.
 *
 * <pre>
 * try (LiveMicrophone microphone = LiveMicrophone.open(null, clock, clock.instant())) {
 *     while (goesOn) {
 *         microphone.poll(Duration.ofMillis(50), !endpointer.isSpeaking()).ifPresent(this::hear);
 *         microphone.changed().ifPresent(state -&gt; show(state, microphone.sentence()));
 *     }
 * }
 * </pre>
 */
public final class LiveMicrophone implements AutoCloseable {
    private static final long RETRY_NANOS = TimeUnit.SECONDS.toNanos(2);

    /** A line that gave sound and then nothing for this long is gone, though it says that it is open. */
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(1);

    /** Devices that slept were seen to give their first sound after up to two seconds. */
    private static final long FIRST_PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(3);

    /** After a pause of the whole program, such as a computer that slept, the capture thread needs a moment as well. */
    private static final Duration GRACE = Duration.ofMillis(100);

    private static final long SILENT_SAMPLES = 3L * Sound.RATE;

    /**
     * The part of the last second at full scale from which on it is too loud: half of what spoils an utterance, as of a
     * second within a sentence at least half is speech.
     */
    static final double MOST_CLIPPED = SoundCondition.MOST_CLIPPED / 2;

    private static final double FLOOR_DECIBEL = -100;

    private final Supplier<MicrophoneSource> opener;
    private final String name;
    private final LongSupplier nanoseconds;
    private final Executor threads;
    private final BlockPlaces places;

    private final int[] clippedOfBlocks = new int[Sound.RATE / AudioSource.BLOCK];
    private int blocks;
    private long zeros;
    private boolean heard;
    private long lastSound;
    private long nextTry;
    private @Nullable FutureTask<MicrophoneSource> opening;
    private @Nullable MicrophoneState told;

    private volatile Condition condition;
    private volatile boolean clips;
    private volatile @Nullable MicrophoneSource source;

    private final Object counts = new Object();
    private long droppedBefore;
    private long overrunsBefore;
    private long losses;

    /** State and sentence change together. */
    private record Condition(MicrophoneState state, String sentence) {}

    /**
     * For tests.
     *
     * @param opener opens the microphone and may take its time, or throws a {@link MicrophoneException}
     * @param nanoseconds time that nobody can set, from any start
     * @param threads run the opener
     */
    LiveMicrophone(
            Supplier<MicrophoneSource> opener,
            String name,
            Clock clock,
            Instant origin,
            LongSupplier nanoseconds,
            Executor threads) {
        this.opener = opener;
        this.name = name;
        this.nanoseconds = nanoseconds;
        this.threads = threads;
        this.places = new BlockPlaces(clock, origin);
        this.condition = new Condition(
                MicrophoneState.OPENING, "The microphone (" + name + ") is being opened; use the buttons until then.");
        this.nextTry = nanoseconds.getAsLong();
        this.opening = startOpening();
    }

    /**
     * Begins to open a microphone, and returns at once.
     *
     * @param mixerName one of {@link MicrophoneSource#names}, or null for the one that the system prefers
     * @param origin the instant of sample 0
     */
    public static LiveMicrophone open(@Nullable String mixerName, Clock clock, Instant origin) {
        return new LiveMicrophone(
                () -> MicrophoneSource.open(mixerName),
                MicrophoneSource.described(mixerName),
                clock,
                origin,
                System::nanoTime,
                task -> SoundDevices.start("microphone opening", task));
    }

    /**
     * The next block, at its place since the origin. After a loss the places go on where the clock is, so that a hole
     * shows. A card whose clock is slow, or a computer that slept, makes blocks lag behind the clock; where they lag more
     * than 0.3 s for a second they go on after a hole, too, once that is allowed.
     *
     * @param wait how long to wait at most
     * @param mayJump whether such a hole may come before this block; false within a sentence
     * @return empty when there is none yet, or the microphone is not there; {@link #state} knows
     */
    public Optional<Sound> poll(Duration wait, boolean mayJump) {
        MicrophoneSource from = source;
        if (from != null) {
            return listen(from, wait, mayJump);
        }
        awaitOpening(wait);
        return Optional.empty();
    }

    private FutureTask<MicrophoneSource> startOpening() {
        nextTry = nanoseconds.getAsLong() + RETRY_NANOS;
        FutureTask<MicrophoneSource> task = new FutureTask<>(opener::get);
        threads.execute(task);
        return task;
    }

    private void awaitOpening(Duration wait) {
        try {
            if (opening == null) {
                long left = nextTry - nanoseconds.getAsLong();
                if (left > 0) {
                    TimeUnit.NANOSECONDS.sleep(Math.min(left, wait.toNanos()));
                    return;
                }
                opening = startOpening();
            }
            MicrophoneSource opened = opening.get(wait.toNanos(), TimeUnit.NANOSECONDS);
            opening = null;
            begin(opened);
        } catch (TimeoutException e) {
            // It is still being opened, and the caller has other work.
            return;
        } catch (ExecutionException e) {
            opening = null;
            if (!(e.getCause() instanceof MicrophoneException failure)) {
                throw new IllegalStateException("Opening a microphone failed in an unforeseen way", e);
            }
            notOpened(failure);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void begin(MicrophoneSource opened) {
        Optional<String> warning = opened.warning();
        if (warning.isPresent()) {
            opened.close();
            condition = new Condition(MicrophoneState.WRONG_FORMAT, warning.get());
            return;
        }
        heard = false;
        zeros = 0;
        lastSound = nanoseconds.getAsLong();
        places.beginAnew();
        source = opened;
    }

    /** Once it was there it stays "gone" until it is back, but the sentence follows what is wrong now. */
    private void notOpened(MicrophoneException failure) {
        MicrophoneState state =
                condition.state() == MicrophoneState.GONE ? MicrophoneState.GONE : MicrophoneState.of(failure.reason());
        condition = new Condition(state, failure.getMessage());
    }

    private Optional<Sound> listen(MicrophoneSource from, Duration wait, boolean mayJump) {
        long left = lastSound + (heard ? PATIENCE_NANOS : FIRST_PATIENCE_NANOS) - nanoseconds.getAsLong();
        Optional<Sound> next = from.poll(Duration.ofNanos(Math.max(0, Math.min(wait.toNanos(), left))));
        if (next.isEmpty() && left <= 0) {
            next = from.poll(GRACE);
            if (next.isEmpty()) {
                lose(from);
            }
        } else if (next.isEmpty() && from.isEnded()) {
            lose(from);
        }
        return next.map(block -> take(block, from.waiting(), mayJump));
    }

    private Sound take(Sound block, long waiting, boolean mayJump) {
        heard = true;
        lastSound = nanoseconds.getAsLong();
        boolean still = Arrays.equals(block.copySamples(), new short[block.length()]);
        zeros = still ? zeros + block.length() : 0;
        clippedOfBlocks[blocks++ % clippedOfBlocks.length] = SoundMeasure.atFullScale(block);
        boolean tooLoud = Arrays.stream(clippedOfBlocks).sum() > MOST_CLIPPED * Sound.RATE;
        MicrophoneState state = zeros >= SILENT_SAMPLES ? MicrophoneState.SILENT : MicrophoneState.LISTENING;
        if (condition.state() != state || clips != tooLoud) {
            clips = tooLoud;
            condition = new Condition(state, sentence(state, tooLoud));
        }
        return places.place(block, waiting, lastSound, mayJump);
    }

    private String sentence(MicrophoneState state, boolean tooLoud) {
        if (state == MicrophoneState.SILENT) {
            return "The microphone (" + name + ") gives silence only; switch it on, or choose another one.";
        }
        return tooLoud
                ? "The microphone (" + name + ") is driven too hard; hold it further away, or turn its level down."
                : "The microphone (" + name + ") listens.";
    }

    private void lose(MicrophoneSource from) {
        Arrays.fill(clippedOfBlocks, 0);
        clips = false;
        condition = new Condition(MicrophoneState.GONE, from.gone().getMessage());
        letGo(from, heard ? 1 : 0);
    }

    private void letGo(MicrophoneSource from, int lost) {
        synchronized (counts) {
            source = null;
            droppedBefore += from.dropped();
            overrunsBefore += from.overruns();
            losses += lost;
        }
        from.close();
    }

    /** How it fares now. */
    public MicrophoneState state() {
        return condition.state();
    }

    /** What is wrong and what to do, or that all is well, in one sentence. */
    public String sentence() {
        return condition.sentence();
    }

    /** The state, if it is another one than this method last gave; the first call gives it in any case. */
    public Optional<MicrophoneState> changed() {
        MicrophoneState now = state();
        if (now == told) {
            return Optional.empty();
        }
        told = now;
        return Optional.of(now);
    }

    /** Whether the last second was driven into full scale so much that words suffer. */
    public boolean clips() {
        return clips;
    }

    /** The level of the newest block in dB of full scale, from -100 to 0; -100 while there is none. */
    public double level() {
        MicrophoneSource from = source;
        return from == null ? FLOOR_DECIBEL : from.level();
    }

    /** How many blocks of 20 ms were lost because nobody polled them in time. */
    public long dropped() {
        synchronized (counts) {
            return droppedBefore + (source == null ? 0 : source.dropped());
        }
    }

    /** How often a device's own buffer was full, so that sound may have been lost in it. */
    public long overruns() {
        synchronized (counts) {
            return overrunsBefore + (source == null ? 0 : source.overruns());
        }
    }

    /** How often a microphone that gave sound went away. */
    public long losses() {
        synchronized (counts) {
            return losses;
        }
    }

    /** Lets the device go, without waiting for it; what is being opened is closed when it is there. */
    @Override
    public void close() {
        if (source != null) {
            letGo(source, 0);
        }
        if (opening != null) {
            SoundDevices.closeWhenThere(opening);
            opening = null;
        }
    }
}
