package strawbed.report;

import java.util.Objects;

/**
 * The last line of a card. What is blank is not there.
 *
 * @param print which print this is and when it was made, such as "Print 2, Tue 24 Nov 06:10"
 * @param replaces which print it takes the place of
 * @param protocol what the times were planned by
 * @param farm the farm's name
 */
public record CardFoot(String print, String replaces, String protocol, String farm) {
    public CardFoot {
        if (print.isBlank()) {
            throw new IllegalArgumentException("a card must say when it was printed");
        }
        Objects.requireNonNull(replaces);
        Objects.requireNonNull(protocol);
        Objects.requireNonNull(farm);
    }
}
