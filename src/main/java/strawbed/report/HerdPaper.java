package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * The words and figures of the herd's report.
 *
 * @param title what it is; never blank
 * @param farm the farm's name; may be blank
 * @param period the births that it is about
 * @param printedAt a line such as "Printed Tue 24 Nov 06:10"
 * @param page what each page says of its place
 * @param language of all words, such as {@code en-US}
 */
public record HerdPaper(
        String title,
        String farm,
        String period,
        String printedAt,
        PageWords page,
        List<Chapter> chapters,
        String language) {
    public HerdPaper {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a report needs a title; its period is \"" + period + "\"");
        }
        Objects.requireNonNull(farm);
        Objects.requireNonNull(period);
        Objects.requireNonNull(printedAt);
        Objects.requireNonNull(page);
        chapters = List.copyOf(chapters);
        Objects.requireNonNull(language);
    }
}
