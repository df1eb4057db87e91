package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.audio.Cue;
import strawbed.audio.Sound;
import strawbed.audio.SoundCondition;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.dialog.Prompt;
import strawbed.entry.EntryGroup;
import strawbed.journal.JournalException;
import strawbed.journal.OpenStatement;
import strawbed.statement.Control;
import strawbed.statement.Interpretation;
import strawbed.station.Act;
import strawbed.station.Known;
import strawbed.station.PaperStep;
import strawbed.station.Place;
import strawbed.station.Sign;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/**
 * The station's work between microphone, stage, voice and screen. One thread runs it; keys are pressed from any.
 *
 * <pre>
 * while (loop.goesOn()) {
 *     loop.turn();
 * }
 * </pre>
 */
final class StationLoop {
    /** As long as a block of sound lasts, nearly: the loop goes round with the sound. */
    private static final Duration WAIT = Duration.ofMillis(50);

    /** What the voice leaves in the room. */
    private static final Duration ECHO = Duration.ofMillis(200);

    private static final Duration EACH_LOOK_AT_DUE = Duration.ofSeconds(5);
    private static final Duration EACH_SCREEN = Duration.ofMillis(500);
    private static final Duration EACH_LEVEL = Duration.ofMillis(100);

    private final Stage stage;
    private final SoundIn in;
    private final MicrophoneWatch watch;
    private final Mouth mouth;
    private final Speech speech;
    private final Telling telling;
    private final StationDesk desk;
    private final Panel panel;
    private final Beside beside;
    private final BlockingQueue<Act> acts = new LinkedBlockingQueue<>();

    private Place place = new Place.Now();
    private @Nullable Place interrupted;
    private String news = "";
    private boolean talking;
    private boolean ended;
    private boolean isStale;
    private List<DueItem> due = List.of();
    private List<OpenStatement> open = List.of();
    private Instant deafUntil = Instant.MIN;
    private Instant dueAt = Instant.MIN;
    private Instant shownAt = Instant.MIN;
    private Instant levelAt = Instant.MIN;

    /** What the station is seen on. Its methods return at once. */
    interface Panel {
        void show(Place place, Known known);

        void level(double decibel);
    }

    /** What goes on while it listens. */
    interface Beside {
        /** Looks whether the clock jumped, and what backup and printer have to tell; a line for a person, or empty. */
        String news(Stage stage);
    }

    StationLoop(Stage stage, SoundIn in, Mouth mouth, StationDesk desk, Panel panel, Beside beside) {
        this.stage = stage;
        this.in = in;
        this.watch = new MicrophoneWatch(in);
        this.mouth = mouth;
        this.speech = new Speech(mouth);
        this.desk = desk;
        this.telling = new Telling(stage, desk, mouth, speech);
        this.panel = panel;
        this.beside = beside;
    }

    /** A key was pressed. From any thread. */
    void press(Act act) {
        acts.add(act);
    }

    /** What somebody at the screen must know from the start; may be empty. */
    void tellFirst(String sentence) {
        news = sentence;
    }

    boolean goesOn() {
        return !ended;
    }

    /** Does what is to be done now, and waits for sound for a moment if there is nothing. */
    void turn() {
        for (Act act = acts.poll(); act != null; act = acts.poll()) {
            doAct(act);
        }
        in.poll(WAIT, !stage.isSpeaking()).ifPresent(this::take);
        look();
    }

    /** The end: a pending statement goes to the open ones. */
    void end() {
        tell(stage.stop());
    }

    // Sound.

    private void take(Sound block) {
        if (!isDeaf()) {
            stage.accept(block).ifPresent(this::answered);
        }
        if (stage.isSpeaking()) {
            speech.hears(now());
        }
    }

    /** Nothing is heard then, so nothing can be taken for a statement, and nothing is kept. */
    private boolean isDeaf() {
        if (mouth.isSpeaking() && !desk.choices().headset()) {
            deafUntil = now().plus(ECHO);
        }
        return now().isBefore(deafUntil) || (desk.choices().holdToTalk() && !talking);
    }

    private void answered(Stage.Answer answer) {
        if (answer.prompts().isEmpty()) {
            return;
        }
        if (desk.choices().headset()) {
            speech.hush();
        }
        tell(answer.prompts(), silentAbout(answer.heard().meaning()));
        stage.answers().ofSound(answer.heard()).ifPresent(advice -> news = advice);
        show();
    }

    // Telling.

    private void tell(List<Prompt> prompts) {
        tell(prompts, desk.choices().unspoken());
    }

    /** Who wants to hear it again hears it. */
    private Set<EntryGroup> silentAbout(Interpretation meaning) {
        return meaning instanceof Interpretation.ControlHeard order
                ? silentAbout(order.control())
                : desk.choices().unspoken();
    }

    private Set<EntryGroup> silentAbout(Control control) {
        return control == Control.REPEAT_ENTRY ? Set.of() : desk.choices().unspoken();
    }

    private void tell(List<Prompt> prompts, Set<EntryGroup> silent) {
        if (prompts.isEmpty()) {
            return;
        }
        telling.tell(prompts, silent);
        news = "";
        // Words are shown first; what they changed about the other calves a moment later.
        isStale = true;
        returnToNow();
    }

    /** What waits for an answer is shown at once; what was being entered comes back afterwards. */
    private void returnToNow() {
        if (stage.pending().isPresent()) {
            if (place instanceof Place.Entering || place instanceof Place.Naming) {
                interrupted = place;
            }
            place = new Place.Now();
        } else if (interrupted != null) {
            place = interrupted;
            interrupted = null;
        }
    }

    // Keys.

    private void doAct(Act act) {
        speech.hush();
        news = "";
        try {
            act(act);
        } catch (BadInputException | JournalException | AudioException refused) {
            problem(LeftOpen.sentence(refused));
        }
        show();
    }

    private void act(Act act) {
        if (act instanceof Act.Go go) {
            place = go.place();
            if (place instanceof Place.Microphones) {
                desk.lookForMicrophones();
            }
            if (place instanceof Place.More || place instanceof Place.Prints || place instanceof Place.OnePrint) {
                desk.printing().lookForPapers();
            }
        } else if (act instanceof Act.Order order) {
            order(order.control());
        } else if (act instanceof Act.Enter entered) {
            place = new Place.Now();
            tell(stage.entered(entered.statement(), entered.mends().flatMap(this::open)));
        } else if (act instanceof Act.Talk talk) {
            talk(talk.down());
        } else if (act instanceof Act.Operate operate) {
            stage.choose(operate.name());
            place = new Place.Now();
            done(stage.operator()
                    .map(name -> messages().text(MessageKey.EVENT_OPERATOR, name))
                    .orElseGet(() -> messages().text(MessageKey.EVENT_OPERATOR_NONE)));
        } else if (act instanceof Act.AddOperator) {
            desk.set(act, note -> news = note);
            place = new Place.Operators();
        } else if (act instanceof Act.Quit) {
            ended = true;
        } else if (act instanceof Act.PrintCard card) {
            tell(List.of(stage.print(card.calf())));
            place = new Place.Now();
        } else if (act instanceof Act.PrintHandover) {
            done(desk.printHandover(stage.herd(), stage.open()));
            place = new Place.Now();
        } else if (act instanceof Act.OfPaper paper) {
            actOnPaper(paper);
        } else {
            actOnOpen(act);
        }
    }

    /** Only from the page of that print, which it leaves: a key that is pressed twice must not print twice. */
    private void actOnPaper(Act.OfPaper act) {
        if (place.equals(new Place.OnePrint(act.number()))) {
            place = new Place.Prints(0);
            desk.printing().press(act.step(), act.number());
            if (act.step() != PaperStep.GIVE_UP) {
                news = messages().text(MessageKey.STATION_PRINT_TRIED);
            }
        }
    }

    private void actOnOpen(Act act) {
        if (act instanceof Act.Replay replay) {
            open(replay.open()).ifPresent(one -> mouth.play(desk.sound(one)));
        } else if (act instanceof Act.HearAgain again) {
            open(again.open()).ifPresent(this::hearAgain);
        } else if (act instanceof Act.Settle settle) {
            open(settle.open())
                    .ifPresent(one -> settled(stage.settle(one, settle.why().word()), MessageKey.STATION_THROWN_AWAY));
        } else if (act instanceof Act.KeepAsNote note) {
            open(note.open())
                    .ifPresent(one -> settled(stage.keepAsNote(one, note.calf()), MessageKey.STATION_NOTE_KEPT));
        } else {
            desk.set(act, note -> news = note);
        }
    }

    private void hearAgain(OpenStatement one) {
        List<Prompt> prompts = stage.hearAgain(one, desk.sound(one));
        tell(prompts);
        if (stage.pending().isEmpty()) {
            news = messages().text(MessageKey.STATION_HEARD_NOTHING);
        }
    }

    private void settled(Optional<String> refused, MessageKey done) {
        refresh();
        refused.ifPresentOrElse(this::problem, () -> {
            place = new Place.OpenStatements(0);
            news = messages().text(done);
        });
    }

    private void order(Control control) {
        tell(stage.pressed(control), silentAbout(control));
        if (control == Control.WHAT_IS_DUE
                || control == Control.PAUSE_RECORDER
                || control == Control.WAKE_UP_RECORDER) {
            place = new Place.Now();
        }
    }

    private void talk(boolean down) {
        talking = down;
        if (!down && desk.choices().holdToTalk()) {
            stage.finish().ifPresent(this::answered);
        }
    }

    private void done(String text) {
        telling.show(text);
        refresh();
    }

    private void problem(String sentence) {
        news = sentence;
        mouth.play(Cue.PROBLEM.sound());
    }

    private Optional<OpenStatement> open(UUID id) {
        return open.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    // Time.

    private void look() {
        Instant now = now();
        stage.late().ifPresent(this::answered);
        tell(stage.tick());
        speech.look(now, stage.isSpeaking(), desk.choices().voice());
        microphone();
        if (!now.isBefore(levelAt)) {
            levelAt = now.plus(EACH_LEVEL);
            panel.level(in.level());
        }
        if (!now.isBefore(dueAt)) {
            dueAt = now.plus(EACH_LOOK_AT_DUE);
            refresh();
            String line = beside.news(stage);
            if (!line.isEmpty()) {
                news = line;
            }
            telling.announce(due, now);
        } else if (isStale) {
            refresh();
            show();
        }
        if (!now.isBefore(shownAt)) {
            show();
        }
    }

    private void microphone() {
        MicrophoneWatch.News since = watch.look();
        if (since == MicrophoneWatch.News.LOST && stage.whyDeaf().isEmpty()) {
            // A sentence that was cut off is heard as far as it came.
            stage.finish().ifPresent(this::answered);
            mouth.play(Cue.PROBLEM.sound());
            if (desk.choices().voice()) {
                mouth.say(in.sentence());
            }
        }
        if (since != MicrophoneWatch.News.NONE) {
            show();
        }
    }

    private void refresh() {
        due = DueList.open(stage.herd(), now());
        isStale = false;
        desk.printing().lookForPapers();
        try {
            open = stage.open();
        } catch (JournalException refused) {
            news = LeftOpen.sentence(refused);
        }
    }

    private void show() {
        shownAt = now().plus(EACH_SCREEN);
        panel.show(place, known());
    }

    private Known known() {
        return new Known(
                stage.herd(),
                now(),
                sign(),
                note(),
                stage.operator(),
                stage.pending(),
                stage.named(),
                telling.told(),
                telling.asked(),
                due.stream().filter(item -> item.state().isOpen()).toList(),
                open,
                telling.canPutOff(),
                desk.microphones(),
                desk.printing().papers(),
                desk.keyNames(),
                desk.choices());
    }

    private Sign sign() {
        if (stage.whyDeaf().isPresent()) {
            return stage.isPaused() ? Sign.PAUSED : Sign.KEYS_ONLY;
        }
        if (watch.isLost()) {
            return Sign.NO_SOUND;
        }
        if (!watch.isReady()) {
            return Sign.STARTING;
        }
        if (stage.isPaused()) {
            return Sign.PAUSED;
        }
        if (mouth.isSpeaking() && !desk.choices().headset()) {
            return Sign.SPEAKING;
        }
        return desk.choices().holdToTalk() && !talking ? Sign.HOLD_TO_TALK : Sign.LISTENING;
    }

    private String note() {
        if (watch.isLost() && stage.whyDeaf().isEmpty()) {
            return in.sentence();
        }
        if (!news.isEmpty()) {
            return news;
        }
        if (stage.whyDeaf().isPresent()) {
            return messages().text(MessageKey.STATION_KEYS_ONLY);
        }
        if (stage.isComing()) {
            return messages().text(MessageKey.STATION_EARS_COMING);
        }
        return in.clips()
                ? messages().word(SoundCondition.TOO_LOUD)
                : mouth.trouble().orElse("");
    }

    private Messages messages() {
        return desk.messages();
    }

    private Instant now() {
        return desk.now();
    }
}
