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

    /** 1.5 s: a long word ("chlorhexidine") comes 1 s after the word before it at most, said slowly. */
    private static final Duration SETTLED = Duration.ofMillis(1_500);

    /**
     * After so long in which the words so far open no sentence, it is most likely none. Found by hearing people's talk: most
     * sentences are at their end by then, so that a first word that a cow drowns out costs none of its hearings.
     */
    private static final Duration PROMISING = Duration.ofSeconds(5);

    /** So many words tell a sentence from talk: "calf twelve", "new calf", "confirm entry". */
    private static final int OPENING = 2;

    private final Endpointer endpointer = new Endpointer();
    private final Instant origin;
    private final ZoneId zone;
    private Passes passes;
    private Interpreter interpreter;
    private Listening listening;
    private @Nullable Heard last;

    /** Of the utterance that goes on, once the recognisers have some of it. */
    private @Nullable Course course;

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
            hearOn();
            return isOver() ? endpointer.end().map(sound -> hear(sound, Ending.IN_QUIET)) : Optional.empty();
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
        Evidence evidence = passes.finish(sound, Ending.CUT_OFF, this::promises);
        return interpreter.interpret(evidence, new SpeechTime(began, zone), listening);
    }

    private void hearOn() {
        Sound sound = endpointer.since(course == null ? 0 : course.given());
        if (sound.length() >= SpeechRecognizer.BITE) {
            Course now = course == null ? new Course(this::opens, sound.startSample()) : course;
            passes.accept(sound, now.sincePromising().compareTo(PROMISING) < 0);
            now.take(passes.wordsSoFar(), sound.startSample() + sound.length());
            course = now;
        }
    }

    /** Whether a whole statement was said, and nothing more for a while, in a place that is not quiet: machines bang. */
    private boolean isOver() {
        Course now = course;
        return now != null && now.isAtRest(SETTLED) && isWhole(now.words());
    }

    /** Whether any of these readings may be a sentence; noise before it does not count. */
    private boolean promises(List<Hypothesis> readings) {
        return readings.isEmpty() || readings.stream().anyMatch(reading -> opens(reading.texts()));
    }

    /** Whether a sentence begins so; later words may be heard wrongly, and it still is one. */
    private boolean opens(List<String> words) {
        return interpreter.begins(words.stream()
                .dropWhile(RecognizedWord.UNKNOWN::equals)
                .limit(OPENING)
                .toList());
    }

    /** Whether these words are a whole statement. Who takes down a note in their own words is never cut short. */
    private boolean isWhole(List<String> words) {
        Interpretation meaning = interpreter.interpret(
                List.of(new Hypothesis(
                        words.stream()
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
        if (course != null) {
            passes.forget();
            course = null;
        }
    }

    /** One that ran too long was cut off in the midst of it. */
    private static Ending endingOf(Sound utterance) {
        return utterance.duration().compareTo(LONGEST) < 0 ? Ending.IN_QUIET : Ending.CUT_OFF;
    }

    private Heard hear(Sound sound, Ending ending) {
        Part part = ended(sound, ending);
        Heard before = last;
        Heard heard = before != null && follows(before.sound(), sound) ? goOn(before, part, ending) : part.alone();
        last = mayGoOn(heard) ? heard : null;
        return heard;
    }

    /** What opens no sentence, however it is read, goes on with nothing. */
    private boolean mayGoOn(Heard heard) {
        return !(heard.meaning() instanceof Interpretation.NoMatch)
                || promises(heard.evidence().plain());
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
        Part whole = ended(both, ending);
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

    /** What was heard of an utterance that is over, or is heard once more. */
    private Part ended(Sound sound, Ending ending) {
        long from = Math.max(course == null ? 0 : course.given(), sound.startSample());
        course = null;
        int rest = (int) Math.min(sound.length(), from - sound.startSample());
        Evidence evidence = passes.finish(sound.slice(rest, sound.length()), ending, this::promises);
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
