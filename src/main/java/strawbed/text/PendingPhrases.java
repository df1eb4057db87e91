package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strawbed.dialog.Pending;
import strawbed.dialog.Target;
import strawbed.event.Event;
import strawbed.statement.CalfReference;
import strawbed.statement.Doubt;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;

/** What was understood, read back, with what is doubtful about it. */
final class PendingPhrases {
    private final Wording wording;
    private final CalfNames names;
    private final FactPhrases facts;
    private final DoubtPhrases doubts;

    PendingPhrases(Wording wording, ZoneId zone) {
        this.wording = wording;
        this.names = new CalfNames(wording);
        this.facts = new FactPhrases(wording, zone);
        this.doubts = new DoubtPhrases(wording, zone);
    }

    /** The doubts, then what would be saved, then the question. */
    String ask(Pending pending, Instant now) {
        List<String> sentences = new ArrayList<>();
        pending.doubts().forEach(doubt -> doubts.of(doubt, pending, now).ifPresent(sentences::add));
        if (!pending.canBeConfirmed()) {
            sentences.add(missing(pending, now));
        } else {
            sentences.add(ambiguous(pending, now));
            sentences.add(wording.text(CONFIRM));
        }
        return String.join(" ", sentences);
    }

    /** What is still needed before this can be saved. */
    String missing(Pending pending, Instant now) {
        if (pending.target() instanceof Target.Unknown unknown) {
            return switch (unknown.reason()) {
                case FIRST_OR_SECOND, NO_SUCH_CALF, NO_CALF_NAMED_BEFORE ->
                    wording.at(
                            Messages.key(unknown.reason()),
                            dam(pending.statement().calf()));
            };
        }
        String name = name(pending);
        String told = told(pending, now);
        return told.isEmpty() ? wording.text(DOUBT_INCOMPLETE, name) : wording.text(DOUBT_INCOMPLETE_FACTS, name, told);
    }

    private String ambiguous(Pending pending, Instant now) {
        return pending.doubts().stream()
                .filter(Doubt.Ambiguous.class::isInstance)
                .map(doubt -> ((Doubt.Ambiguous) doubt).readings())
                .filter(readings -> readings.size() > 1)
                .findFirst()
                .map(readings -> wording.text(
                        DOUBT_AMBIGUOUS,
                        sentence(readings.get(0), now),
                        String.join(
                                " ",
                                readings.subList(1, readings.size()).stream()
                                        .map(reading -> sentence(reading, now))
                                        .toList())))
                .orElseGet(() -> body(pending, now));
    }

    private String body(Pending pending, Instant now) {
        String told = told(pending, now);
        boolean notListed = pending.doubts().stream().anyMatch(Doubt.NotListed.class::isInstance);
        if (notListed && pending.target() instanceof Target.Opened) {
            return told.isEmpty() ? wording.text(DOUBT_OPEN_NEW_WITHOUT_FACTS) : wording.text(DOUBT_OPEN_NEW, told);
        }
        return sentence(name(pending), told);
    }

    private String sentence(Statement reading, Instant now) {
        return sentence(capitalised(names.of(reading.calf())), facts.of(reading.facts(), now));
    }

    private String sentence(String name, String told) {
        return told.isEmpty() ? wording.text(NAMED, name) : wording.text(READ_BACK, name, told);
    }

    private String told(Pending pending, Instant now) {
        List<SaidFact> said = pending.statement().facts();
        return facts.of(
                pending.target() instanceof Target.Opened
                        ? said.stream()
                                .filter(fact -> !(fact.event() instanceof Event.CalfOpened))
                                .toList()
                        : said,
                now);
    }

    private String name(Pending pending) {
        Target target = pending.target();
        if (target instanceof Target.Known known && known.number() != null) {
            return capitalised(names.numbered(known.number()));
        }
        if (target instanceof Target.Opened opened) {
            return capitalised(names.opened(opened.number(), opened.dam()));
        }
        return capitalised(names.of(pending.statement().calf()));
    }

    private String dam(CalfReference calf) {
        if (calf instanceof CalfReference.OfCow ofCow) {
            return wording.digits(ofCow.dam());
        }
        return calf instanceof CalfReference.Renumbered renumbered
                ? wording.digits(renumbered.calf().dam())
                : "";
    }

    private String capitalised(String words) {
        Locale locale = wording.messages().locale();
        return Sentences.capitalised(words, locale);
    }
}
