package strawbed.measure;

/** Scales of temperature. */
public enum TemperatureUnit {
    FAHRENHEIT("fahrenheit"),
    CELSIUS("celsius");

    private final String word;

    TemperatureUnit(String word) {
        this.word = word;
    }

    /** The word that stands in the record. */
    public String word() {
        return word;
    }
}
