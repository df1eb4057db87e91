package strawbed.statement;

import java.util.Map;
import java.util.Optional;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.grammar.ParseTree;

/** The facts of the grammar file birth.abnf. */
final class BirthFacts {
    static final Map<String, FactReader> READERS = Map.ofEntries(
            Map.entry("born", (tree, speech) -> new Event.CalfBorn(birthTime(tree, speech))),
            Map.entry("found", (tree, speech) -> new Event.CalfFound(birthTime(tree, speech))),
            Map.entry(
                    "died",
                    (tree, speech) -> new Event.CalfDied(birthTime(tree, speech).midpoint(), Term.DeathTime.LATER)),
            Map.entry("stillborn", (tree, speech) -> new Event.CalfDied(speech.start(), Term.DeathTime.AT_BIRTH)),
            Map.entry("sex", (tree, speech) -> new Event.SexNoted(Tags.term(Term.Sex.class, tree))),
            Map.entry("ease", (tree, speech) -> ease(tree)),
            Map.entry(
                    "presentation",
                    (tree, speech) -> new Event.PresentationNoted(Tags.term(
                            Term.Presentation.class,
                            tree.child("way").or(() -> tree.child("way_alone")).orElseThrow()))),
            Map.entry(
                    "dam",
                    (tree, speech) -> new Event.DamNoted(
                            Tags.number(tree.child("dam_number").orElseThrow()), null)),
            Map.entry(
                    "parity",
                    (tree, speech) -> new Event.DamNoted(
                            null, SpokenNumber.whole(tree.child("parity_number").orElseThrow()))),
            Map.entry(
                    "breed",
                    (tree, speech) -> new Event.BreedNoted(
                            Tags.tag(tree.child("breed_name").orElseThrow()))),
            Map.entry(
                    "twin",
                    (tree, speech) -> new Event.TwinNoted(
                            tree.child("twin_number").map(Tags::number).orElse(null),
                            Integer.parseInt(Tags.tag(tree)))));

    private BirthFacts() {}

    private static When birthTime(ParseTree tree, SpeechTime speech) {
        return tree.child("birth_time")
                .map(time -> SpokenTime.birthTime(time, speech))
                .orElseGet(() -> new When.At(speech.start()));
    }

    private static Event ease(ParseTree tree) {
        Optional<ParseTree> score = tree.child("score");
        return score.isPresent()
                ? new Event.CalvingEaseNoted(null, Integer.valueOf(Tags.tag(score.get())))
                : new Event.CalvingEaseNoted(Tags.term(Term.CalvingEase.class, tree), null);
    }
}
