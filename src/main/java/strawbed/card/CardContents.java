package strawbed.card;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import strawbed.account.Identity;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Timed;
import strawbed.care.Caution;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.FirstDose;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CardPrinted;
import strawbed.protocol.Protocol;
import strawbed.report.CalfCard;
import strawbed.report.CalfPage;
import strawbed.report.CardFoot;
import strawbed.report.CardWords;
import strawbed.report.Fact;
import strawbed.report.RecordSheet;
import strawbed.text.CautionPhrases;
import strawbed.text.DuePhrases;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** Makes a living calf's card, or a dead one's record sheet, from its record. Immutable, safe for any thread. */
public final class CardContents {
    /** These are for the maternity pen and were told there; at the hutch they would take the room of tasks. */
    private static final Set<Caution> AT_THE_PEN =
            Set.of(Caution.FRESH_COW, Caution.STRONG_IODINE, Caution.BIRTH_FLUIDS, Caution.LIFTING);

    private final CalfRecord calf;
    private final Herd herd;
    private final Farm farm;
    private final Protocol protocol;
    private final Instant now;
    private final Messages messages;
    private final ZoneId zone;
    private final Figures figures;
    private final CardWords words;

    private CardContents(CalfRecord calf, Herd herd, Instant now, Messages messages, ZoneId zone) {
        this.calf = calf;
        this.herd = herd;
        this.farm = Farm.of(herd);
        this.protocol = farm.protocolFor(calf);
        this.now = now;
        this.messages = messages;
        this.zone = zone;
        this.figures = Figures.written(messages, zone, farm.protocol().units());
        this.words = new CardPhrases(messages);
    }

    /**
     * The card as it stands at this time.
     *
     * @param zone the farm's
     * @param farmName its name; may be blank
     */
    public static CalfPage of(
            CalfRecord calf, Herd herd, Instant now, Messages messages, ZoneId zone, String farmName, Print print) {
        CardContents contents = new CardContents(calf, herd, now, messages, zone);
        CardFoot foot = contents.foot(farmName, print);
        return calf.death()
                .<CalfPage>map(died -> contents.recordSheet(died, foot))
                .orElseGet(() -> contents.card(foot));
    }

    private CalfCard card(CardFoot foot) {
        List<DueItem> due = DueList.of(calf, farm, now);
        CautionPhrases cautions = new CautionPhrases(messages);
        return new CalfCard(
                title(CARD_TITLE),
                heads().ofLiving(),
                facts().all(),
                new FirstDayLine(calf, now, messages, figures).timeline(due),
                new Tasks(now, new DuePhrases(messages, zone)).of(due),
                Caution.of(calf, herd).stream()
                        .filter(caution -> !AT_THE_PEN.contains(caution))
                        .map(cautions::brief)
                        .toList(),
                foot,
                words);
    }

    private RecordSheet recordSheet(CalfDied died, CardFoot foot) {
        EventPhrases phrases = new EventPhrases(messages, zone, farm.protocol().units());
        Recorded recorded = new Recorded(calf, messages, figures, phrases);
        List<Fact> facts = new ArrayList<>(recorded.lacking());
        facts.addAll(facts().lasting());
        return new RecordSheet(title(CARD_RECORD_TITLE), heads().ofDead(died), recorded.lines(), facts, foot, words);
    }

    private Heads heads() {
        return new Heads(calf, herd, messages, figures);
    }

    private Facts facts() {
        return new Facts(calf, FirstDose.of(calf, protocol, now), messages, figures);
    }

    private String title(MessageKey title) {
        return messages.text(title, new Identity(calf, messages, figures).number());
    }

    private CardFoot foot(String farmName, Print print) {
        String when = figures.dayAndClock(now);
        Integer number = print.number();
        return new CardFoot(
                number == null ? messages.text(CARD_COPY, when) : messages.text(CARD_PRINT, number(number), when),
                number == null
                        ? ""
                        : calf.prints().stream()
                                .reduce((earlier, later) -> later)
                                .map(this::replaces)
                                .orElse(""),
                messages.text(CARD_PROTOCOL, protocol.version()),
                farmName);
    }

    private String replaces(Timed<CardPrinted> earlier) {
        return messages.text(
                CARD_REPLACES, number(earlier.event().number()), figures.clockAsSeenFrom(now, earlier.at()));
    }

    private String number(int number) {
        return figures.number(BigDecimal.valueOf(number));
    }
}
