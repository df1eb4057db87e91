package strawbed.report;

import java.util.List;

/**
 * The words of a page that shows whether a printer prints at true size, in time for the first card.
 *
 * @param howTo what to look at and what to do about it
 * @param bar how long its two rulers are, in millimetres
 * @param letterSizes heights of capitals
 * @param sample the words shown in each of them
 * @param language of all words, such as {@code en-US}
 */
public record TestPage(
        String title,
        List<String> howTo,
        int bar,
        String lines,
        List<Sample> lineWidths,
        String letters,
        List<Sample> letterSizes,
        String sample,
        String language) {
    public TestPage {
        howTo = List.copyOf(howTo);
        lineWidths = List.copyOf(lineWidths);
        letterSizes = List.copyOf(letterSizes);
    }

    /** A size in words and in millimetres. */
    public record Sample(String name, double millimetres) {}
}
