package strawbed.alike;

import java.util.List;

/**
 * Two things that can be said at the same place and sound alike.
 *
 * @param one what differs in the first sentence
 * @param other what stands for it in the second
 * @param closeness from 0, nothing in common, to 1, the same sounds
 * @param sentence a sentence with the one
 * @param mistakenFor the same sentence with the other
 */
public record AlikePair(
        List<String> one, List<String> other, double closeness, List<String> sentence, List<String> mistakenFor) {
    public AlikePair {
        one = List.copyOf(one);
        other = List.copyOf(other);
        sentence = List.copyOf(sentence);
        mistakenFor = List.copyOf(mistakenFor);
    }
}
