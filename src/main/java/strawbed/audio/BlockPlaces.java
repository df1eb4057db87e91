package strawbed.audio;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * Where the blocks of a microphone stand on one scale from an origin, over losses and a card's clock that is slow. A
 * card's clock counts while blocks follow each other; the computer's clock says where a row of blocks begins. Owned by one
 * thread.
 */
final class BlockPlaces {
    /** So late are times of events before anybody minds, and no way of handing over blocks makes them later. */
    private static final long MOST_LAG = Sound.RATE * 3 / 10;

    /** A computer that was held up catches up within that. */
    private static final long LAG_NANOS = Duration.ofSeconds(1).toNanos();

    private final Clock clock;
    private final Instant origin;

    /** What is added to a block's own place. */
    private long shift;

    /** The end of the last block. */
    private long end;

    private boolean anew = true;
    private boolean lagging;
    private boolean lagged;
    private long laggingSince;

    BlockPlaces(Clock clock, Instant origin) {
        this.clock = clock;
        this.origin = origin;
    }

    /** The next block comes from a line that was opened anew: the clock says where it stands. */
    void beginAnew() {
        anew = true;
        lagging = false;
        lagged = false;
    }

    /**
     * The block at its place.
     *
     * @param waiting how many samples came after it and wait
     * @param now the nanoseconds of a clock that nobody sets
     * @param mayJump whether blocks that lag may go on after a hole
     */
    Sound place(Sound block, long waiting, long now, boolean mayJump) {
        if (anew || (lagged && mayJump)) {
            long start = Math.max(end, present() - waiting - block.length());
            shift = start - block.startSample();
            beginAnew();
            anew = false;
        }
        long start = block.startSample() + shift;
        end = start + block.length();
        // What waited says nothing: it was the reader who was late.
        if (waiting == 0) {
            look(now);
        }
        return block.at(start);
    }

    private void look(long now) {
        boolean late = present() - end > MOST_LAG;
        if (late && !lagging) {
            laggingSince = now;
        }
        lagging = late;
        lagged = late && now - laggingSince >= LAG_NANOS;
    }

    /** The sample that is spoken now; none lies before the origin. */
    private long present() {
        Duration since = Duration.between(origin, clock.instant());
        return Math.max(0, since.getSeconds() * Sound.RATE + since.getNano() / (1_000_000_000L / Sound.RATE));
    }
}
