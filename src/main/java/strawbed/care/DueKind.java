package strawbed.care;

import static strawbed.protocol.Setting.*;

import java.util.List;
import strawbed.protocol.Setting;

/** What can be due for a calf, most urgent for the calf first, with the settings that its rule is made of. */
public enum DueKind {
    /** A calf that gasped or did not breathe is looked at until it breathes well. */
    BREATHING_RECHECK(BREATHING_AGAIN_MINUTES),
    /** The herd veterinarian is called for a calf that does not breathe, gasps or is very cold. */
    CALL_VET(VERY_COLD_BELOW_FAHRENHEIT),
    /** The first breath is seen. */
    BREATHING_CHECK(FIRST_BREATH_SECONDS),
    /** A cold calf's temperature is taken until it is warm twice. */
    COLD_RECHECK(COLD_BELOW_FAHRENHEIT, TEMPERATURE_AGAIN_MINUTES, WARM_FROM_FAHRENHEIT),
    ON_BREASTBONE(ON_BREASTBONE_MINUTES),
    FIRST_COLOSTRUM(TARGET_WITHIN_HOURS, ACCEPTABLE_WITHIN_HOURS, LATE_WITHIN_HOURS),
    /** After a hard birth temperature and suck are checked. */
    WATCH_CHECK(WATCH_MINUTES),
    /** A watched calf is seen to suck; else somebody must help. */
    SUCK(NO_SUCK_HOURS),
    DRY(DRY_MINUTES),
    /** Cold or hot weather asks for shelter. */
    SHELTER(HEAT_INDEX_AT_RISK),
    NAVEL_DIP(FIRST_DIP_MINUTES, IODINE_PERCENT, CHLORHEXIDINE_PERCENT),
    STAND(STANDING_MINUTES),
    SECOND_COLOSTRUM(SECOND_FEED_FROM_HOURS, SECOND_FEED_UNTIL_HOURS),
    /** The navel is dipped again around a feed. */
    NAVEL_REDIP(DIP_BEFORE_FEED_MINUTES, DIP_AFTER_FEED_MINUTES, DIP_AROUND_FEEDS_UNTIL_HOURS),
    /** The navel is dipped once more later. */
    REPEAT_DIP(REPEAT_DIP_FROM_HOURS, REPEAT_DIP_UNTIL_HOURS),
    /** The navel is looked at. */
    NAVEL_LOOK(LOOK_AT_NAVEL_FROM_HOURS, LOOK_AT_NAVEL_UNTIL_HOURS),
    TAG(TAG_AND_WEIGH_HOURS),
    WEIGH(TAG_AND_WEIGH_HOURS),
    /** Blood for the serum test is drawn. */
    SERUM_SAMPLE(SAMPLE_FROM_HOURS, SAMPLE_UNTIL_DAYS);

    @SuppressWarnings("Immutable") // List.of
    private final List<Setting> settings;

    DueKind(Setting... settings) {
        this.settings = List.of(settings);
    }

    /** The settings that its rule is made of, in the order in which the rule names them. */
    public List<Setting> settings() {
        return settings;
    }

    /** Where the usual values of its rule come from. */
    public String source() {
        return Setting.sources(settings);
    }
}
