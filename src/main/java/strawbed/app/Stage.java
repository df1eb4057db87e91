package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.TimeOrderedIds;
import strawbed.grammar.GrammarException;
import strawbed.hearing.Heard;
import strawbed.journal.EventJournal;
import strawbed.journal.OpenStatement;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.speech.LexiconException;
import strawbed.speech.vosk.ModelException;
import strawbed.statement.Control;
import strawbed.statement.Doubts;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;
import strawbed.text.Messages;

/**
 * Ears, record and screen lines wired together: the object graph of {@code demo} and {@code listen}. Owned by one
 * thread; closing it puts a pending statement among the open ones.
 */
final class Stage implements AutoCloseable {
    private final EventJournal journal;
    private final Attention attention;
    private final Recorder recorder;
    private final Answers answers;
    private final StationFile station;
    private final OlderCalves older;
    private final CardWriting cards;
    private final Clock clock;
    private final ZoneId zone;

    private Stage(
            EventJournal journal,
            Attention attention,
            Recorder recorder,
            Answers answers,
            StationFile station,
            OlderCalves older,
            CardWriting cards,
            Settings settings) {
        this.cards = cards;
        this.clock = settings.clock();
        this.zone = settings.zone();
        this.journal = journal;
        this.attention = attention;
        this.recorder = recorder;
        this.answers = answers;
        this.station = station;
        this.older = older;
    }

    /** A broken file stops nothing: nothing is removed then, and no backup is made. */
    private static StationFile station(Settings settings, PrintWriter err) {
        try {
            return StationFile.in(settings.data());
        } catch (BadInputException broken) {
            err.println(broken.getMessage() + " Until then no sound is removed and no daily backup is made.");
            return StationFile.USUAL;
        }
    }

    /**
     * Of all that the record knew before this start: what the start itself noted bears its time and zone, and hides
     * those of the fact before.
     *
     * @param known how many facts that were
     */
    private static List<Prompt> noteOddTimes(Herd herd, long known, Recorder recorder, Settings settings) {
        return herd.history().stream()
                .map(CalfRecord.Entry::recorded)
                .filter(recorded -> recorded.sequence() <= known)
                .reduce((earlier, later) -> later)
                .map(last -> ClockWatch.since(last, settings.clock().instant(), settings.zone()))
                .orElse(List.of())
                .stream()
                .flatMap(odd -> recorder.note(odd).stream())
                .toList();
    }

    /**
     * Opens the record, adopts the farm's protocol and loads the ears.
     *
     * @param origin the instant of the source's first sample
     * @param err for what a person must be told of protocol and grammar
     */
    static Stage open(Settings settings, Instant origin, PrintWriter err) {
        // First, as it takes longest and needs nothing of the record.
        try (LoadingEars loading = Ears.beginLoading(settings)) {
            return open(settings, origin, err, new Messages(Locale.US), Stage::listening, loading);
        }
    }

    /**
     * The same in the words of a language, without waiting for the ears: what is said meanwhile is heard when they are
     * there. Where this computer cannot hear it becomes a stage for keys alone.
     */
    static Stage openWithKeys(
            Settings settings, Instant origin, PrintWriter err, Messages messages, LoadingEars loading) {
        return open(settings, origin, err, messages, Stage::listeningSoon, loading);
    }

    /** How ears are made for the calves of a record. */
    private interface Hears {
        Attention with(
                List<String> openCalves, Settings settings, Instant origin, LoadingEars loading, PrintWriter err);
    }

    private static Attention listening(
            List<String> openCalves, Settings settings, Instant origin, LoadingEars loading, PrintWriter err) {
        Ears ears = Ears.forCalves(openCalves, loading);
        ears.told().forEach(err::println);
        ears.keepWords().forEach(err::println);
        return new EarsAtWork(ears, ears.hearing(settings, origin));
    }

    private static Attention listeningSoon(
            List<String> openCalves, Settings settings, Instant origin, LoadingEars loading, PrintWriter err) {
        return ComingEars.begin(openCalves, () -> listeningIfItCan(openCalves, settings, origin, loading, err));
    }

    private static Attention listeningIfItCan(
            List<String> openCalves, Settings settings, Instant origin, LoadingEars loading, PrintWriter err) {
        try {
            return listening(openCalves, settings, origin, loading, err);
        } catch (ModelException | GrammarException | LexiconException | BadInputException deaf) {
            String why = LeftOpen.sentence(deaf);
            err.println(why);
            return new NoEars(why);
        }
    }

    private static Stage open(
            Settings settings, Instant origin, PrintWriter err, Messages messages, Hears hears, LoadingEars loading) {
        TimeOrderedIds ids = new TimeOrderedIds(settings.clock(), new SecureRandom());
        SqliteEventJournal journal = SqliteEventJournal.open(settings.data(), settings.clock(), settings.zone(), ids);
        try {
            RecordTelling.findings(journal).forEach(err::println);
            long known = journal.last();
            SoundFolder sounds = new SoundFolder(settings.data(), ids);
            FoundSounds.adopt(journal, sounds).forEach(err::println);
            StationFile station = station(settings, err);
            SoundKeeping.clear(journal, sounds, station, settings.clock()).forEach(err::println);
            FarmProtocol.adopt(journal, settings).forEach(err::println);
            Instant now = settings.clock().instant();
            boolean isBig = journal.isBig();
            Herd herd = isBig
                    ? HerdReading.fresh(journal, now, Instant.MAX)
                    : HerdReading.recent(journal, now, Instant.MAX);
            Attention attention = hears.with(List.copyOf(herd.openNumbers()), settings, origin, loading, err);
            try {
                Recorder recorder = new Recorder(
                        journal, herd, sounds, settings.clock(), ids, attention::grammarVersion, attention::modelName);
                Answers answers = new Answers(messages, settings);
                noteOddTimes(herd, known, recorder, settings)
                        .forEach(odd -> err.println(answers.shown(odd, recorder.herd())));
                OlderCalves older = isBig ? OlderCalves.begin(settings, err) : OlderCalves.none(err);
                return new Stage(
                        journal,
                        attention,
                        recorder,
                        answers,
                        station,
                        older,
                        new CardWriting(
                                new CardPrinting(messages, settings, recorder::take),
                                settings.data().resolve("cards")),
                        settings);
            } catch (RuntimeException failure) {
                attention.close();
                throw failure;
            }
        } catch (RuntimeException failure) {
            journal.close();
            throw failure;
        }
    }

    /** Takes a block of sound; gives the prompts when an utterance ended with it. */
    Optional<Answer> accept(Sound block) {
        return attention.accept(block).map(this::answer);
    }

    /** Takes the end of the source. */
    Optional<Answer> finish() {
        return attention.finish().map(this::answer);
    }

    /** What was said before the ears were there, an utterance at a time. */
    Optional<Answer> late() {
        return attention.late().map(this::answer);
    }

    /** What was heard and what to say about it. */
    record Answer(Heard heard, List<Prompt> prompts) {}

    private Answer answer(Heard heard) {
        List<Prompt> prompts = cards.written(recorder.heard(heard), herd());
        catchUp();
        return new Answer(heard, prompts);
    }

    /** A key or button. */
    List<Prompt> pressed(Control control) {
        List<Prompt> prompts = cards.written(recorder.pressed(control), herd());
        catchUp();
        return prompts;
    }

    /** A statement that was put together by keys. */
    List<Prompt> entered(Statement statement, Optional<OpenStatement> mends) {
        List<Prompt> prompts = recorder.entered(
                statement,
                Doubts.of(
                        statement,
                        new SpeechTime(clock.instant(), zone),
                        new Listening(Set.copyOf(recorder.herd().openNumbers()), recorder.knowsSameCalf())),
                answers.words(statement),
                mends.orElse(null));
        catchUp();
        return prompts;
    }

    /** An open statement, heard once more with what is known by now. */
    List<Prompt> hearAgain(OpenStatement open, Sound sound) {
        List<Prompt> prompts =
                recorder.heardAgain(attention.again(sound, open.statement().from()), open);
        catchUp();
        return prompts;
    }

    /** An open statement came to its end; empty if the record took it, else why not. */
    Optional<String> settle(OpenStatement open, String how) {
        return recorder.settle(open.id(), how);
    }

    /** An open statement becomes a note on a calf; empty if the record took it, else why not. */
    Optional<String> keepAsNote(OpenStatement open, CalfId calf) {
        Optional<String> refused = recorder.keepAsNote(open, calf);
        catchUp();
        return refused;
    }

    /** What was said and not confirmed, the newest first. */
    List<OpenStatement> open() {
        return recorder.open();
    }

    /** The statement that waits for its confirmation. */
    Optional<Pending> pending() {
        return recorder.pending();
    }

    /** The calf named last. */
    Optional<CalfId> named() {
        return recorder.named();
    }

    /** Writes a calf's card into a folder and notes it. */
    Prompt print(CalfId calf, Path folder) {
        return cards.write(calf, herd(), folder);
    }

    /** Writes a calf's card where cards go, and notes it. */
    Prompt print(CalfId calf) {
        return cards.write(calf, herd());
    }

    /** The end: a pending statement goes to the open ones. */
    List<Prompt> stop() {
        return recorder.stop();
    }

    /** Time passed. */
    List<Prompt> tick() {
        if (!attention.isSpeaking() && !recorder.isPending()) {
            older.arrived().ifPresent(herd -> {
                recorder.widen(herd);
                catchUp();
            });
        }
        return recorder.tick();
    }

    /** What was answered is closed, and a changed list of calves is listened for. */
    private void catchUp() {
        if (!recorder.isPending()) {
            attention.settle();
        }
        attention.listenFor(recorder.herd().openNumbers(), recorder.knowsSameCalf());
    }

    /** Who works, as was last chosen. */
    Optional<String> operator() {
        return recorder.operator();
    }

    /** Chooses who works from now on. */
    void choose(@Nullable String operator) {
        recorder.choose(operator);
    }

    /** Notes something about the record itself that nobody said. */
    List<Prompt> note(Event event) {
        return recorder.note(event);
    }

    /** What this computer does with record and sounds. */
    StationFile station() {
        return station;
    }

    /** Whether it listens for nothing but being woken. */
    boolean isPaused() {
        return recorder.isPaused();
    }

    /** The calves of the record now. */
    Herd herd() {
        return recorder.herd();
    }

    Answers answers() {
        return answers;
    }

    /** Whether what is said has to wait for its answer, as the ears are still being made. */
    boolean isComing() {
        return attention.isComing();
    }

    /** Why nothing is heard, in a sentence; empty where it hears. */
    Optional<String> whyDeaf() {
        return attention.whyDeaf();
    }

    boolean isSpeaking() {
        return attention.isSpeaking();
    }

    @Override
    public void close() {
        try {
            recorder.stop();
        } finally {
            attention.close();
            journal.close();
        }
    }
}
