package strawbed.report;

/**
 * One measured thing, such as "Weight" and "41 kg".
 *
 * @param label what it is; never blank
 * @param value what was found; a blank becomes "not recorded"
 */
public record Fact(String label, String value) {
    public Fact {
        if (label.isBlank()) {
            throw new IllegalArgumentException("a fact on a card needs a label; its value is \"" + value + "\"");
        }
        value = Words.orNotRecorded(value);
    }
}
