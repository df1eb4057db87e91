package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * The words of one living calf's hutch card.
 *
 * @param title what the file is called in a viewer
 * @param facts what was measured, in the order of reading
 * @param timeline the first day
 * @param toDos what is still to do, most urgent first
 * @param cautions full sentences, most important first
 */
public record CalfCard(
        String title,
        CalfHead head,
        List<Fact> facts,
        Timeline timeline,
        List<ToDo> toDos,
        List<String> cautions,
        CardFoot foot,
        CardWords words)
        implements CalfPage {
    public CalfCard {
        Objects.requireNonNull(title);
        Objects.requireNonNull(head);
        facts = List.copyOf(facts);
        Objects.requireNonNull(timeline);
        toDos = List.copyOf(toDos);
        cautions = List.copyOf(cautions);
        Objects.requireNonNull(foot);
        Objects.requireNonNull(words);
    }
}
