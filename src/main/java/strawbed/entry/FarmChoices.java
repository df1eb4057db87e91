package strawbed.entry;

import java.util.List;

/**
 * What one farm has on its buttons.
 *
 * @param breeds as the record has them
 * @param places of the farm that have a name and no number
 * @param metric whether liters, kilograms and Celsius come first
 */
public record FarmChoices(List<String> breeds, List<String> places, boolean metric) {
    /** As the program comes: the breeds of its grammar. */
    public static final FarmChoices USUAL = new FarmChoices(
            List.of(
                    "holstein",
                    "jersey",
                    "guernsey",
                    "ayrshire",
                    "brown swiss",
                    "milking shorthorn",
                    "cross",
                    "angus cross",
                    "hereford",
                    "angus"),
            List.of(),
            false);

    public FarmChoices {
        breeds = List.copyOf(breeds);
        places = List.copyOf(places);
    }
}
