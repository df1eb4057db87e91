package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.care.AgeStart;
import strawbed.care.ColostrumQuality;
import strawbed.care.ColostrumTiming;
import strawbed.care.FirstDose;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Term;
import strawbed.protocol.Setting;
import strawbed.report.Fact;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** What was measured, in the order in which a card is read. What is not on record is blank. */
record Facts(CalfRecord calf, FirstDose dose, Messages messages, Figures figures) {
    List<Fact> all() {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact(CARD_FIRST_FEED, firstFeed()));
        facts.add(fact(CARD_FED, fed()));
        facts.add(fact(CARD_BRIX, calf.brix().map(this::brix).orElse("")));
        facts.addAll(lasting());
        return facts;
    }

    /** What stays true of it. */
    List<Fact> lasting() {
        List<Fact> facts = new ArrayList<>();
        facts.add(fact(CARD_WEIGHT, weight()));
        facts.add(fact(CARD_TAG, tag(Term.TagScheme.FARM)));
        String official = tag(Term.TagScheme.OFFICIAL);
        if (!official.isEmpty()) {
            facts.add(fact(CARD_OFFICIAL_TAG, official));
        }
        return facts;
    }

    private Fact fact(MessageKey label, String value) {
        return new Fact(messages.text(label), messages.orNotRecorded(value));
    }

    private String firstFeed() {
        return calf.firstFeed()
                .map(feed -> {
                    String taken = figures.taken(List.of(feed));
                    return dose.ageAtFirstFeed()
                            .value()
                            .map(age -> messages.text(
                                    CARD_FIRST_FEED_BAND,
                                    taken,
                                    age(age),
                                    messages.word(ColostrumTiming.of(age, dose.protocol()))))
                            .orElse(taken);
                })
                .orElse("");
    }

    private String age(Duration age) {
        return messages.text(
                switch (AgeStart.of(calf).orElseThrow().basis()) {
                    case BORN -> CARD_AFTER_BIRTH;
                    case BORN_IN_WINDOW -> CARD_ABOUT_AFTER_BIRTH;
                    case FOUND -> CARD_AFTER_FOUND;
                    case OPENED -> CARD_AFTER_OPENED;
                },
                figures.shortly(age));
    }

    private String fed() {
        List<Feed> feeds =
                calf.feeds().stream().filter(feed -> feed.litres().signum() > 0).toList();
        if (feeds.isEmpty()) {
            return calf.nursings().isEmpty() ? "" : messages.text(CARD_NURSED);
        }
        String total = figures.taken(feeds);
        String fed = feeds.size() == 1
                ? total
                : messages.text(CARD_FED_OFTEN, total, figures.number(BigDecimal.valueOf(feeds.size())));
        return calf.nursings().isEmpty() ? fed : messages.text(CARD_AND_NURSED, fed);
    }

    /** By its class; what is out of the ordinary stands there as it was said, without one. */
    private String brix(Timed<ColostrumTestedByBrix> tested) {
        BigDecimal brix = tested.event().brix();
        return new ColostrumQuality(new ColostrumQuality.Test.Brix(brix), false, dose.protocol())
                .grade()
                .value()
                .map(grade -> messages.text(
                        switch (grade) {
                            case GOOD -> CARD_BRIX_GOOD;
                            case MIDDLE -> CARD_BRIX_MIDDLE;
                            case LOW, BELOW_GOOD -> CARD_BRIX_LOW;
                        },
                        figures.number(brix),
                        figures.number(dose.protocol().number(Setting.GOOD_FROM_BRIX_PERCENT)),
                        figures.number(dose.protocol().number(Setting.LOW_BELOW_BRIX_PERCENT))))
                .orElseGet(() -> messages.text(CARD_BRIX_ODD, figures.number(brix)));
    }

    private String weight() {
        return calf.last(CalfWeighed.class)
                .map(Timed::event)
                .map(weighed -> {
                    String weight = figures.mass(weighed.weight());
                    return Optional.ofNullable(weighed.method())
                            .map(method -> messages.text(EVENT_AND, weight, messages.word(method)))
                            .orElse(weight);
                })
                .orElse("");
    }

    private String tag(Term.TagScheme scheme) {
        return calf.tags().stream()
                .map(Timed::event)
                .filter(tag -> tag.scheme() == scheme)
                .map(EarTagFitted::number)
                .reduce((earlier, later) -> later)
                .map(number -> scheme == Term.TagScheme.OFFICIAL ? figures.officialTag(number) : number)
                .orElse("");
    }
}
