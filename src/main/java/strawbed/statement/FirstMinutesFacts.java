package strawbed.statement;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;

/** The facts of the grammar files first-minutes.abnf and navel.abnf. */
final class FirstMinutesFacts {
    static final Map<String, FactReader> READERS = Map.ofEntries(
            Map.entry("breathing", (tree, speech) -> new Event.BreathingNoted(Tags.term(Term.Breathing.class, tree))),
            Map.entry(
                    "stimulated",
                    (tree, speech) -> new Event.BreathingStimulated(Tags.term(Term.Stimulation.class, tree))),
            Map.entry(
                    "licking",
                    (tree, speech) -> new Event.LickingNoted(Tags.tag(tree).equals("yes"))),
            Map.entry(
                    "dried",
                    (tree, speech) -> new Event.CalfDried(Tags.termIn(Term.DryingMeans.class, tree, "dry_means"))),
            Map.entry("shelter", (tree, speech) -> new Event.ShelterGiven(Tags.term(Term.Shelter.class, tree))),
            Map.entry("milestone", (tree, speech) -> new Event.MilestoneReached(Tags.term(Term.Milestone.class, tree))),
            Map.entry("sign", (tree, speech) -> sign(tree.children().get(0))),
            Map.entry("navel_dipped", (tree, speech) -> new Event.NavelDipped(agent(tree), strength(tree))),
            Map.entry(
                    "navel_checked",
                    (tree, speech) -> new Event.NavelChecked(Tags.term(
                            Term.NavelFinding.class, tree.child("navel_finding").orElseThrow()))));

    private FirstMinutesFacts() {}

    /** By its own name, or by the name on the farm's bottle. */
    private static Term.@Nullable NavelAgent agent(ParseTree tree) {
        String rule = tree.descendant("dip_name").isPresent() ? "dip_name" : "agent";
        return Tags.termIn(Term.NavelAgent.class, tree, rule);
    }

    private static @Nullable BigDecimal strength(ParseTree tree) {
        Optional<ParseTree> strength = tree.descendant("strength");
        return strength.map(found ->
                        SpokenNumber.decimal(found.child("small_decimal").orElseThrow()))
                .orElse(null);
    }

    private static Event sign(ParseTree tree) {
        return switch (tree.rule()) {
            case "plain_sign" -> new Event.SignNoted(Tags.term(Term.Sign.class, tree), null, null);
            case "swelling" ->
                new Event.SignNoted(
                        Term.Sign.SWOLLEN, Tags.tag(tree.child("swollen_place").orElseThrow()), null);
            case "gums" ->
                new Event.SignNoted(
                        Term.Sign.GUMS, null, Tags.tag(tree.child("gum_colour").orElseThrow()));
            case "suck_reflex" -> {
                String strength = Tags.tag(tree.child("reflex_strength").orElseThrow());
                yield new Event.SignNoted(Term.Sign.SUCK_REFLEX, null, strength.equals("no") ? "none" : strength);
            }
            default ->
                throw new IllegalStateException("the rule $" + tree.rule() + " is no sign that the record knows");
        };
    }
}
