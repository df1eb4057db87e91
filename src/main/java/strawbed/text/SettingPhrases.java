package strawbed.text;

import static strawbed.text.MessageKey.AND_LAST;
import static strawbed.text.MessageKey.SETTING_NONE;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.protocol.Allowed;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** How the value of a setting reads: "2 h", "30 min, 1 h, 2 h and 4 h", "100 °F". Immutable, safe for any thread. */
public final class SettingPhrases {
    private final Wording wording;
    private final Figures figures;

    /** @param zone the farm's */
    public SettingPhrases(Messages messages, ZoneId zone) {
        this.wording = new Written(messages);
        this.figures = new Figures(wording, zone);
    }

    /** The value that a setting has in a protocol. */
    public String value(Setting setting, Protocol protocol) {
        if (setting == Setting.WATCH_MINUTES) {
            List<String> times = protocol.watch().stream().map(figures::exactly).toList();
            String last = times.get(times.size() - 1);
            return times.size() == 1
                    ? last
                    : wording.text(AND_LAST, String.join(", ", times.subList(0, times.size() - 1)), last);
        }
        if (!(setting.allowed() instanceof Allowed.Amount)) {
            return protocol.value(setting);
        }
        String name = setting.name();
        BigDecimal number = protocol.number(setting);
        if (name.endsWith("_SECONDS")
                || name.endsWith("_MINUTES")
                || name.endsWith("_HOURS")
                || name.endsWith("_DAYS")) {
            return figures.exactly(protocol.time(setting));
        }
        if (name.endsWith("_FAHRENHEIT")) {
            return figures.temperature(new Temperature(number, TemperatureUnit.FAHRENHEIT));
        }
        if (number.signum() == 0 && (setting == Setting.IODINE_PERCENT || setting == Setting.CHLORHEXIDINE_PERCENT)) {
            return wording.text(SETTING_NONE);
        }
        return name.endsWith("_PERCENT") ? figures.percent(number) : figures.number(number);
    }
}
