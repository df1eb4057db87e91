package strawbed.care;

/**
 * A figure of a herd as counts. With fewer than ten to count there are counts only; common practice, no published
 * source.
 *
 * @param count how many are so
 * @param of of how many that are known
 * @param unknown of how many it is not known; they count nowhere
 * @param flagged how many of {@code of} rest on an estimated birth
 */
public record Figure(int count, int of, int unknown, int flagged) {
    private static final int LEAST_FOR_SHARE = 10;

    static final Figure NONE = new Figure(0, 0, 0, 0);

    /** The share; with too few to count there is none. */
    public Judged<Share> share() {
        return of < LEAST_FOR_SHARE ? Judged.not(WhyNot.TOO_FEW) : Judged.of(new Share(count, of));
    }

    /** Of how many of all it is known at all. */
    public Figure known() {
        return new Figure(of, of + unknown, 0, 0);
    }

    Figure plus(boolean isSo, boolean isFlagged) {
        return new Figure(isSo ? count + 1 : count, of + 1, unknown, isFlagged ? flagged + 1 : flagged);
    }

    /** Of the calves of both. */
    Figure plus(Figure other) {
        return new Figure(count + other.count, of + other.of, unknown + other.unknown, flagged + other.flagged);
    }

    Figure plusUnknown() {
        return new Figure(count, of, unknown + 1, flagged);
    }
}
