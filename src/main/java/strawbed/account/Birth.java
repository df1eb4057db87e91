package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.BirthOutcome;
import strawbed.care.EaseClass;
import strawbed.care.Farm;
import strawbed.care.Freemartin;
import strawbed.care.Vigour;
import strawbed.care.Weather;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.protocol.Setting;
import strawbed.text.Figures;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.text.SettingPhrases;

/** How a calf came into the world, what became of it, and which of its signs are normal. */
record Birth(CalfRecord calf, Herd herd, Farm farm, Messages messages, Figures figures, SettingPhrases settings) {
    List<Line> lines(Optional<Weather> weather) {
        List<Line> lines = new ArrayList<>();
        lines.add(outcome());
        lines.add(ease());
        Freemartin.chanceInPercent(calf, herd).ifPresent(chance -> lines.add(freemartin(chance)));
        lines.add(signs());
        weather.ifPresent(air -> lines.add(air(air)));
        return lines;
    }

    private Line outcome() {
        List<String> reasons = new ArrayList<>();
        reasons.add(judgements()
                .rule(ACCOUNT_OUTCOME_RULE, farm.protocolFor(calf), settings, Setting.STILLBIRTH_WITHIN_HOURS));
        return judgements()
                .line(
                        ACCOUNT_OUTCOME,
                        BirthOutcome.of(calf, farm),
                        outcome -> outcome.isAssumed()
                                ? messages.text(ACCOUNT_BY_ASSUMED_AGE, messages.word(outcome.kind()))
                                : messages.word(outcome.kind()),
                        reasons);
    }

    private Line ease() {
        return judgements()
                .line(ACCOUNT_EASE, EaseClass.of(calf), messages::word, List.of(messages.text(ACCOUNT_EASE_WHY)));
    }

    private Line freemartin(BigDecimal chance) {
        return new Line(
                messages.text(ACCOUNT_FREEMARTIN),
                messages.text(ACCOUNT_FREEMARTIN_CHANCE, figures.percent(chance.setScale(0, RoundingMode.HALF_UP))),
                List.of(messages.text(ACCOUNT_FREEMARTIN_WHY)));
    }

    private Line signs() {
        Vigour vigour = Vigour.of(calf, farm);
        List<String> lists = new ArrayList<>();
        list(vigour, Vigour.State.NORMAL, ACCOUNT_SIGNS_NORMAL, lists);
        list(vigour, Vigour.State.NOT_NORMAL, ACCOUNT_SIGNS_NOT_NORMAL, lists);
        list(vigour, Vigour.State.NOT_RECORDED, ACCOUNT_SIGNS_NOT_RECORDED, lists);
        list(vigour, Vigour.State.AGE_UNKNOWN, ACCOUNT_SIGNS_AGE_UNKNOWN, lists);
        lists.add(messages.text(ACCOUNT_SIGNS_WHY));
        return new Line(
                messages.text(ACCOUNT_SIGNS),
                vigour.judged() == 0
                        ? messages.text(ACCOUNT_NOT_RECORDED)
                        : messages.text(
                                ACCOUNT_SIGNS_OF,
                                figures.number(BigDecimal.valueOf(vigour.normal())),
                                figures.number(BigDecimal.valueOf(vigour.judged()))),
                lists);
    }

    private void list(Vigour vigour, Vigour.State state, MessageKey key, List<String> lists) {
        List<Vigour.Seen> seen = vigour.with(state);
        if (!seen.isEmpty()) {
            lists.add(messages.text(
                    key, seen.stream().map(each -> messages.word(each.sign())).collect(Collectors.joining(", "))));
        }
    }

    private Line air(Weather weather) {
        List<String> told = new ArrayList<>();
        told.add(figures.temperature(weather.reading().event().temperature()));
        BigDecimal index = weather.heatIndex();
        if (index != null) {
            told.add(messages.text(ACCOUNT_HEAT_INDEX, figures.number(index.setScale(1, RoundingMode.HALF_UP))));
        }
        told.add(messages.word(weather.load()));
        return new Line(
                messages.text(ACCOUNT_AIR),
                String.join(", ", told),
                List.of(
                        messages.text(
                                ACCOUNT_CRITICAL_WHY,
                                figures.temperature(
                                        new Temperature(weather.criticalFahrenheit(), TemperatureUnit.FAHRENHEIT))),
                        judgements()
                                .rule(
                                        ACCOUNT_HEAT_RULE,
                                        farm.protocolFor(calf),
                                        settings,
                                        Setting.HEAT_INDEX_AT_RISK,
                                        Setting.HEAT_INDEX_MARKED)));
    }

    private Judgements judgements() {
        return new Judgements(messages);
    }
}
