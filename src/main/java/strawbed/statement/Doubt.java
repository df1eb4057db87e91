package strawbed.statement;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import strawbed.care.Contradiction;

/** Why a statement is asked about before it is believed. */
public sealed interface Doubt {
    /** The number is not among the open calves. */
    record NotListed(String number) implements Doubt {}

    /** A calf was to be opened under a number that an open calf has. */
    record AlreadyOpen(String number) implements Doubt {}

    /** No open calf of this cow is in the record. */
    record NoCalfOfCow(String dam) implements Doubt {}

    /** "Same calf", and none was named before. */
    record NoSameCalf() implements Doubt {}

    /** The sentence is not at its end. */
    record Incomplete() implements Doubt {}

    /** The same words mean more than one thing. */
    record Ambiguous(List<Statement> readings) implements Doubt {
        public Ambiguous {
            readings = List.copyOf(readings);
        }
    }

    /** The sound fits other words nearly as well. */
    record SoundsLike(List<String> words) implements Doubt {
        public SoundsLike {
            words = List.copyOf(words);
        }
    }

    /** The sound was not clear, and no other words fit it. */
    record Unclear() implements Doubt {}

    /** A temperature that could be in either scale. */
    record UnknownScale(BigDecimal degrees) implements Doubt {}

    /** A clock time over twelve hours back. */
    record LongAgo(Instant at) implements Doubt {}

    /** A value outside what calves and colostrum have. */
    record Implausible(String quantity, BigDecimal value, String unit, BigDecimal low, BigDecimal high)
            implements Doubt {}

    /** An official tag number that breaks a rule for such numbers. */
    record BadTag(String number, TagFault fault) implements Doubt {}

    /** Something was left over, but no feed is known that it could be of. */
    record NoFeedToAmend() implements Doubt {}

    /** It cannot be true together with what is on record. */
    record Contradicts(Contradiction what) implements Doubt {}

    /** What can be wrong with an official number. Source: ISO 11784; US official animal numbers, USDA 2008. */
    enum TagFault {
        NOT_FIFTEEN_DIGITS,
        NATIONAL_PART_TOO_LARGE,
        TEST_CODE
    }
}
