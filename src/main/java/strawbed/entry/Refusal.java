package strawbed.entry;

import java.math.BigDecimal;
import java.time.Duration;

/** Why an answer cannot be taken. The step stays as it is, so that another answer can be given. */
public sealed interface Refusal {
    /** Nothing is asked now, or something of another kind. */
    record NotAsked() implements Refusal {}

    /** This has to be known. */
    record Needed() implements Refusal {}

    /** None of the offered ones. */
    record NotOffered() implements Refusal {}

    /** Not possible, whatever the calf. */
    record OutOfRange(BigDecimal low, BigDecimal high) implements Refusal {}

    /** More digits behind the point than it is kept with. */
    record TooManyDecimals(int most) implements Refusal {}

    /** The number alone does not tell the unit. */
    record UnitNeeded() implements Refusal {}

    /** Not digits, or too few or too many of them. */
    record WrongLength(int least, int most) implements Refusal {}

    /** No time of day has these digits. */
    record NoSuchTime() implements Refusal {}

    /** Too long ago to be counted in minutes. */
    record TooLongAgo(Duration most) implements Refusal {}

    /** A kind of fact that the barn has and no calf, or the other way round. */
    record NotOfThis() implements Refusal {}
}
