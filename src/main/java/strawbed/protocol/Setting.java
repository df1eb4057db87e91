package strawbed.protocol;

import static strawbed.protocol.Section.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All that a farm can set, with the usual value, the plausible range, the reason, and the source of the usual value.
 * The unit is the end of the name.
 */
public enum Setting {
    FIRST_BREATH_SECONDS(
            FIRST_MINUTES,
            Allowed.Amount.of("30", "10", "120"),
            "A calf takes its first breath within this time.",
            "Rural News NZ 2015"),
    BREATHING_AGAIN_MINUTES(
            FIRST_MINUTES,
            Allowed.Amount.of("1", "0.5", "10"),
            "A calf that gasps or does not breathe is looked at again after this time, until it breathes well.",
            Source.COMMON),
    ON_BREASTBONE_MINUTES(
            FIRST_MINUTES,
            Allowed.Amount.of("15", "2", "60"),
            "A calf lies on its breastbone within this time.",
            "Colorado State University calving notes"),
    DRY_MINUTES(
            FIRST_MINUTES,
            Allowed.Amount.of("30", "5", "120"),
            "A calf is licked or dried within this time; one that was seen not to be licked is dried at once.",
            Source.COMMON),
    STANDING_MINUTES(
            FIRST_MINUTES,
            Allowed.Amount.of("60", "15", "240"),
            "A calf stands within this time.",
            "Colorado State University calving notes"),

    FIRST_DIP_MINUTES(
            NAVEL,
            Allowed.Amount.of("30", "5", "120"),
            "The navel is dipped within this time after birth.",
            "Robinson 2015, Iowa State University ASL R2970"),
    DIP_AROUND_FEEDS(
            NAVEL, new Allowed.YesOrNo("yes"), "Whether the navel is dipped again around each feed.", Source.COMMON),
    DIP_BEFORE_FEED_MINUTES(
            NAVEL,
            Allowed.Amount.of("30", "0", "120"),
            "A dip this long before a feed counts for that feed.",
            Source.COMMON),
    DIP_AFTER_FEED_MINUTES(
            NAVEL,
            Allowed.Amount.of("30", "5", "120"),
            "After a feed the navel is dipped again within this time.",
            Source.COMMON),
    DIP_AROUND_FEEDS_UNTIL_HOURS(
            NAVEL, Allowed.Amount.of("24", "6", "72"), "Feeds up to this age ask for a dip.", Source.COMMON),
    REPEAT_DIP(NAVEL, new Allowed.YesOrNo("yes"), "Whether the navel is dipped once more later.", Source.COMMON),
    REPEAT_DIP_FROM_HOURS(
            NAVEL, Allowed.Amount.of("12", "4", "48"), "The repeated dip comes from this age on.", Source.COMMON),
    REPEAT_DIP_UNTIL_HOURS(
            NAVEL, Allowed.Amount.of("24", "8", "72"), "The repeated dip comes up to this age.", Source.COMMON),
    LOOK_AT_NAVEL_FROM_HOURS(
            NAVEL, Allowed.Amount.of("12", "4", "48"), "The navel is looked at from this age on.", Source.COMMON),
    LOOK_AT_NAVEL_UNTIL_HOURS(
            NAVEL, Allowed.Amount.of("24", "8", "168"), "The navel is looked at up to this age.", Source.COMMON),
    IODINE_PERCENT(
            NAVEL,
            Allowed.Amount.of("7", "0", "10"),
            "The strength of iodine this farm dips in; 0 when it uses none. Strong iodine harms people: see its label.",
            Source.COMMON),
    CHLORHEXIDINE_PERCENT(
            NAVEL,
            Allowed.Amount.of("2", "0", "5"),
            "The strength of chlorhexidine this farm dips in; 0 when it uses none.",
            Source.COMMON),

    BEST_WITHIN_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("1", "0.25", "2"),
            "A first feed up to this age is best: uptake is highest.",
            "Fischer 2018; Osaka 2014; the word is common practice"),
    TARGET_WITHIN_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("2", "0.5", "4"),
            "The first feed is due by this age.",
            "Dairy Calf and Heifer Association, Gold Standards III"),
    ACCEPTABLE_WITHIN_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("4", "1", "8"),
            "A first feed after this age is late.",
            "Osaka 2014; the word is common practice"),
    LATE_WITHIN_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("6", "2", "12"),
            "A first feed after this age is overdue.",
            "Osaka 2014; the word is common practice"),
    SECOND_FEED_FROM_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("6", "2", "12"),
            "The second feed comes from this long after the first; feeds before it are parts of the first dose.",
            "Michigan State University Extension"),
    SECOND_FEED_UNTIL_HOURS(
            COLOSTRUM,
            Allowed.Amount.of("12", "4", "24"),
            "The second feed comes up to this long after the first.",
            "Michigan State University Extension"),
    DOSE_BIRTH_WEIGHT_PERCENT(
            COLOSTRUM,
            Allowed.Amount.of("10", "5", "15"),
            "The first dose as a share of birth weight, 1 L of colostrum taken as 1 kg, the habit of the trade.",
            "Michigan State University Extension; Dairy Calf and Heifer Association, Gold Standards III"),
    ANTIBODY_LOW_BELOW_GRAMS(
            COLOSTRUM,
            Allowed.Amount.of("150", "50", "300"),
            "Less antibody than this in the first dose is called low.",
            "Chigerwe 2008, Am J Vet Res 69:1158"),
    ANTIBODY_ADVISED_GRAMS(
            COLOSTRUM,
            Allowed.Amount.of("200", "100", "400"),
            "The antibody advised for the first dose.",
            "Chigerwe 2008, Am J Vet Res 69:1158"),
    GOOD_FROM_BRIX_PERCENT(
            COLOSTRUM,
            Allowed.Amount.of("22", "18", "30"),
            "Colostrum from this reading on is good for a first feed.",
            "Michigan State University Extension; first proposed by Bielmann 2010"),
    LOW_BELOW_BRIX_PERCENT(
            COLOSTRUM,
            Allowed.Amount.of("18", "10", "22"),
            "Colostrum below this reading is not for a first feed.",
            "Buczinski and Vandeweerd 2016"),
    GOOD_FROM_GRAMS_PER_LITER(
            COLOSTRUM,
            Allowed.Amount.of("50", "30", "100"),
            "Colostrum with this much antibody or more is good for a first feed.",
            "Michigan State University Extension; first proposed by Bielmann 2010"),
    FEED_COOL_BELOW_FAHRENHEIT(
            COLOSTRUM,
            Allowed.Amount.of("100", "90", "104"),
            "Colostrum fed below this is called cool.",
            Source.COMMON),
    FEED_HOT_ABOVE_FAHRENHEIT(
            COLOSTRUM,
            Allowed.Amount.of("104", "100", "115"),
            "Colostrum fed above this is called hot.",
            Source.COMMON),

    REFRIGERATOR_HOURS(
            STORED_COLOSTRUM,
            Allowed.Amount.of("48", "12", "168"),
            "Colostrum keeps this long in a refrigerator. Published limits go from 48 hours to 7 days; this is the"
                    + " strictest.",
            Source.COMMON),
    FREEZER_DAYS(
            STORED_COLOSTRUM,
            Allowed.Amount.of("365", "30", "730"),
            "Frozen colostrum keeps this long.",
            "Ontario calf-care extension, Storing colostrum"),
    ROOM_MINUTES(
            STORED_COLOSTRUM,
            Allowed.Amount.of("30", "5", "120"),
            "Colostrum stands at room temperature no longer than this.",
            "Ontario calf-care extension, Storing colostrum"),
    THAW_WATER_MOST_FAHRENHEIT(
            STORED_COLOSTRUM,
            Allowed.Amount.of("122", "100", "140"),
            "The water in which frozen colostrum thaws is no hotter than this.",
            "Ontario calf-care extension, Storing colostrum"),
    HEAT_TREATMENT_MOST_FAHRENHEIT(
            STORED_COLOSTRUM,
            Allowed.Amount.of("140", "130", "140"),
            "Colostrum is heat treated no hotter than this; above 140 °F (60 °C) antibody is lost.",
            "Donahue 2012; Godden 2006; the limit is McMartin 2006, as quoted in trade press"),
    HEAT_TREATMENT_LEAST_MINUTES(
            STORED_COLOSTRUM,
            Allowed.Amount.of("60", "30", "120"),
            "Colostrum is heat treated at least this long.",
            "Donahue 2012; Godden 2006"),

    HARD_FROM_EASE_SCORE(
            HARD_BIRTH,
            Allowed.Amount.of("3", "2", "5"),
            "A calving ease score from this on counts as a hard birth, and the calf is watched.",
            Source.COMMON),
    WATCH_MINUTES(
            HARD_BIRTH,
            Allowed.Ascending.of("30, 60, 120, 240", "5", "1440"),
            "After a hard birth temperature and suck are checked at these times.",
            Source.COMMON),
    NO_SUCK_HOURS(
            HARD_BIRTH,
            Allowed.Amount.of("2", "0.5", "6"),
            "A watched calf that does not suck by this age needs a trained person or the veterinarian.",
            Source.COMMON),
    STILLBIRTH_WITHIN_HOURS(
            HARD_BIRTH,
            Allowed.Amount.of("48", "24", "48"),
            "A calf dead at birth or up to this age counts as stillborn. Sources use 24 or 48 hours.",
            "extension article; Utah State University Extension 2010"),

    COLD_BELOW_FAHRENHEIT(
            WARMTH,
            Allowed.Amount.of("100", "97", "101"),
            "A calf whose own temperature is below this is cold.",
            "University of Nevada Reno, Cattle Producer's Library CL 788"),
    VERY_COLD_BELOW_FAHRENHEIT(
            WARMTH, Allowed.Amount.of("94", "90", "98"), "Below this the veterinarian comes first.", Source.COMMON),
    WARM_FROM_FAHRENHEIT(
            WARMTH,
            Allowed.Amount.of("101", "100", "102"),
            "A cold calf is warm again when it reads at least this twice.",
            Source.COMMON),
    TEMPERATURE_AGAIN_MINUTES(
            WARMTH,
            Allowed.Amount.of("30", "10", "120"),
            "A cold calf is measured again after this time.",
            Source.COMMON),
    HEAT_INDEX_AT_RISK(
            WARMTH,
            Allowed.Amount.of("78", "65", "85"),
            "Above this temperature-humidity index a calf's welfare is at risk.",
            "Kovacs 2020, doi 10.3168/jds.2019-17459"),
    HEAT_INDEX_MARKED(
            WARMTH,
            Allowed.Amount.of("88", "75", "100"),
            "Above this temperature-humidity index heat stress is marked.",
            "Kovacs 2020, doi 10.3168/jds.2019-17459"),
    BARN_READING_HOURS(
            WARMTH,
            Allowed.Amount.of("6", "1", "24"),
            "A reading of the barn's air holds this long, unless there is a newer one.",
            Source.COMMON),

    TAG_AND_WEIGH_HOURS(
            PEN,
            Allowed.Amount.of("24", "2", "72"),
            "A calf is tagged and weighed before it leaves the pen, or by this age.",
            Source.COMMON),

    SAMPLE_FROM_HOURS(
            SERUM,
            Allowed.Amount.of("24", "24", "72"),
            "Blood drawn before this age tells nothing yet.",
            "Bandlow 2023, doi 10.3389/fvets.2023.1094272"),
    SAMPLE_UNTIL_DAYS(
            SERUM,
            Allowed.Amount.of("7", "3", "7"),
            "Blood drawn after this age tells nothing of colostrum any more.",
            "Lombard 2020, doi 10.3168/jds.2019-17955"),
    LEAST_CALVES_FOR_HERD(
            SERUM,
            Allowed.Amount.of("12", "8", "60"),
            "With fewer calves tested nothing is said about the herd. No source was verified for the number.",
            Source.COMMON),
    PLASMA_LITERS_PER_KILOGRAM(
            SERUM,
            Allowed.Amount.of("0.09", "0.07", "0.10"),
            "The plasma in a calf, for estimates of uptake. An assumption: published trials imply about 8 to 10 % of"
                    + " body weight.",
            "worked out from Godden 2009, Desjardins-Morrissette 2018 and Elizondo-Salazar 2011"),

    COUNTED(
            SIGNS,
            CountedSign.allowed(),
            "The signs this farm looks for. \"N of M signs normal\" counts these and no others.",
            Source.COMMON),

    UNITS(
            SHOWN,
            Allowed.Word.of("as spoken", "as spoken", "US", "metric"),
            "The units of amounts on screen and paper. The record always keeps what was said.",
            "the farm's choice"),
    DUE_LIST_HOURS(
            SHOWN,
            Allowed.Amount.of("24", "12", "168"),
            "A calf stays in the due list up to this age; for its blood sample as long as that may be drawn.",
            "the farm's choice");

    private final Section section;

    @SuppressWarnings("Immutable") // every Allowed copies its lists
    private final Allowed allowed;

    private final String reason;
    private final String source;

    Setting(Section section, Allowed allowed, String reason, String source) {
        this.section = section;
        this.allowed = allowed;
        this.reason = reason;
        this.source = source;
    }

    public Section section() {
        return section;
    }

    /** What it may be, and the usual value. */
    public Allowed allowed() {
        return allowed;
    }

    /** What it does and why, in a sentence or two. */
    public String reason() {
        return reason;
    }

    /** Where the usual value comes from. */
    public String source() {
        return source;
    }

    /** Where the usual values of several settings come from, each source once, in the settings' order. */
    public static String sources(List<Setting> settings) {
        return settings.stream().map(Setting::source).distinct().collect(Collectors.joining("; "));
    }

    /** The name in the file, without its section. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The setting with this name in a file. */
    public static Optional<Setting> find(String key) {
        return Arrays.stream(values())
                .filter(setting -> setting.key().equals(key))
                .findFirst();
    }

    /** Settings of which each must be less than the next. */
    static final List<List<Setting>> ASCENDING = List.of(
            List.of(BEST_WITHIN_HOURS, TARGET_WITHIN_HOURS, ACCEPTABLE_WITHIN_HOURS, LATE_WITHIN_HOURS),
            List.of(SECOND_FEED_FROM_HOURS, SECOND_FEED_UNTIL_HOURS),
            List.of(REPEAT_DIP_FROM_HOURS, REPEAT_DIP_UNTIL_HOURS),
            List.of(LOOK_AT_NAVEL_FROM_HOURS, LOOK_AT_NAVEL_UNTIL_HOURS),
            List.of(ANTIBODY_LOW_BELOW_GRAMS, ANTIBODY_ADVISED_GRAMS),
            List.of(LOW_BELOW_BRIX_PERCENT, GOOD_FROM_BRIX_PERCENT),
            List.of(FEED_COOL_BELOW_FAHRENHEIT, FEED_HOT_ABOVE_FAHRENHEIT),
            List.of(VERY_COLD_BELOW_FAHRENHEIT, COLD_BELOW_FAHRENHEIT, WARM_FROM_FAHRENHEIT),
            List.of(HEAT_INDEX_AT_RISK, HEAT_INDEX_MARKED));

    /** Where figures come from that nobody published. */
    private static final class Source {
        static final String COMMON = "common practice, no published source";
    }
}
