package strawbed.hearing;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Endpointer;
import strawbed.audio.Sound;
import strawbed.speech.Ending;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;
import strawbed.statement.Evidence;
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

    private static final long NOTHING = -1;

    /** 1.5 s: a long word ("chlorhexidine") comes 1 s after the word before it at most, said slowly. */
    private static final int SETTLED = Sound.RATE * 3 / 2;

    private final Endpointer endpointer = new Endpointer();
    private final Instant origin;
    private final ZoneId zone;
    private Passes passes;
    private Interpreter interpreter;
    private Listening listening;
    private @Nullable Heard last;

    /** Up to this sample of the source the recognisers have the utterance that goes on; less than 0 if they have none. */
    private long given = NOTHING;

    /** The words of the utterance that goes on, without noise behind them, and since which sample they are these. */
    private List<String> wordsSoFar = List.of();

    private long wordsSince;

    /**
     * Begins to listen.
     *
     * @param origin the instant of the source's first sample
     */
    public Hearing(Recognizers recognizers, Interpreter interpreter, Listening listening, Instant origin, ZoneId zone) {
        this.passes = new Passes(recognizers);
        this.interpreter = interpreter;
        this.listening = listening;
        this.origin = origin;
        this.zone = zone;
    }

    /**
     * Goes on with other recognisers, after the list of calves changed, also in the middle of an utterance. The caller
     * closes the former ones afterwards.
     */
    public void use(Recognizers newRecognizers, Interpreter newInterpreter) {
        // Those that go on listening, for any words, get all of the utterance again as well.
        drop();
        passes = new Passes(newRecognizers);
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
        Optional<Sound> ended = endpointer.accept(block);
        if (ended.isPresent()) {
            return ended.map(sound -> hear(sound, endingOf(sound)));
        }
        if (endpointer.isSpeaking()) {
            give(endpointer.since(given));
            return isSettled() ? endpointer.end().map(sound -> hear(sound, Ending.IN_QUIET)) : Optional.empty();
        } else {
            drop();
            passes.hush(block);
        }
        return Optional.empty();
    }

    /** Gives the utterance that the end of the source cut off, if one was begun. */
    public Optional<Heard> finish() {
        Optional<Heard> heard = endpointer.finish().map(sound -> hear(sound, Ending.CUT_OFF));
        drop();
        return heard;
    }

    /**
     * Hears a kept sound once more, with what is known by now. Not while somebody speaks.
     *
     * @param began when its first word began
     */
    public Interpretation again(Sound sound, Instant began) {
        drop();
        Evidence evidence = passes.finish(sound, Ending.CUT_OFF);
        return interpreter.interpret(evidence, new SpeechTime(began, zone), listening);
    }

    private void give(Sound sound) {
        if (sound.length() >= SpeechRecognizer.BITE) {
            passes.accept(sound);
            given = sound.startSample() + sound.length();
            List<String> words = passes.wordsSoFar();
            if (!words.equals(wordsSoFar)) {
                wordsSoFar = words;
                wordsSince = given;
            }
        }
    }

    /**
     * Whether a whole statement was said, and nothing more for a while, though the place does not become quiet: machines
     * bang, cows call. Who takes down a note in their own words is never cut short.
     */
    private boolean isSettled() {
        if (wordsSoFar.isEmpty() || given - wordsSince < SETTLED) {
            return false;
        }
        // Asked once; whatever the answer, only other words change it.
        wordsSince = Long.MAX_VALUE;
        Interpretation meaning = interpreter.interpret(
                List.of(new Hypothesis(
                        wordsSoFar.stream()
                                .map(word -> new RecognizedWord(word, Duration.ZERO, Duration.ZERO))
                                .toList(),
                        0)),
                new SpeechTime(origin, zone),
                listening);
        boolean whole = meaning instanceof Interpretation.Understood
                || meaning instanceof Interpretation.ControlHeard
                || (meaning instanceof Interpretation.Unsure unsure && !unsure.isIncomplete());
        return whole && !endsOpen(meaning);
    }

    /** It was no utterance after all. */
    private void drop() {
        if (given != NOTHING) {
            passes.forget();
            forgetWords();
        }
    }

    private void forgetWords() {
        given = NOTHING;
        wordsSoFar = List.of();
    }

    /** One that ran too long was cut off in the midst of it. */
    private static Ending endingOf(Sound utterance) {
        return utterance.duration().compareTo(LONGEST) < 0 ? Ending.IN_QUIET : Ending.CUT_OFF;
    }

    private Heard hear(Sound sound, Ending ending) {
        long from = Math.max(given, sound.startSample());
        int rest = (int) Math.min(sound.length(), from - sound.startSample());
        Part part = ended(sound, sound.slice(rest, sound.length()), ending);
        Heard before = last;
        Heard heard = before != null && follows(before.sound(), sound) ? goOn(before, part, ending) : part.alone();
        last = heard;
        return heard;
    }

    private Heard goOn(Heard before, Part part, Ending ending) {
        Heard alone = part.alone();
        if (!(part.meaning() instanceof Interpretation.NoMatch)) {
            return alone;
        }
        Optional<Interpretation> more =
                interpreter.continued(before.meaning(), part.hypotheses(), before.speech(), listening);
        Sound both = before.sound().join(part.sound());
        if (more.isPresent()) {
            return new Heard(both, more.get(), before.speech(), part.evidence(), true);
        }
        if (both.duration().compareTo(LONGEST) > 0 || !mayMend(before.meaning(), part)) {
            return alone;
        }
        Part whole = ended(both, both, ending);
        return mends(before.meaning(), whole.meaning())
                ? new Heard(both, whole.meaning(), whole.speech(), whole.evidence(), true)
                : alone;
    }

    /** Whether hearing both parts as one can give more: it costs as much as hearing them did, also where nobody speaks. */
    private static boolean mayMend(Interpretation before, Part part) {
        if (before instanceof Interpretation.NoMatch) {
            return hasKnownWord(before) || hasKnownWord(part.meaning());
        }
        return endsOpen(before) || part.hasOnlyKnownWords();
    }

    private static boolean hasKnownWord(Interpretation meaning) {
        return meaning.words().stream().anyMatch(word -> !word.equals(RecognizedWord.UNKNOWN));
    }

    /** Whether hearing both parts as one gave more than the first part alone, and not only an echo of it. */
    private static boolean mends(Interpretation before, Interpretation whole) {
        if (whole instanceof Interpretation.NoMatch) {
            return false;
        }
        return before instanceof Interpretation.NoMatch
                || whole.words().size() > before.words().size();
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

    /** What was heard of an utterance of which all but a rest was given. */
    private Part ended(Sound sound, Sound rest, Ending ending) {
        Evidence evidence = passes.finish(rest, ending);
        forgetWords();
        SpeechTime speech = speechTime(sound, evidence.plain());
        return new Part(sound, evidence, speech, interpreter.interpret(evidence, speech, listening));
    }

    /** Speech begins with the first word, behind the quiet that is kept before it. */
    private SpeechTime speechTime(Sound sound, List<Hypothesis> readings) {
        Duration start = readings.isEmpty()
                ? sound.start()
                : readings.get(0).words().get(0).from();
        return new SpeechTime(origin.plus(start), zone);
    }
}
