package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import strawbed.grammar.Place.Arc;

/** Goes through all sentences up to a length, depth first in the order of the grammar. */
final class SentenceIterator implements Iterator<List<String>> {

    private final Network network;
    private final Routes routes;
    private final long longest;
    private final Deque<Iterator<Arc>> open = new ArrayDeque<>();
    private final List<String> words = new ArrayList<>();
    private boolean found;

    SentenceIterator(Network network, Routes routes, long longest) {
        this.network = network;
        this.routes = routes;
        this.longest = longest;
        open.push(routes.arcs(routes.start()).iterator());
        advance();
    }

    @Override
    public boolean hasNext() {
        return found;
    }

    @Override
    public List<String> next() {
        if (!found) {
            throw new NoSuchElementException("There are no more sentences.");
        }
        List<String> sentence = List.copyOf(words);
        advance();
        return sentence;
    }

    /** Goes to the next end of a sentence, or until nothing is open. */
    private void advance() {
        found = false;
        while (!found && !open.isEmpty()) {
            if (!open.element().hasNext()) {
                open.pop();
                if (!words.isEmpty()) {
                    words.remove(words.size() - 1);
                }
                continue;
            }
            Arc arc = open.element().next();
            Place target = arc.target();
            if (target == null) {
                found = true;
            } else if (words.size() + 1 + target.rest() <= longest) {
                words.add(network.word(arc.word()));
                open.push(routes.arcs(target).iterator());
            }
        }
    }
}
