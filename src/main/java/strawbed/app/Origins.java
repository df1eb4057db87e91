package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.dialog.DialogStep;
import strawbed.dialog.Prompt;
import strawbed.event.Provenance;
import strawbed.hearing.Heard;
import strawbed.journal.NewOpenStatement;

/**
 * Where statements come from: the sound of what was spoken, or what was pressed. It keeps each sound, and leaves what
 * nobody confirmed among the open statements. Owned by one thread.
 */
final class Origins {
    private final SoundFolder sounds;
    private final LeftOpen left;
    private @Nullable Kept current;
    private @Nullable Kept waiting;
    private @Nullable NotSpoken notSpoken;

    /**
     * An utterance with its place in the sound folder.
     *
     * @param name of its file
     * @param isWritten whether the file could be written
     * @param open the open statement it is, if it is one
     */
    private record Kept(Heard heard, String name, boolean isWritten, LeftOpen.@Nullable Slip open) {
        /** Its file, if it has one. */
        @Nullable
        String sound() {
            return isWritten ? name : null;
        }
    }

    /**
     * How the pending statement came, where it was not spoken just now.
     *
     * @param at what its times are counted from
     * @param words it in words, should it be left
     * @param mends the open statement in whose place it comes
     */
    record NotSpoken(
            Instant at, List<String> words, @Nullable UUID mends) {}

    Origins(SoundFolder sounds, LeftOpen left) {
        this.sounds = sounds;
        this.left = left;
    }

    /**
     * Keeps the sound of an utterance.
     *
     * @param prompts take what a person must be told
     * @return the sound's file; null if it could not be written
     */
    @Nullable
    String keep(Heard heard, List<Prompt> prompts) {
        Kept before = heard.goesOn() ? current : null;
        if (before != null && before.open() != null) {
            left.settle(before.open(), "the speaker went on");
            tellUnlessKept(before.open(), prompts);
        }
        String name = before == null ? sounds.newName() : before.name();
        Kept kept;
        try {
            sounds.write(name, heard.sound());
            kept = new Kept(heard, name, true, null);
        } catch (AudioException failure) {
            prompts.add(new Prompt.NotKept(LeftOpen.sentence(failure)));
            kept = new Kept(heard, name, false, null);
        }
        current = kept;
        return kept.sound();
    }

    /** The statement that waits from now on is what was heard last. */
    void waits() {
        waiting = current;
        notSpoken = null;
    }

    /** The statement that waits from now on was not spoken just now. */
    void waits(NotSpoken origin) {
        notSpoken = origin;
    }

    /** Nothing waits any more. */
    void isAnswered() {
        notSpoken = null;
    }

    /** The open statement in whose place the one comes that waits. */
    Optional<UUID> mends() {
        return Optional.ofNullable(notSpoken).map(NotSpoken::mends);
    }

    /**
     * Leaves what nobody confirmed open: what was spoken with its sound, what was pressed in words.
     *
     * @param prompts take what a person must be told
     */
    void leave(DialogStep.Kept one, List<Prompt> prompts) {
        NotSpoken origin = notSpoken;
        if (origin == null || one.why().equals("not understood")) {
            tellUnlessKept(leaveSpoken(one), prompts);
        } else if (origin.mends() == null && !one.why().equals("cancelled")) {
            tellUnlessKept(leavePressed(origin), prompts);
        }
        // Else what it mends is still open; or it was pressed by mistake, and is nobody's.
    }

    private LeftOpen.Slip leavePressed(NotSpoken origin) {
        return left.leave(
                new NewOpenStatement(
                        origin.at(), Duration.ZERO, "by hand", origin.words(), null, NewOpenStatement.NO_SOUND),
                null,
                null);
    }

    private LeftOpen.Slip leaveSpoken(DialogStep.Kept one) {
        Kept of = waiting != null && isOf(waiting, one.provenance()) ? waiting : current;
        if (of == null) {
            throw new AssertionError("a statement was left that nobody heard: " + one);
        }
        Heard heard = of.heard();
        LeftOpen.Slip slip = left.leave(
                new NewOpenStatement(
                        heard.speech().start(),
                        heard.sound().duration(),
                        heard.meaning().verdict(),
                        heard.meaning().words(),
                        null,
                        of.name()),
                of.isWritten() ? null : heard.sound(),
                one.why().equals("cancelled") ? one.why() : null);
        if (!one.why().equals("cancelled") && of.equals(current)) {
            current = new Kept(heard, of.name(), of.isWritten(), slip);
        }
        return slip;
    }

    /** By its sound; where that could not be written, by its words. */
    private static boolean isOf(Kept kept, Provenance provenance) {
        return Objects.equals(kept.sound(), provenance.sound())
                && (kept.isWritten() || kept.heard().meaning().words().equals(provenance.words()));
    }

    /** Nothing is called kept that is not. */
    private void tellUnlessKept(LeftOpen.Slip slip, List<Prompt> prompts) {
        if (!slip.isKept()) {
            prompts.removeIf(Prompt.KeptOpen.class::isInstance);
            prompts.add(new Prompt.NotKept(left.refusal()));
        }
    }
}
