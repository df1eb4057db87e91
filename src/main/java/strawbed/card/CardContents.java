package strawbed.card;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import strawbed.account.Identity;
import strawbed.account.TwinLine;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.Caution;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.FirstDose;
import strawbed.report.CalfCard;
import strawbed.text.CautionPhrases;
import strawbed.text.DuePhrases;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** Makes a calf's card from its record. Safe for any thread. */
public final class CardContents {
    /** These are for the maternity pen and were told there; at the hutch they would take the room of tasks. */
    private static final Set<Caution> AT_THE_PEN =
            Set.of(Caution.FRESH_COW, Caution.STRONG_IODINE, Caution.BIRTH_FLUIDS, Caution.LIFTING);

    private CardContents() {}

    /**
     * The card as it stands at this time.
     *
     * @param zone the farm's
     * @param farmName its name; may be blank
     */
    public static CalfCard of(
            CalfRecord calf, Herd herd, Instant now, Messages messages, ZoneId zone, String farmName) {
        Farm farm = Farm.of(herd);
        Figures figures = Figures.written(messages, zone, farm.protocol().units());
        Identity identity = new Identity(calf, messages, figures);
        List<DueItem> due = DueList.of(calf, farm, now);
        CautionPhrases cautions = new CautionPhrases(messages);
        return new CalfCard(
                identity.number(),
                calf.id().value(),
                identity.sex(),
                identity.born(),
                identity.dam(),
                identity.birth(),
                new TwinLine(messages, figures).of(calf, herd),
                new Facts(calf, FirstDose.of(calf, farm.protocolFor(calf), now), messages, figures).all(),
                new FirstDayLine(calf, now, messages, figures).timeline(due),
                new Tasks(now, new DuePhrases(messages, zone)).of(due),
                Caution.of(calf, herd).stream()
                        .filter(caution -> !AT_THE_PEN.contains(caution))
                        .map(cautions::brief)
                        .toList(),
                messages.text(
                        MessageKey.CARD_PRINTED,
                        figures.dayAndClock(now),
                        farm.protocolFor(calf).version()),
                farmName);
    }
}
