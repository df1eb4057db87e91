package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.audio.Sound;
import strawbed.audio.WavSource;
import strawbed.hearing.Heard;
import strawbed.hearing.Hearing;
import strawbed.statement.Statement;

/** Hears a file as the microphone would be heard, and shows each utterance when nothing more can be added to it. */
final class HeardFile {
    private final Ears ears;
    private final Hearing hearing;
    private final Shown shown;
    private @Nullable Heard waiting;
    private @Nullable String sameCalf;
    private boolean any;

    private HeardFile(Ears ears, Hearing hearing, Shown shown) {
        this.ears = ears;
        this.hearing = hearing;
        this.shown = shown;
    }

    /** Takes what was heard, and the number of the calf named last before it. */
    interface Shown {
        void show(Heard heard, @Nullable String sameCalf);
    }

    /**
     * Hears a file to its end.
     *
     * @param err for what is wrong with the file
     * @return whether it could be heard
     */
    static boolean hear(Path file, Ears ears, Hearing hearing, PrintWriter err, Shown shown) {
        HeardFile work = new HeardFile(ears, hearing, shown);
        Loudness loudness = new Loudness();
        try (WavSource source = WavSource.open(file)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                loudness.add(block.get());
                hearing.accept(block.get()).ifPresent(work::take);
            }
            hearing.finish().ifPresent(work::take);
            work.show();
            source.warning().ifPresent(err::println);
        } catch (AudioException failure) {
            err.println(failure.getMessage());
            return false;
        }
        if (loudness.isSilent()) {
            err.println(file + " is silent: no sample is louder than " + loudness.peak()
                    + ". Check the microphone that recorded it.");
            return false;
        }
        if (!work.any) {
            err.println(file + ": no speech was heard in it.");
        }
        return true;
    }

    private void take(Heard heard) {
        if (!heard.goesOn()) {
            show();
        }
        waiting = heard;
        ears.named(hearing, number(heard, sameCalf) != null || sameCalf != null);
    }

    private void show() {
        Heard heard = waiting;
        if (heard != null) {
            any = true;
            shown.show(heard, sameCalf);
            String named = number(heard, sameCalf);
            sameCalf = named == null ? sameCalf : named;
            waiting = null;
        }
    }

    private static @Nullable String number(Heard heard, @Nullable String sameCalf) {
        Statement statement = HeardJson.statement(heard.meaning());
        return statement == null ? null : HeardJson.number(statement.calf(), heard.meaning(), sameCalf);
    }
}
