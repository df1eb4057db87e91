package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import strawbed.grammar.Place.Arc;

/**
 * All sentences of a rule as routes from place to place, laid out only as far as someone goes.
 *
 * <p>Not safe for several threads.
 */
final class Routes {

    private final Network network;
    private final ShortestRests rests;
    private final Place end = new Place(Network.NOWHERE, null, 0);
    private final Place start;

    Routes(Network network, ShortestRests rests, int rule) {
        this.network = network;
        this.rests = rests;
        this.start = place(network.start(rule), end);
    }

    Place start() {
        return start;
    }

    /** The words that may come next, in the order of the grammar; the end of the sentence is among them. */
    List<Arc> arcs(Place place) {
        List<Arc> known = place.arcs();
        return known != null ? known : place.arcs(follow(place));
    }

    private List<Arc> follow(Place from) {
        Set<Arc> found = new LinkedHashSet<>();
        Set<Place> seen = new HashSet<>();
        Deque<Place> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            Place place = open.pop();
            Place after = place.after();
            if (after == null) {
                found.add(new Arc(Neighbours.edge(network), null));
            } else if (seen.add(place)) {
                Step step = network.step(place.state());
                if (step instanceof Step.Word word) {
                    found.add(new Arc(word.word(), place(word.next(), after)));
                } else if (step instanceof Step.Call call) {
                    open.push(place(network.start(call.rule()), place(call.next(), after)));
                } else if (step instanceof Step.Mark mark) {
                    open.push(place(mark.next(), after));
                } else if (step instanceof Step.Fork fork) {
                    for (int i = fork.branches().size() - 1; i >= 0; i--) {
                        open.push(place(fork.branches().get(i).next(), after));
                    }
                }
            }
        }
        return new ArrayList<>(found);
    }

    /** The end of a rule is the place after it, so that a rule that ends with itself does not pile up places. */
    private Place place(int state, Place after) {
        if (network.step(state) instanceof Step.Accept) {
            return after;
        }
        return after.inside().computeIfAbsent(state, s -> new Place(s, after, rests.from(s) + after.rest()));
    }
}
