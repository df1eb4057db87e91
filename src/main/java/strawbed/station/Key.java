package strawbed.station;

/**
 * A key on the screen.
 *
 * @param label its word, or two
 * @param detail a smaller line under it; may be empty
 * @param act what it does
 */
public record Key(String label, String detail, Rank rank, Act act) {
    /** A key without a second line. */
    public static Key of(String label, Rank rank, Act act) {
        return new Key(label, "", rank, act);
    }

    /** What a screen reader says of it. */
    public String spoken() {
        return detail.isEmpty() ? label : label + ", " + detail;
    }
}
