package strawbed.hearing;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Endpointer;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.Utterance;
import strawbed.statement.Interpretation;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;

/**
 * Listens to blocks of sound and gives what was said.
 *
 * <p>People pause inside a statement. What follows within two seconds is tried first on its own; else as more facts of
 * the calf just named; else as the rest of a half sentence, by hearing both parts again as one. Owned by one thread.
 */
public final class Hearing {
    /** A pause up to this long does not end a statement. */
    static final Duration PAUSE = Duration.ofSeconds(2);

    /** A statement that runs longer is closed and kept. */
    private static final Duration LONGEST = Duration.ofSeconds(15);

    private final Endpointer endpointer = new Endpointer();
    private final Instant origin;
    private final ZoneId zone;
    private Recognizers recognizers;
    private Interpreter interpreter;
    private Listening listening;
    private @Nullable Heard last;

    /**
     * Begins to listen.
     *
     * @param origin the instant of the source's first sample
     */
    public Hearing(Recognizers recognizers, Interpreter interpreter, Listening listening, Instant origin, ZoneId zone) {
        this.recognizers = recognizers;
        this.interpreter = interpreter;
        this.listening = listening;
        this.origin = origin;
        this.zone = zone;
    }

    /** Goes on with other recognisers, after the list of calves changed. The caller closes those before. */
    public void use(Recognizers newRecognizers, Interpreter newInterpreter) {
        recognizers = newRecognizers;
        interpreter = newInterpreter;
    }

    /** Tells what the record knows now. */
    public void use(Listening newListening) {
        listening = newListening;
    }

    /** The last statement was answered: what follows stands for itself. */
    public void settle() {
        last = null;
    }

    /** Whether somebody speaks now. */
    public boolean isSpeaking() {
        return endpointer.isSpeaking();
    }

    /** Takes the next block and gives the utterance that ended with it, if one did. */
    public Optional<Heard> accept(Sound block) {
        return endpointer.accept(block).map(this::hear);
    }

    /** Gives the utterance that the end of the source cut off, if one was begun. */
    public Optional<Heard> finish() {
        return endpointer.finish().map(this::hear);
    }

    private Heard hear(Sound sound) {
        Part part = recognize(sound);
        Heard before = last;
        Heard heard = before != null && follows(before.sound(), sound)
                ? goOn(before, part)
                : new Heard(sound, part.meaning(), part.speech(), false);
        last = heard;
        return heard;
    }

    private Heard goOn(Heard before, Part part) {
        Heard alone = new Heard(part.sound(), part.meaning(), part.speech(), false);
        if (!(part.meaning() instanceof Interpretation.NoMatch)) {
            return alone;
        }
        Optional<Interpretation> more =
                interpreter.continued(before.meaning(), part.hypotheses(), before.speech(), listening);
        Sound both = before.sound().join(part.sound());
        if (more.isPresent()) {
            return new Heard(both, more.get(), before.speech(), true);
        }
        if (both.duration().compareTo(LONGEST) > 0) {
            return alone;
        }
        Part whole = recognize(both);
        return mends(before.meaning(), part, whole.meaning())
                ? new Heard(both, whole.meaning(), whole.speech(), true)
                : alone;
    }

    /** Whether hearing both parts as one gave more than the first part alone, and not only an echo of it. */
    private static boolean mends(Interpretation before, Part part, Interpretation whole) {
        if (whole instanceof Interpretation.NoMatch) {
            return false;
        }
        if (before instanceof Interpretation.NoMatch) {
            return true;
        }
        boolean longer = whole.words().size() > before.words().size();
        return longer && (endsOpen(before) || part.hasOnlyKnownWords());
    }

    /** Whether free speech was opened and has not begun yet. */
    private static boolean endsOpen(Interpretation meaning) {
        return meaning instanceof Interpretation.Understood understood
                && understood
                        .tree()
                        .descendants()
                        .filter(tree -> tree.rule().equals("open_speech"))
                        .flatMap(tree -> tree.children().stream())
                        .anyMatch(open -> open.words().size() <= (open.rule().equals("voice_note") ? 1 : 2));
    }

    private static boolean follows(Sound before, Sound sound) {
        return sound.start().minus(before.start().plus(before.duration())).compareTo(PAUSE) <= 0;
    }

    private Part recognize(Sound sound) {
        return Passes.hear(sound, recognizers, interpreter, listening, this::speechTime);
    }

    /** Speech begins with the first word, behind the quiet that is kept before it. */
    private SpeechTime speechTime(Sound sound, Utterance utterance) {
        List<Hypothesis> readings = utterance.hypotheses();
        Duration start = readings.isEmpty()
                ? sound.start()
                : readings.get(0).words().get(0).from();
        return new SpeechTime(origin.plus(start), zone);
    }
}
