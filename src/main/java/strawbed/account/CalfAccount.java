package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.AgeStart;
import strawbed.care.Caution;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.FirstDose;
import strawbed.care.Weather;
import strawbed.text.CautionPhrases;
import strawbed.text.DuePhrases;
import strawbed.text.EventPhrases;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.SettingPhrases;

/** Puts the account of a calf together. */
public final class CalfAccount {
    private final CalfRecord calf;
    private final Herd herd;
    private final Farm farm;
    private final Instant now;
    private final Messages messages;
    private final ZoneId zone;
    private final Figures figures;

    private CalfAccount(CalfRecord calf, Herd herd, Instant now, Messages messages, ZoneId zone) {
        this.calf = calf;
        this.herd = herd;
        this.farm = Farm.of(herd);
        this.now = now;
        this.messages = messages;
        this.zone = zone;
        this.figures = Figures.written(messages, zone, farm.protocol().units());
    }

    /**
     * The account as it stands at this time; parts without a line are left out.
     *
     * @param zone the farm's
     */
    public static List<Part> of(CalfRecord calf, Herd herd, Instant now, Messages messages, ZoneId zone) {
        return new CalfAccount(calf, herd, now, messages, zone).parts();
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        add(parts, ACCOUNT_WHO, who());
        add(parts, ACCOUNT_CAUTIONS, cautions());
        add(parts, ACCOUNT_ENOUGH, enough());
        add(parts, ACCOUNT_CAME, came());
        add(parts, ACCOUNT_HAPPENED, history());
        add(parts, ACCOUNT_DUE, due());
        return List.copyOf(parts);
    }

    private void add(List<Part> parts, MessageKey title, List<Line> lines) {
        if (!lines.isEmpty()) {
            parts.add(new Part(messages.text(title), lines));
        }
    }

    private List<Line> who() {
        Identity identity = new Identity(calf, messages, figures);
        List<Line> lines = new ArrayList<>();
        lines.add(line(ACCOUNT_NUMBER, identity.number()));
        lines.add(line(ACCOUNT_SEX, calf.sex().map(messages::word).orElse("")));
        lines.add(line(ACCOUNT_DAM, identity.dam()));
        lines.add(line(ACCOUNT_BREED, calf.breed().orElse("")));
        lines.add(born(identity));
        lines.add(line(ACCOUNT_BIRTH, identity.birth()));
        new TwinLine(messages, figures).of(calf, herd).ifPresent(twin -> lines.add(line(ACCOUNT_TWIN, twin)));
        lines.add(line(ACCOUNT_PLACE, calf.place().orElse("")));
        return lines;
    }

    private Line born(Identity identity) {
        return AgeStart.of(calf)
                .filter(AgeStart::isEstimated)
                .map(start -> new Line(
                        messages.text(ACCOUNT_BORN),
                        orNotRecorded(identity.born()),
                        List.of(messages.word(start.basis()))))
                .orElseGet(() -> line(ACCOUNT_BORN, identity.born()));
    }

    private List<Line> cautions() {
        CautionPhrases phrases = new CautionPhrases(messages);
        return Caution.of(calf, herd).stream()
                .map(caution -> Line.of(phrases.title(caution), messages.word(caution)))
                .toList();
    }

    private List<Line> history() {
        return new History(
                        calf,
                        messages,
                        figures,
                        new EventPhrases(messages, zone, farm.protocol().units()))
                .lines();
    }

    private List<Line> enough() {
        FirstDose dose = FirstDose.of(calf, farm.protocolFor(calf), now);
        List<Line> lines =
                new ArrayList<>(new Enough(dose, farm, messages, figures, new SettingPhrases(messages, zone)).lines());
        lines.add(new Immunity(calf, farm, messages, figures).line());
        return lines;
    }

    private List<Line> came() {
        return new Birth(calf, herd, farm, messages, figures, new SettingPhrases(messages, zone))
                .lines(Weather.of(calf, farm, now));
    }

    private List<Line> due() {
        DuePhrases phrases = new DuePhrases(messages, zone);
        return DueList.of(calf, farm, now).stream()
                .map(item -> due(item, phrases))
                .toList();
    }

    private Line due(DueItem item, DuePhrases phrases) {
        return new Line(phrases.what(item), phrases.when(item, now), phrases.why(item, now));
    }

    private Line line(MessageKey label, String text) {
        return Line.of(messages.text(label), orNotRecorded(text));
    }

    private String orNotRecorded(String text) {
        return text.isEmpty() ? messages.text(ACCOUNT_NOT_RECORDED) : text;
    }
}
