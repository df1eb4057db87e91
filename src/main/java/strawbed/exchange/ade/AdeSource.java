package strawbed.exchange.ade;

import java.util.regex.Pattern;

/**
 * Whose record is exported. Our numbers mean something on one farm only, so the schemes of our identifiers begin with
 * the farm's name.
 *
 * @param name the farm in reverse domain notation, as the standard asks of a scheme, such as {@code
 *     org.example.willowbank}
 */
public record AdeSource(String name) {
    private static final Pattern REVERSE_DOMAIN = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9][a-z0-9-]*)+");

    /** @throws IllegalArgumentException if the name is no such notation */
    public AdeSource {
        if (!REVERSE_DOMAIN.matcher(name).matches()) {
            throw new IllegalArgumentException("\"" + name + "\" is no name of a farm in reverse domain notation."
                    + " Write small letters with points between, such as org.example.willowbank.");
        }
    }

    /** A scheme of our own naming. */
    String scheme(String kind) {
        return name + "." + kind;
    }
}
