package strawbed.audio;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a stream of sound into utterances by its level against the noise around it. Owned by one thread.
 *
 * <pre>
 * Endpointer endpointer = new Endpointer();
 * for (Optional&lt;Sound&gt; block = source.read(); block.isPresent(); block = source.read()) {
 *     endpointer.accept(block.get()).ifPresent(this::recognise);
 * }
 * endpointer.finish().ifPresent(this::recognise);
 * </pre>
 */
public final class Endpointer {
    private static final int FRAME = AudioSource.BLOCK;

    /** 60 ms: shorter than any syllable, longer than most knocks. */
    private static final int FRAMES_TO_START = 3;

    /** 0.32 s of quiet end an utterance: gaps between the words of one are shorter, and people wait for the answer. */
    private static final int FRAMES_TO_END = 16;

    /** 100 ms of speech at least, or it was a click; the shortest spoken digits at hand have 140 ms. */
    private static final int FRAMES_OF_SPEECH = 5;

    /** Kept before the first loud frame (0.3 s), for soft first sounds such as f and h, and after the last (0.26 s). */
    private static final int FRAMES_BEFORE = 15;

    private static final int FRAMES_AFTER = 13;

    /** 15 s: nobody says an entry that long, so this is noise or chatter, and it is kept for whoever listens later. */
    private static final int LONGEST_FRAMES = 15 * 50;

    /** A hole in the sound longer than this ends whatever went on; only this much of it is filled with silence. */
    private static final int LONGEST_HOLE = Sound.RATE;

    private static final int LONGEST_BLOCK = Sound.RATE / 4;

    private final LevelGate gate = new LevelGate();
    private final List<Double> levels = new ArrayList<>();
    private final short[] kept = new short[(LONGEST_FRAMES + FRAMES_BEFORE + FRAMES_TO_START) * FRAME + LONGEST_BLOCK];

    /** Samples kept; the first {@code judged} of them have been through the gate. */
    private int held;

    private int judged;
    private long keptStart = -1;

    private boolean speaking;
    private int loudRun;
    private int quietRun;

    /**
     * Takes the next block of the source. A hole before it counts as silence.
     *
     * @param block at most a quarter of a second, not before the end of the last one
     * @return an utterance that has ended, with 0.3 s before it and 0.26 s after it as far as there is sound
     */
    public Optional<Sound> accept(Sound block) {
        if (block.length() > LONGEST_BLOCK) {
            throw new IllegalArgumentException("A block of " + block.duration() + " is longer than a quarter second");
        }
        if (keptStart < 0) {
            keptStart = block.startSample();
        }
        long hole = block.startSample() - (keptStart + held);
        if (hole < 0) {
            throw new IllegalArgumentException("A block at sample " + block.startSample()
                    + " comes before the end of the last one at " + (keptStart + held));
        }
        Optional<Sound> ended = Optional.empty();
        for (long filled = 0; filled < Math.min(hole, LONGEST_HOLE); filled += FRAME) {
            ended = or(ended, append(new short[(int) Math.min(FRAME, hole - filled)]));
        }
        if (hole > LONGEST_HOLE) {
            held = 0;
            judged = 0;
            keptStart = block.startSample();
        }
        return or(ended, append(block.copySamples()));
    }

    /** Takes the end of the source and gives the utterance that was going on. */
    public Optional<Sound> finish() {
        Optional<Sound> last = speaking ? close(held) : Optional.empty();
        held = 0;
        judged = 0;
        keptStart = -1;
        return last;
    }

    /** Ends the utterance that goes on, as whoever listens knows that it is over, and gives it. */
    public Optional<Sound> end() {
        return speaking ? close(judged) : Optional.empty();
    }

    /** Whether speech is going on, for a level meter; also true for noise in the first second, until that is known. */
    public boolean isSpeaking() {
        return speaking;
    }

    /**
     * The sound of the utterance that goes on, from a sample of the source on, or from its beginning if that is later.
     *
     * @throws IllegalStateException when nobody speaks
     */
    public Sound since(long sample) {
        if (!speaking) {
            throw new IllegalStateException("No utterance goes on");
        }
        int from = (int) Math.max(0, sample - keptStart);
        return Sound.of(Arrays.copyOfRange(kept, from, Math.max(from, held)), keptStart + from);
    }

    /** Two never end at once: that takes a longer block than is let in. */
    private static Optional<Sound> or(Optional<Sound> first, Optional<Sound> second) {
        return first.isPresent() ? first : second;
    }

    private Optional<Sound> append(short[] samples) {
        System.arraycopy(samples, 0, kept, held, samples.length);
        held += samples.length;
        Optional<Sound> ended = Optional.empty();
        while (held - judged >= FRAME) {
            ended = or(ended, judge());
        }
        return ended;
    }

    private Optional<Sound> judge() {
        double level = gate.level(kept, judged, judged + FRAME);
        judged += FRAME;
        levels.add(level);
        return speaking ? goOn(level) : waitForSpeech(level);
    }

    private Optional<Sound> waitForSpeech(double level) {
        if (!gate.isLoud(level)) {
            loudRun = 0;
            levels.clear();
        } else {
            loudRun++;
        }
        forget(judged - (FRAMES_BEFORE + FRAMES_TO_START) * FRAME);
        if (loudRun == FRAMES_TO_START) {
            speaking = true;
            quietRun = 0;
        }
        return Optional.empty();
    }

    private Optional<Sound> goOn(double level) {
        quietRun = gate.isAudible(level) ? 0 : quietRun + 1;
        if (quietRun == FRAMES_TO_END) {
            return close(judged - (FRAMES_TO_END - FRAMES_AFTER) * FRAME);
        }
        return judged >= LONGEST_FRAMES * FRAME ? close(judged) : Optional.empty();
    }

    /** Ends the utterance; what was taken for speech before the noise was known is judged again. */
    private Optional<Sound> close(int to) {
        Sound utterance = Sound.of(Arrays.copyOf(kept, to), keptStart);
        long speech = levels.stream().filter(gate::isLoud).count();
        speaking = false;
        loudRun = 0;
        levels.clear();
        forget(to);
        return speech >= FRAMES_OF_SPEECH ? Optional.of(utterance) : Optional.empty();
    }

    private void forget(int count) {
        if (count > 0) {
            System.arraycopy(kept, count, kept, 0, held - count);
            held -= count;
            judged = Math.max(0, judged - count);
            keptStart += count;
        }
    }
}
