package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * The words of the sheet that one shift leaves to the next.
 *
 * @param title what the sheet is; never blank
 * @param farm the farm's name; may be blank
 * @param period the shift that it is about
 * @param printedAt a line such as "Printed Tue 24 Nov 06:10"
 * @param page what each page says of its place
 * @param about facts of the shift itself
 * @param sections in the order of reading
 * @param signatures what is signed, such as "Handed over by"
 * @param language of all words, such as {@code en-US}
 */
public record HandoverSheet(
        String title,
        String farm,
        String period,
        String printedAt,
        PageWords page,
        List<Fact> about,
        List<SheetSection> sections,
        List<String> signatures,
        String language) {
    public HandoverSheet {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a sheet needs a title; its period is \"" + period + "\"");
        }
        Objects.requireNonNull(farm);
        Objects.requireNonNull(period);
        Objects.requireNonNull(printedAt);
        Objects.requireNonNull(page);
        about = List.copyOf(about);
        sections = List.copyOf(sections);
        signatures = List.copyOf(signatures);
        Objects.requireNonNull(language);
    }
}
