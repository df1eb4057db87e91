package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.statement.SaidFact;

/** Said facts in a row, with the times that were said. */
final class FactPhrases {
    private final Wording wording;
    private final Figures figures;
    private final EventPhrases events;

    FactPhrases(Wording wording, ZoneId zone) {
        this.wording = wording;
        this.figures = new Figures(wording, zone);
        this.events = new EventPhrases(wording, zone);
    }

    /** Empty for no facts. A time that all facts share stands once, behind them. */
    String of(List<SaidFact> facts, Instant now) {
        List<SaidFact> others =
                facts.stream().filter(fact -> !tellsItsTime(fact.event())).toList();
        Set<Instant> times = others.stream()
                .filter(SaidFact::timeWasSaid)
                .map(SaidFact::occurredAt)
                .collect(Collectors.toSet());
        boolean shared = times.size() == 1 && others.stream().allMatch(SaidFact::timeWasSaid);
        boolean atTheEnd = shared && others.size() > 1;
        String row = facts.stream()
                .map(fact -> one(fact, now, !atTheEnd))
                .reduce((before, fact) -> wording.text(FACTS_JOIN, before, fact))
                .orElse("");
        return atTheEnd ? wording.text(AT_THE_END, row, time(times.iterator().next(), now)) : row;
    }

    private String one(SaidFact fact, Instant now, boolean withTime) {
        String phrase = events.of(fact.event());
        if (!fact.timeWasSaid() || isWindow(fact.event())) {
            return phrase;
        }
        if (tellsItsTime(fact.event())) {
            return wording.text(WITH_TIME, phrase, figures.ago(Duration.between(fact.occurredAt(), now)));
        }
        return withTime ? wording.text(WITH_TIME, phrase, time(fact.occurredAt(), now)) : phrase;
    }

    private String time(Instant at, Instant now) {
        return wording.text(TIME_SAID, figures.ago(Duration.between(at, now)), figures.timeNear(now, at));
    }

    private static boolean isWindow(Event event) {
        return (event instanceof Event.CalfBorn born && born.when() instanceof When.Between)
                || (event instanceof Event.CalfFound found && found.when() instanceof When.Between);
    }

    private static boolean tellsItsTime(Event event) {
        return event instanceof Event.CalfBorn
                || event instanceof Event.CalfFound
                || (event instanceof Event.CalfDied died && died.when() == Term.DeathTime.LATER);
    }
}
