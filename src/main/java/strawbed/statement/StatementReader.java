package strawbed.statement;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;

/**
 * Turns the tree of a statement into its meaning. The names of the grammar's rules say what a part means; the words
 * inside them are the farm's.
 */
public final class StatementReader {
    private static final Map<String, FactReader> READERS = new HashMap<>();

    static {
        READERS.putAll(BirthFacts.READERS);
        READERS.putAll(FirstMinutesFacts.READERS);
        READERS.putAll(MeasureFacts.READERS);
        READERS.putAll(ColostrumFacts.READERS);
    }

    private StatementReader() {}

    /** The names of the rules that stand for a fact: a grammar must have them all. */
    public static Set<String> factRules() {
        return Set.copyOf(READERS.keySet());
    }

    /** The statement that a tree of the rule {@code statement} or {@code barn} stands for. */
    static Statement statement(ParseTree tree, SpeechTime speech) {
        List<SaidFact> facts = new ArrayList<>();
        Optional<ParseTree> opening = tree.child("opening");
        CalfReference calf = tree.rule().equals("barn")
                ? new CalfReference.Barn()
                : opening.map(StatementReader::opening)
                        .orElseGet(() -> calf(tree.child("calf").orElseThrow()));
        calf.facts().forEach(event -> facts.add(new SaidFact(event, speech.start(), false)));
        facts.addAll(facts(tree, speech));
        return new Statement(calf, facts);
    }

    /** The facts below a tree, each with its time. */
    static List<SaidFact> facts(ParseTree tree, SpeechTime speech) {
        Optional<Instant> saidAtTheEnd = tree.descendants()
                .filter(part -> part.rule().equals("last_fact"))
                .flatMap(part -> part.child("when").stream())
                .map(when -> SpokenTime.when(when, speech))
                .findFirst();
        List<SaidFact> facts = new ArrayList<>();
        for (ParseTree part : tree.descendants().toList()) {
            FactReader reader = READERS.get(part.rule());
            if (reader != null) {
                facts.add(timed(reader.read(part, speech), part, saidAtTheEnd, speech));
            }
        }
        return facts;
    }

    private static SaidFact timed(Event event, ParseTree tree, Optional<Instant> saidAtTheEnd, SpeechTime speech) {
        boolean own = tree.child("birth_time").isPresent();
        if (event instanceof Event.CalfBorn born) {
            return new SaidFact(event, born.when().midpoint(), own);
        }
        if (event instanceof Event.CalfFound found) {
            return new SaidFact(event, found.when().midpoint(), own);
        }
        if (event instanceof Event.CalfDied died && died.when() == Term.DeathTime.LATER) {
            return new SaidFact(event, died.at(), own);
        }
        Instant at = saidAtTheEnd.orElse(speech.start());
        if (event instanceof Event.CalfDied died) {
            return new SaidFact(new Event.CalfDied(at, died.when()), at, saidAtTheEnd.isPresent());
        }
        return new SaidFact(event, at, saidAtTheEnd.isPresent());
    }

    /** The calf that a tree of the rule {@code calf} names. */
    static CalfReference calf(ParseTree tree) {
        if (tree.child("same").isPresent()) {
            return new CalfReference.Same();
        }
        Optional<ParseTree> ofCow = tree.child("of_cow");
        if (ofCow.isPresent()) {
            return ofCow(ofCow.get());
        }
        return new CalfReference.Numbered(
                Tags.number(tree.child("listed").or(() -> tree.child("number")).orElseThrow()));
    }

    private static CalfReference.OfCow ofCow(ParseTree tree) {
        return new CalfReference.OfCow(
                Tags.number(tree.child("dam_number").orElseThrow()),
                tree.child("order").map(Tags::tag).map(Integer::valueOf).orElse(null));
    }

    private static CalfReference opening(ParseTree tree) {
        Optional<ParseTree> renumbered = tree.child("renumbered");
        if (renumbered.isPresent()) {
            return new CalfReference.Renumbered(
                    ofCow(renumbered.get().child("of_cow").orElseThrow()),
                    Tags.number(renumbered.get().child("new_number").orElseThrow()));
        }
        ParseTree opened = tree.child("new_calf").orElseThrow();
        return new CalfReference.New(
                opened.child("new_number").map(Tags::number).orElse(null),
                opened.child("dam_number").map(Tags::number).orElse(null));
    }
}
