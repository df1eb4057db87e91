package strawbed.care;

/** What can be due for a calf, most urgent for the calf first, each with its rule and where the rule comes from. */
public enum DueKind {
    BREATHING_RECHECK(
            "a calf that gasped or did not breathe is looked at every minute until it breathes well; common practice,"
                    + " no published source"),
    BREATHING_CHECK("breathing is checked at once, the first breath comes within 30 seconds; Rural News NZ 2015"),
    COLD_RECHECK(
            "after a temperature below 100 F (University of Nevada Reno, Cattle Producer's Library CL 788) it is taken"
                    + " every 30 minutes until twice at least 101 F; common practice, no published source"),
    ON_BREASTBONE("a calf lies on its breastbone within 15 minutes; Colorado State University calving notes"),
    FIRST_COLOSTRUM(
            "first colostrum within 2 hours, late after 4, at the latest after 6; Dairy Calf and Heifer Association,"
                    + " Gold Standards III; Fischer 2018; Osaka 2014; the words for the bands are common practice"),
    WATCH_CHECK(
            "after a hard birth temperature and suck are checked at 30 minutes, 1, 2 and 4 hours; common practice, no"
                    + " published source"),
    DRY("a calf that was not licked is dried; common practice, no published source"),
    NAVEL_DIP("the navel is dipped within 30 minutes; Robinson 2015, Iowa State University ASL R2970"),
    STAND("a calf stands within 60 minutes; Colorado State University calving notes"),
    SECOND_COLOSTRUM("second colostrum 6 to 12 hours after the first; Michigan State University Extension"),
    NAVEL_REDIP(
            "the navel is dipped again around each feed of the first 24 hours; common practice, no published source"),
    REPEAT_DIP("the navel is dipped again 12 to 24 hours after birth; common practice, no published source"),
    TAG("a calf is tagged before it leaves the pen, or within 24 hours; common practice, no published source"),
    WEIGH("a calf is weighed before it leaves the pen, or within 24 hours; common practice, no published source"),
    SERUM_SAMPLE(
            "blood for the serum test is drawn within the first 7 days (Lombard 2020), not before 24 hours (Bandlow"
                    + " 2023)");

    private final String rule;

    DueKind(String rule) {
        this.rule = rule;
    }

    /** The rule with its source, in words. */
    public String rule() {
        return rule;
    }
}
