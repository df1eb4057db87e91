package strawbed.care;

import strawbed.measure.Temperature;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** How warm colostrum was fed, by the farm's limits; both limits are still fitting. */
public enum FeedWarmth {
    COOL,
    FITTING,
    HOT;

    public static FeedWarmth of(Temperature fed, Protocol protocol) {
        if (fed.inFahrenheit().compareTo(protocol.number(Setting.FEED_COOL_BELOW_FAHRENHEIT)) < 0) {
            return COOL;
        }
        return fed.inFahrenheit().compareTo(protocol.number(Setting.FEED_HOT_ABOVE_FAHRENHEIT)) > 0 ? HOT : FITTING;
    }
}
