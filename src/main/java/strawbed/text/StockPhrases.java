package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import strawbed.care.StoredColostrum;
import strawbed.event.Event.ColostrumStored;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;
import strawbed.protocol.Units;

/** Colostrum in stock, in words. Immutable, safe for any thread. */
public final class StockPhrases {
    private final Messages messages;
    private final Figures figures;
    private final SettingPhrases settings;

    /** @param zone the farm's */
    public StockPhrases(Messages messages, ZoneId zone, Units units) {
        this.messages = messages;
        this.figures = Figures.written(messages, zone, units);
        this.settings = new SettingPhrases(messages, zone);
    }

    /** "batch 9". */
    public String name(StoredColostrum colostrum) {
        return messages.text(STOCK_BATCH, colostrum.stored().event().batch());
    }

    /** "3 liters left, 25 percent Brix: good for a first feed; keeps until Thu 05:10". */
    public String stands(StoredColostrum colostrum, Instant now) {
        ColostrumStored stored = colostrum.stored().event();
        List<String> parts = new ArrayList<>();
        parts.add(left(colostrum));
        if (stored.treatment() != null) {
            parts.add(messages.word(stored.treatment()));
        }
        if (stored.brix() != null) {
            parts.add(messages.text(
                    ACCOUNT_VALUE_IS,
                    messages.text(ACCOUNT_BRIX, figures.percent(stored.brix())),
                    colostrum
                            .grade()
                            .value()
                            .map(messages::word)
                            .orElseGet(() -> messages.text(
                                    ACCOUNT_NOT_JUDGED,
                                    messages.word(colostrum.grade().whyNot().orElseThrow())))));
        }
        String time = figures.clockNear(now, colostrum.keepsUntil());
        parts.add(messages.text(
                switch (colostrum.stateAt(now)) {
                    case KEEPS -> STOCK_KEEPS_UNTIL;
                    case USE_SOON -> STOCK_USE_BY;
                    case PAST_ITS_TIME -> STOCK_PAST_SINCE;
                },
                time));
        return String.join("; ", parts);
    }

    private String left(StoredColostrum colostrum) {
        if (colostrum.offeredLitres().signum() == 0) {
            return messages.text(
                    STOCK_LEFT, figures.volume(colostrum.stored().event().volume()));
        }
        return colostrum
                .leftLitres()
                .value()
                .map(left -> messages.text(
                        STOCK_LEFT,
                        figures.volume(new Volume(left.setScale(1, RoundingMode.HALF_UP), VolumeUnit.LITRE))))
                .orElseGet(() -> messages.text(STOCK_LEFT_UNKNOWN));
    }

    /** The limits that hold for it, with their sources. */
    public List<String> why(StoredColostrum colostrum) {
        List<String> why = new ArrayList<>();
        if (colostrum.isFrozen()) {
            why.add(rule(STOCK_FREEZER_RULE, colostrum, Setting.FREEZER_DAYS));
            why.add(rule(STOCK_THAW_RULE, colostrum, Setting.THAW_WATER_MOST_FAHRENHEIT));
        } else {
            why.add(rule(STOCK_REFRIGERATOR_RULE, colostrum, Setting.REFRIGERATOR_HOURS, Setting.ROOM_MINUTES));
        }
        if (colostrum.isHeatTreated()) {
            why.add(rule(
                    STOCK_HEAT_RULE,
                    colostrum,
                    Setting.HEAT_TREATMENT_MOST_FAHRENHEIT,
                    Setting.HEAT_TREATMENT_LEAST_MINUTES));
        }
        return why;
    }

    private String rule(MessageKey rule, StoredColostrum colostrum, Setting... values) {
        Protocol protocol = colostrum.protocol();
        Object[] words = List.of(values).stream()
                .map(setting -> settings.value(setting, protocol))
                .toArray();
        return messages.text(DUE_WHY, messages.text(rule, words), Setting.sources(List.of(values)));
    }
}
