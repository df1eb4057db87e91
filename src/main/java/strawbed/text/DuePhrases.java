package strawbed.text;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.Timed;
import strawbed.care.DueItem;
import strawbed.care.DueState;
import strawbed.care.Settled;
import strawbed.protocol.Protocol;

/** What is due, in words for a list. Immutable, safe for any thread. */
public final class DuePhrases {
    private static final Duration A_DAY = Duration.ofDays(1);

    private final Wording written;
    private final Figures figures;
    private final Wording spoken;
    private final EventPhrases events;
    private final SettingPhrases settings;

    /** @param zone the farm's */
    public DuePhrases(Messages messages, ZoneId zone) {
        this.events = new EventPhrases(messages, zone);
        this.settings = new SettingPhrases(messages, zone);
        this.written = new Written(messages);
        this.figures = new Figures(written, zone);
        this.spoken = new Spoken(messages);
    }

    /** The task, such as "first colostrum". */
    public String what(DueItem item) {
        return written.word(item.kind());
    }

    /** The task in two or three words, for paper. */
    public String brief(DueItem item) {
        return written.at(Messages.key(item.kind()) + ".brief");
    }

    /** The state in a word, such as "LATE". */
    public String state(DueState state) {
        return written.word(state);
    }

    /** "due 04:30, in 20 min", "LATE by 35 min, since 05:10". */
    public String when(DueItem item, Instant now) {
        String dueAt = figures.clockNear(now, item.dueAt());
        Duration left = Duration.between(now, item.dueAt());
        return switch (item.state()) {
            case AHEAD -> ahead(item, now, dueAt, left);
            case DUE -> due(dueAt, left);
            case LATE -> late(item, now, dueAt, left.negated());
            case MISSED -> written.text(MessageKey.DUE_MISSED, dueAt);
            case DONE, NOT_NEEDED -> settled(item, now);
        };
    }

    /** When to do it, as clock times: paper is read hours after it was printed. "by 14:02", "08:55–14:55", "NOW". */
    public String onPaper(DueItem item, Instant now) {
        Instant from = item.from();
        if (item.state() != DueState.AHEAD || from == null) {
            return item.dueAt().isAfter(now)
                    ? written.text(MessageKey.CARD_BY, figures.clockAsSeenFrom(now, item.dueAt()))
                    : written.text(MessageKey.CARD_NOW);
        }
        // Of a window of days only the days matter.
        return Duration.between(from, item.dueAt()).compareTo(A_DAY) > 0
                ? written.text(MessageKey.CARD_FROM_TO, figures.date(from), figures.date(item.dueAt()))
                : written.text(
                        MessageKey.CARD_FROM_TO,
                        figures.clockAsSeenFrom(now, from),
                        figures.clockAsSeenFrom(from, item.dueAt()));
    }

    /** The fact that asked for it, in a sentence; empty where only the calf's age did. */
    public Optional<String> askedBy(DueItem item, Instant now) {
        return Optional.ofNullable(item.ground().event()).map(asked -> askedBy(asked, now));
    }

    /** Its rule in a sentence, without the rule's source. */
    public String rule(DueItem item) {
        return written.text(MessageKey.DUE_RULE_ALONE, ruleOf(item));
    }

    /** Why it is due, in full sentences: its rule and source, what it rests on, what is assumed. */
    public List<String> why(DueItem item, Instant now) {
        List<String> why = new ArrayList<>();
        Protocol protocol = item.ground().protocol();
        String rule = ruleOf(item);
        why.add(
                item.kind().settings().stream().anyMatch(protocol::isChanged)
                        ? written.text(
                                MessageKey.DUE_WHY_CHANGED,
                                rule,
                                protocol.version(),
                                item.kind().source())
                        : written.text(MessageKey.DUE_WHY, rule, item.kind().source()));
        Timed<?> asked = item.ground().event();
        if (asked != null) {
            why.add(askedBy(asked, now));
        } else if (item.ground().isAssumed()) {
            why.add(written.word(item.ground().basis()));
        }
        if (item.settled() instanceof Settled.Done done) {
            why.add(written.text(
                    MessageKey.DUE_SETTLED_BY,
                    capitalised(events.of(done.by().event())),
                    figures.clockNear(now, done.by().at())));
        }
        return why;
    }

    private String ruleOf(DueItem item) {
        Object[] values = item.kind().settings().stream()
                .map(setting -> settings.value(setting, item.ground().protocol()))
                .toArray();
        return written.at(Messages.key(item.kind()) + ".rule", values);
    }

    private String askedBy(Timed<?> asked, Instant now) {
        return written.text(MessageKey.DUE_ASKED_BY, events.of(asked.event()), figures.clockNear(now, asked.at()));
    }

    private String settled(DueItem item, Instant now) {
        if (item.settled() instanceof Settled.Needless needless) {
            return written.text(MessageKey.DUE_NEEDLESS, written.word(needless.why()));
        }
        Instant doneAt = item.doneAt().orElseThrow();
        String at = figures.clockNear(now, doneAt);
        return item.wasInTime().orElse(true)
                ? written.text(MessageKey.DUE_DONE_AT, at)
                : written.text(MessageKey.DUE_DONE_LATE, at, figures.shortly(Duration.between(item.dueAt(), doneAt)));
    }

    private String late(DueItem item, Instant now, String dueAt, Duration by) {
        if (by.toMinutes() == 0) {
            return written.text(MessageKey.DUE_JUST_LATE, dueAt);
        }
        return written.text(
                isOverdue(item, now) ? MessageKey.DUE_OVERDUE : MessageKey.DUE_LATE, figures.shortly(by), dueAt);
    }

    private static boolean isOverdue(DueItem item, Instant now) {
        Instant limit = item.hardLimit();
        return limit != null && now.isAfter(limit);
    }

    /** When to do it, in few words: "LATE by 35 min", "by 04:30", "from 18:00". */
    public String onScreen(DueItem item, Instant now) {
        Instant from = item.from();
        Duration late = Duration.between(item.dueAt(), now);
        if (item.state() == DueState.LATE && late.toMinutes() > 0) {
            return written.text(MessageKey.STATION_LATE_BY, figures.shortly(late));
        }
        if (item.state() == DueState.AHEAD && from != null) {
            return written.text(MessageKey.STATION_FROM, figures.clockNear(now, from));
        }
        return item.state() == DueState.LATE || item.state() == DueState.DUE
                ? written.text(MessageKey.CARD_BY, figures.clockNear(now, item.dueAt()))
                : when(item, now);
    }

    /** That a task is quiet for so long. */
    public String putOff(Duration time) {
        return written.text(MessageKey.STATION_PUT_OFF_DONE, figures.shortly(time));
    }

    /** The same for the voice. */
    public String saidPutOff() {
        return spoken.text(MessageKey.STATION_PUT_OFF_DONE);
    }

    private String ahead(DueItem item, Instant now, String dueAt, Duration left) {
        Instant from = item.from();
        return from == null
                ? due(dueAt, left)
                : written.text(MessageKey.DUE_AHEAD, figures.clockNear(now, from), dueAt);
    }

    private String due(String dueAt, Duration left) {
        if (left.toMinutes() == 0) {
            return written.text(MessageKey.DUE_NOW, dueAt);
        }
        return left.isNegative()
                ? written.text(MessageKey.DUE_OVER, dueAt, figures.shortly(left.negated()))
                : written.text(MessageKey.DUE_IN, dueAt, figures.shortly(left));
    }

    private String capitalised(String words) {
        return Sentences.capitalised(words, written.messages().locale());
    }
}
