package strawbed.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * The words of one calf's hutch card.
 *
 * @param number what the calf is called by, such as "417", or "cow 417" for a calf without a number; never blank
 * @param id the calf's own identity, which the square code carries
 * @param sex the sex as a word, such as "HEIFER"
 * @param born when it was born, or what is known about that
 * @param dam the dam's number or name
 * @param birth how the birth went, such as "unassisted, forwards"
 * @param twin a line such as "Twin of 418", when there is a twin
 * @param facts what was measured, in the order of reading
 * @param timeline the first day
 * @param toDos what is still to do, most urgent first
 * @param cautions full sentences, most important first
 * @param printedAt a line such as "Printed Tue 24 Nov 06:10"
 * @param farm the farm's name; may be blank
 */
public record CalfCard(
        String number,
        UUID id,
        String sex,
        String born,
        String dam,
        String birth,
        Optional<String> twin,
        List<Fact> facts,
        Timeline timeline,
        List<ToDo> toDos,
        List<String> cautions,
        String printedAt,
        String farm) {
    public CalfCard {
        if (number.isBlank()) {
            throw new IllegalArgumentException("a card needs a number or a name in its place");
        }
        Objects.requireNonNull(id);
        sex = Words.orNotRecorded(sex);
        born = Words.orNotRecorded(born);
        dam = Words.orNotRecorded(dam);
        birth = Words.orNotRecorded(birth);
        Objects.requireNonNull(twin);
        facts = List.copyOf(facts);
        Objects.requireNonNull(timeline);
        toDos = List.copyOf(toDos);
        cautions = List.copyOf(cautions);
        Objects.requireNonNull(printedAt);
        Objects.requireNonNull(farm);
    }
}
