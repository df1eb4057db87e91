package strawbed.text;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.care.DueState;

/** What is due and how a calf is, in one sentence: the answer to a question. Immutable, safe for any thread. */
public final class CareAnswers {
    /** What an answer counts: more than that nobody keeps in mind. */
    private static final Duration SOON = Duration.ofHours(1);

    private final Wording wording;
    private final Figures figures;
    private final CalfNames names;

    private CareAnswers(Wording wording, ZoneId zone) {
        this.wording = wording;
        this.figures = new Figures(wording, zone);
        this.names = new CalfNames(wording);
    }

    /**
     * For the eye.
     *
     * @param zone the farm's
     */
    public static CareAnswers written(Messages messages, ZoneId zone) {
        return new CareAnswers(new Written(messages), zone);
    }

    /** For the ear. */
    public static CareAnswers spoken(Messages messages, ZoneId zone) {
        return new CareAnswers(new Spoken(messages), zone);
    }

    /** What the herd's list comes to in one sentence: its first open item, and how many more the next hour has. */
    public String due(List<DueItem> items, Herd herd, Instant now) {
        DueItem first = items.stream()
                .filter(item -> item.state().isPressing() || item.state() == DueState.AHEAD)
                .findFirst()
                .orElse(null);
        if (first == null) {
            return wording.text(MessageKey.ANSWER_DUE_NOTHING);
        }
        MessageKey key = switch (first.state()) {
            case LATE -> MessageKey.ANSWER_DUE_LATE;
            case AHEAD -> MessageKey.ANSWER_DUE_AHEAD;
            case DUE, MISSED, DONE, NOT_NEEDED -> MessageKey.ANSWER_DUE_NEXT;
        };
        String answer = wording.text(key, name(first, herd), wording.word(first.kind()), saidWhen(first, now));
        Instant end = now.plus(SOON);
        long more = items.stream()
                .filter(item -> !item.equals(first) && isBefore(item, end))
                .count();
        return more == 0 ? answer : wording.text(MessageKey.ANSWER_DUE_MORE, answer, capitalised(figures.number(more)));
    }

    private static boolean isBefore(DueItem item, Instant end) {
        return item.state().isPressing()
                ? item.dueAt().isBefore(end)
                : item.state() == DueState.AHEAD && item.from().isBefore(end);
    }

    /** How a calf is in one sentence: sex, birth, what it was fed, its navel, and what comes next. */
    public String calf(CalfRecord calf, List<DueItem> items, Instant now) {
        String name = capitalised(names.of(calf));
        String facts = String.join(", ", facts(calf, now));
        return items.stream()
                .filter(item -> item.calf().equals(calf.id()))
                .filter(item -> item.state().isPressing() || item.state() == DueState.AHEAD)
                .findFirst()
                .map(next -> wording.text(
                        next.state() == DueState.LATE ? MessageKey.ANSWER_CALF_LATE : MessageKey.ANSWER_CALF_DUE,
                        name,
                        facts,
                        wording.word(next.kind()),
                        saidWhen(next, now)))
                .orElseGet(() -> wording.text(MessageKey.ANSWER_CALF_IS, name, facts));
    }

    private List<String> facts(CalfRecord calf, Instant now) {
        List<String> facts = new ArrayList<>();
        calf.sex().map(wording::word).ifPresent(facts::add);
        calf.birth()
                .map(birth -> wording.text(
                        calf.isBirthOnlyFound() ? MessageKey.EVENT_FOUND : MessageKey.EVENT_BORN,
                        figures.timeNear(now, birth.midpoint())))
                .ifPresent(facts::add);
        if (!calf.isAlive()) {
            facts.add(wording.text(MessageKey.ANSWER_CALF_DIED));
            return facts;
        }
        if (calf.firstFeed().isPresent()) {
            facts.add(wording.text(MessageKey.ANSWER_CALF_FED, figures.taken(calf.feeds())));
        } else {
            facts.add(
                    wording.text(calf.nursings().isEmpty() ? MessageKey.ANSWER_CALF_NOT_FED : MessageKey.EVENT_NURSED));
        }
        facts.add(wording.text(
                calf.dips().isEmpty() ? MessageKey.ANSWER_CALF_NOT_DIPPED : MessageKey.ANSWER_CALF_DIPPED));
        return facts;
    }

    private String saidWhen(DueItem item, Instant now) {
        Instant from = item.from();
        if (item.state() == DueState.AHEAD && from != null) {
            return wording.text(MessageKey.ANSWER_DUE_FROM, figures.clockNear(now, from));
        }
        return wording.text(
                item.dueAt().isBefore(now) ? MessageKey.ANSWER_DUE_SINCE : MessageKey.ANSWER_DUE_BY,
                figures.clockNear(now, item.dueAt()));
    }

    private String name(DueItem item, Herd herd) {
        return herd.calf(item.calf())
                .map(calf -> names.of(calf, herd))
                .orElseGet(() -> wording.text(MessageKey.CALF_WITHOUT_NUMBER));
    }

    /** That a task is late. */
    public String late(DueItem item, Herd herd) {
        return wording.text(MessageKey.STATION_LATE, name(item, herd), wording.word(item.kind()));
    }

    private String capitalised(String words) {
        return Sentences.capitalised(words, wording.messages().locale());
    }
}
