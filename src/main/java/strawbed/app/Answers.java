package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.audio.SoundCondition;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.hearing.Heard;
import strawbed.statement.Interpretation;
import strawbed.statement.Statement;
import strawbed.text.CalfNames;
import strawbed.text.CareAnswers;
import strawbed.text.DuePhrases;
import strawbed.text.EventPhrases;
import strawbed.text.Messages;
import strawbed.text.Prompts;

/** Turns prompts into sentences. */
final class Answers {
    private final Settings settings;
    private final Messages messages;
    private final Prompts prompts;
    private final DuePhrases duePhrases;
    private final CareAnswers shownCare;
    private final CareAnswers spokenCare;
    private final CalfNames names;
    private final EventPhrases events;

    Answers(Messages messages, Settings settings) {
        this.settings = settings;
        this.messages = messages;
        this.prompts = new Prompts(messages, settings.zone(), settings.clock());
        this.duePhrases = new DuePhrases(messages, settings.zone());
        this.shownCare = CareAnswers.written(messages, settings.zone());
        this.spokenCare = CareAnswers.spoken(messages, settings.zone());
        this.names = new CalfNames(messages);
        this.events = new EventPhrases(messages, settings.zone());
    }

    /** The sentence to show. */
    String shown(Prompt prompt, Herd herd) {
        return told(prompt, herd, shownCare, prompts.shown(prompt));
    }

    /** The sentence to speak. */
    String spoken(Prompt prompt, Herd herd) {
        return told(prompt, herd, spokenCare, prompts.spoken(prompt));
    }

    /**
     * What is wrong with the sound of an utterance and what to do about it, where it was asked about or not understood.
     * To show, not to speak: who is asked something has enough to listen to.
     */
    Optional<String> ofSound(Heard heard) {
        boolean doubtful =
                heard.meaning() instanceof Interpretation.NoMatch || heard.meaning() instanceof Interpretation.Unsure;
        return Optional.of(heard.sound())
                .filter(sound -> doubtful)
                .map(SoundCondition::of)
                .filter(condition -> condition != SoundCondition.GOOD)
                .map(messages::word);
    }

    /** What is shown and what is spoken of one prompt. */
    record Said(String shown, String spoken) {}

    /** As it is shown and spoken; a card that was written goes on to the printer where one is chosen, once for both. */
    Said said(Prompt prompt, Herd herd, CardSender sender) {
        Said told = new Said(shown(prompt, herd), spoken(prompt, herd));
        if (!(prompt instanceof Prompt.CardWritten written)) {
            return told;
        }
        Optional<Said> sent = sender.send(Path.of(written.file()), calf(written.calf(), herd), herd);
        return sent.map(news -> written.notNoted() == null
                        ? news
                        : new Said(told.shown() + " " + news.shown(), told.spoken() + " " + news.spoken()))
                .orElse(told);
    }

    private String told(Prompt prompt, Herd herd, CareAnswers care, String otherwise) {
        Instant now = settings.clock().instant();
        if (prompt instanceof Prompt.TellDue) {
            return care.due(DueList.open(herd, now), herd, now);
        }
        if (prompt instanceof Prompt.TellCalf asked) {
            CalfRecord calf = calf(asked.calf(), herd);
            return care.calf(calf, DueList.of(calf, Farm.of(herd), now), now);
        }
        return otherwise;
    }

    /** That a task is late. */
    Said late(DueItem item, Herd herd) {
        return new Said(shownCare.late(item, herd), spokenCare.late(item, herd));
    }

    /** A statement in words: whose it is and what was said, one after the other. */
    List<String> words(Statement statement) {
        Stream<String> facts = statement.facts().stream().map(fact -> events.of(fact.event()));
        return Stream.concat(Stream.of(names.of(statement.calf())), facts).toList();
    }

    /** The due list as lines: what, for which calf, when. */
    List<String> due(Herd herd, Instant now) {
        return DueList.open(herd, now).stream()
                .filter(item -> item.state().isOpen())
                .map(item -> line(item, herd, now))
                .toList();
    }

    private String line(DueItem item, Herd herd, Instant now) {
        return String.format(
                Locale.ROOT,
                "  %-22s %-28s %s",
                names.of(calf(item.calf(), herd), herd),
                duePhrases.what(item),
                duePhrases.when(item, now));
    }

    private static CalfRecord calf(CalfId id, Herd herd) {
        return herd.calf(id).orElseThrow(() -> new AssertionError("no calf " + id + " in the herd"));
    }
}
