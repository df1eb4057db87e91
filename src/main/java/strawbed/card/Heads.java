package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.account.Identity;
import strawbed.account.TwinLine;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CardPrinted;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.report.CalfHead;
import strawbed.report.Fact;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** Who a calf is, for the head of its card. */
record Heads(CalfRecord calf, Herd herd, Messages messages, Figures figures) {
    CalfHead ofLiving() {
        Identity identity = identity();
        return head(identity.sex(), twin(), List.of(born(), dam(), birth()));
    }

    CalfHead ofDead(CalfDied died) {
        String sex = identity().sex();
        String beside =
                twin().map(twin -> messages.text(CARD_SEX_AND_TWIN, sex, twin)).orElse(sex);
        return head(
                messages.text(CARD_DEAD),
                Optional.of(beside),
                List.of(fact(CARD_DIED, died(died)), born(), dam(), birth()));
    }

    private CalfHead head(String title, Optional<String> beside, List<Fact> lines) {
        return new CalfHead(identity().number(), calf.id().value(), newestFact(), title, beside, lines);
    }

    /** When it died, and when that was told. */
    private String died(CalfDied died) {
        String when = died.when() == Term.DeathTime.AT_BIRTH
                ? messages.text(CARD_DIED_AT_BIRTH)
                : figures.dayAndClock(died.at());
        return calf.history().stream()
                .filter(entry -> !entry.withdrawn() && entry.recorded().event().equals(died))
                .map(entry -> entry.recorded().recordedAt())
                .reduce((earlier, later) -> later)
                .map(told -> messages.text(CARD_DIED_AND_TOLD, when, told(died, told)))
                .orElse(when);
    }

    private String told(CalfDied died, Instant told) {
        return died.when() == Term.DeathTime.AT_BIRTH
                ? figures.dayAndClock(told)
                : figures.clockAsSeenFrom(died.at(), told);
    }

    private Optional<String> twin() {
        return new TwinLine(messages, figures).of(calf, herd);
    }

    private Fact born() {
        return fact(CARD_BORN, identity().born());
    }

    private Fact dam() {
        return fact(CARD_DAM, identity().dam());
    }

    private Fact birth() {
        return fact(CARD_BIRTH, identity().birth());
    }

    private Identity identity() {
        return new Identity(calf, messages, figures);
    }

    private Fact fact(MessageKey label, String value) {
        return new Fact(messages.text(label), messages.orNotRecorded(value));
    }

    /** The newest fact about the calf, or that took one of its facts back. What was printed changes nothing. */
    private long newestFact() {
        Stream<RecordedEvent> own = calf.history().stream().map(CalfRecord.Entry::recorded);
        boolean isUndone = calf.history().stream().anyMatch(CalfRecord.Entry::withdrawn);
        return Stream.concat(own, isUndone ? withdrawals() : Stream.empty())
                .filter(recorded -> !(recorded.event() instanceof CardPrinted))
                .mapToLong(RecordedEvent::sequence)
                .max()
                .orElse(0);
    }

    private Stream<RecordedEvent> withdrawals() {
        Set<EventId> own =
                calf.history().stream().map(entry -> entry.recorded().id()).collect(Collectors.toSet());
        return herd.history().stream()
                .map(CalfRecord.Entry::recorded)
                .filter(recorded ->
                        recorded.event() instanceof EventWithdrawn withdrawn && own.contains(withdrawn.event()));
    }
}
