package strawbed.exchange.ade;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.TreatmentNoted;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;

/** Events of a calf that are events of the standard too: weighings, treatments, its death. */
final class CalfEvents {
    private final AdeSource source;
    private final Identifiers identifiers;

    CalfEvents(AdeSource source, Identifiers identifiers) {
        this.source = source;
        this.identifiers = identifiers;
    }

    List<Resource> resources(CalfFacts calf) {
        List<Resource> resources = new ArrayList<>();
        for (RecordedEvent recorded : calf.counting()) {
            if (recorded.event() instanceof CalfWeighed weighed && weighed.method() != null) {
                resources.add(weighing(calf, recorded, weighed, weighed.method()));
            } else if (recorded.event() instanceof NavelDipped dipped) {
                resources.add(dip(calf, recorded, dipped));
            } else if (recorded.event() instanceof TreatmentNoted noted) {
                resources.add(treatment(calf, recorded, noted));
            }
        }
        calf.death().ifPresent(death -> resources.add(death(calf, death.by(), death.value())));
        return resources;
    }

    private Resource weighing(CalfFacts calf, RecordedEvent recorded, CalfWeighed weighed, Term.WeighingMethod method) {
        Fields weight = new Fields()
                .number("measurement", weighed.weight().amount())
                .text("units", AdeWords.unit(weighed.weight().unit()))
                .text("method", AdeWords.method(method));
        return resource(
                AdeType.WEIGHT,
                recorded,
                begin(AdeType.WEIGHT, calf, recorded, recorded.occurredAt(), Optional.empty())
                        .object("weight", weight));
    }

    /** The standard counts procedures among treatments; it has no field for the strength of what was used. */
    private Resource dip(CalfFacts calf, RecordedEvent recorded, NavelDipped dipped) {
        Optional<String> strength = Optional.ofNullable(dipped.percent())
                .map(BigDecimal::toPlainString)
                .map(said -> said + " percent");
        Optional<Fields> agent =
                Optional.ofNullable(dipped.agent()).map(known -> new Fields().text("name", known.word()));
        return resource(
                AdeType.TREATMENT,
                recorded,
                begin(AdeType.TREATMENT, calf, recorded, recorded.occurredAt(), strength)
                        .object("medicine", agent)
                        .text("procedure", "navel dipping")
                        .text("site", "navel"));
    }

    /** That something was given is worth telling, also where nobody wrote what: it can mean a withdrawal period. */
    private Resource treatment(CalfFacts calf, RecordedEvent recorded, TreatmentNoted noted) {
        String remark = noted.kind().word() + " said to be given; medicine, dose and withdrawal period not recorded";
        return resource(
                AdeType.TREATMENT,
                recorded,
                begin(AdeType.TREATMENT, calf, recorded, recorded.occurredAt(), Optional.of(remark)));
    }

    /** Neither reason nor method of a death is on record, so neither is told. */
    private Resource death(CalfFacts calf, RecordedEvent recorded, CalfDied died) {
        return resource(
                AdeType.DEATH,
                recorded,
                begin(
                        AdeType.DEATH,
                        calf,
                        recorded,
                        died.at(),
                        Optional.of("died " + died.when().word())));
    }

    private Fields begin(AdeType type, CalfFacts calf, RecordedEvent recorded, Instant at, Optional<String> remark) {
        String id = recorded.id().toString();
        return Resource.begin(type, source, id, List.of(recorded))
                .text("id", id)
                .time("eventDateTime", Optional.of(at))
                .text("remark", remark)
                .object("animal", identifiers.main(calf));
    }

    private static Resource resource(AdeType type, RecordedEvent recorded, Fields fields) {
        return Resource.of(type, fields, List.of(recorded));
    }
}
