package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import strawbed.audio.Cue;
import strawbed.care.DueItem;
import strawbed.dialog.Prompt;
import strawbed.entry.EntryGroup;
import strawbed.station.Announcer;
import strawbed.station.Told;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/**
 * What came of the last statement or key, and which task is late: in a word and a sentence for the screen, by a sound and
 * by voice. Owned by one thread.
 */
final class Telling {
    /** Several late tasks are announced one by one, so that work stays possible between. */
    private static final Duration BETWEEN_ANNOUNCEMENTS = Duration.ofMinutes(1);

    private final Stage stage;
    private final StationDesk desk;
    private final Mouth mouth;
    private final Speech speech;
    private final Announcer announcer;
    private final Unspoken unspoken = new Unspoken();
    private Instant announcedAt = Instant.MIN;
    private Told told;
    private String asked = "";

    Telling(Stage stage, StationDesk desk, Mouth mouth, Speech speech) {
        this.stage = stage;
        this.desk = desk;
        this.mouth = mouth;
        this.speech = speech;
        this.announcer =
                new Announcer(desk.choices().announceAgain(), desk.choices().putOffFor());
        this.told = ready("");
    }

    /** What was told last. */
    Told told() {
        return told;
    }

    /** What was asked about the statement that waits. */
    String asked() {
        return asked;
    }

    /** Whether a late task was announced that can be put off. */
    boolean canPutOff() {
        return announcer.hasAnnounced();
    }

    /** Tells something that is only to be read. */
    void show(String text) {
        told = ready(text);
    }

    /**
     * Tells the outcome of a step.
     *
     * @param prompts at least one
     * @param silent what plain read backs may be about to be shown only
     */
    void tell(List<Prompt> prompts, Set<EntryGroup> silent) {
        Instant now = desk.now();
        List<String> shown = new ArrayList<>();
        List<String> spoken = new ArrayList<>();
        for (Prompt prompt : prompts) {
            Answers.Said said = said(prompt, now);
            shown.add(said.shown());
            if (!unspoken.holds(prompt, silent)) {
                spoken.add(said.spoken());
            }
        }
        String text = String.join(" ", shown);
        if (prompts.stream().anyMatch(Telling::isOfPending)) {
            asked = text;
        }
        told = new Told(word(prompts), text);
        Cues.of(prompts).ifPresent(cue -> mouth.play(cue.sound()));
        if (prompts.stream().anyMatch(prompt -> prompt instanceof Prompt.ReadBack || prompt instanceof Prompt.Ask)) {
            speech.ask(spoken, now);
        } else {
            speech.tell(spoken, now);
        }
    }

    /** Announces a late task of these, if one is to be announced and nobody is busy. */
    void announce(List<DueItem> due, Instant now) {
        boolean isBusy = stage.pending().isPresent() || stage.isSpeaking() || mouth.isSpeaking() || stage.isPaused();
        if (isBusy || now.isBefore(announcedAt.plus(BETWEEN_ANNOUNCEMENTS))) {
            return;
        }
        announcer.next(due, now).ifPresent(item -> {
            announcedAt = now;
            Answers.Said late = stage.answers().late(item, stage.herd());
            told = ready(late.shown());
            mouth.play(Cue.QUESTION.sound());
            speech.tell(List.of(late.spoken()), now);
        });
    }

    /** Only the station announces tasks, so only here one can be put off. */
    private Answers.Said said(Prompt prompt, Instant now) {
        if (prompt instanceof Prompt.NothingToPutOff && announcer.putOff(now)) {
            return new Answers.Said(
                    desk.due().putOff(desk.choices().putOffFor()), desk.due().saidPutOff());
        }
        return stage.answers().said(prompt, stage.herd(), desk);
    }

    private static boolean isOfPending(Prompt prompt) {
        return prompt instanceof Prompt.ReadBack
                || prompt instanceof Prompt.Ask
                || prompt instanceof Prompt.CannotConfirm
                || prompt instanceof Prompt.NotSaved;
    }

    private String word(List<Prompt> prompts) {
        String ready = messages().text(MessageKey.STATION_READY);
        return prompts.stream()
                .map(prompt -> Told.word(prompt, messages()))
                .filter(word -> !word.equals(ready))
                .findFirst()
                .orElse(ready);
    }

    private Told ready(String text) {
        return new Told(messages().text(MessageKey.STATION_READY), text);
    }

    private Messages messages() {
        return desk.messages();
    }
}
