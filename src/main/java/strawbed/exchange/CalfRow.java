package strawbed.exchange;

import org.jspecify.annotations.Nullable;
import strawbed.event.Term;
import strawbed.event.When;

/**
 * A calf as somebody's table tells it.
 *
 * @param line where its row begins, from 1
 * @param number of 1 to 4 digits
 * @param dam her number or name
 */
public record CalfRow(
        long line,
        @Nullable String number,
        @Nullable String dam,
        @Nullable When born,
        Term.@Nullable Sex sex,
        @Nullable String breed) {}
