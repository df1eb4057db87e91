package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.Place.Arc;

/**
 * A small set of sentences in which every pair of neighbouring words occurs.
 *
 * <p>Goes through the places of the sentences, the nearest first. Wherever a missing pair is met, a sentence is made of
 * the shortest way to it, of detours over other missing pairs that are near, and of the shortest way to the end.
 */
final class PairCover {

    /** Past this many words a sentence takes no more detours. */
    private static final int LONG = 24;

    /** How many words are looked at for a detour. */
    private static final int SIGHT = 1500;

    /** A word reached from another; a chain of them is the way from the beginning. */
    private record Trail(@Nullable Trail before, @Nullable Arc by, int word, Place place) {

        /** The arcs of the way, the first first. */
        List<Arc> arcs() {
            List<Arc> arcs = new ArrayList<>();
            for (Trail trail = this; trail != null; trail = trail.before) {
                if (trail.by != null) {
                    arcs.add(trail.by);
                }
            }
            Collections.reverse(arcs);
            return arcs;
        }
    }

    private final Network network;
    private final Routes routes;
    private final BitSet missing;
    private final List<List<String>> sentences = new ArrayList<>();

    PairCover(Network network, Routes routes, Neighbours neighbours) {
        this.network = network;
        this.routes = routes;
        this.missing = neighbours.pairs();
    }

    List<List<String>> sentences() {
        Trail start = new Trail(null, null, Neighbours.edge(network), routes.start());
        Set<Arc> seen = new HashSet<>();
        Deque<Trail> open = new ArrayDeque<>(List.of(start));
        while (!missing.isEmpty()) {
            Trail trail = open.remove();
            for (Arc arc : routes.arcs(trail.place())) {
                if (isMissing(trail.word(), arc.word())) {
                    sentences.add(sentence(trail, arc));
                }
                Place target = arc.target();
                if (target != null && seen.add(arc)) {
                    open.add(new Trail(trail, arc, arc.word(), target));
                }
            }
        }
        return List.copyOf(sentences);
    }

    private boolean isMissing(int left, int right) {
        return missing.get(Neighbours.pair(network, left, right));
    }

    private List<String> sentence(Trail trail, Arc missed) {
        List<String> words = new ArrayList<>();
        Deque<Arc> planned = new ArrayDeque<>(trail.arcs());
        planned.add(missed);
        int left = Neighbours.edge(network);
        while (true) {
            Arc next = planned.remove();
            missing.clear(Neighbours.pair(network, left, next.word()));
            Place place = next.target();
            if (place == null) {
                return List.copyOf(words);
            }
            left = next.word();
            words.add(network.word(left));
            if (planned.isEmpty() && words.size() < LONG) {
                planned.addAll(detour(left, place));
            }
            if (planned.isEmpty()) {
                planned.add(homeward(place));
            }
        }
    }

    /** The shortest way on from a word over a missing pair, or nothing when none is in sight. */
    private List<Arc> detour(int word, Place from) {
        Set<Arc> seen = new HashSet<>();
        Deque<Trail> open = new ArrayDeque<>(List.of(new Trail(null, null, word, from)));
        int looked = 0;
        while (!open.isEmpty() && looked < SIGHT) {
            Trail here = open.remove();
            for (Arc arc : routes.arcs(here.place())) {
                looked++;
                if (isMissing(here.word(), arc.word())) {
                    List<Arc> way = here.arcs();
                    way.add(arc);
                    return way;
                }
                Place target = arc.target();
                if (target != null && seen.add(arc)) {
                    open.add(new Trail(here, arc, arc.word(), target));
                }
            }
        }
        return List.of();
    }

    private Arc homeward(Place place) {
        return Collections.min(
                routes.arcs(place),
                Comparator.comparingLong(
                        (Arc arc) -> arc.target() == null ? 0 : 1 + arc.target().rest()));
    }
}
