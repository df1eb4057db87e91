package strawbed.statement;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.care.Oddity;
import strawbed.care.Plausibility;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;

/** Finds what must be asked about a statement, however it was made: spoken, whatever the sound was like, or by buttons. */
public final class Doubts {
    /** The highest national part that fits the 38 bits of an ISO 11784 number. */
    private static final BigInteger NATIONAL_MAX = BigInteger.ONE.shiftLeft(38).subtract(BigInteger.ONE);

    private static final Duration LONG_AGO = Duration.ofHours(12);

    private Doubts() {}

    /**
     * What is doubted of a statement by itself.
     *
     * @param made when it was spoken or entered
     * @param listening what is known of the farm's record
     */
    public static List<Doubt> of(Statement statement, SpeechTime made, Listening listening) {
        List<Doubt> doubts = new ArrayList<>();
        ofCalf(statement.calf(), listening).ifPresent(doubts::add);
        for (SaidFact fact : statement.facts()) {
            if (fact.timeWasSaid() && fact.occurredAt().isBefore(made.start().minus(LONG_AGO))) {
                doubts.add(new Doubt.LongAgo(fact.occurredAt()));
            }
            for (Oddity odd : Plausibility.of(fact.event())) {
                doubts.add(new Doubt.Implausible(odd.quantity(), odd.value(), odd.unit(), odd.low(), odd.high()));
            }
            if (fact.event() instanceof Event.EarTagFitted tag && tag.scheme() == Term.TagScheme.OFFICIAL) {
                fault(tag.number()).ifPresent(fault -> doubts.add(new Doubt.BadTag(tag.number(), fault)));
            }
        }
        return doubts.stream().distinct().toList();
    }

    /** The same, and what the words left open. */
    static List<Doubt> of(Statement statement, ParseTree tree, SpeechTime speech, Listening listening) {
        List<Doubt> doubts = new ArrayList<>(of(statement, speech, listening));
        tree.descendants()
                .filter(part -> part.rule().equals("milk_temperature"))
                .filter(part -> part.descendant("scale").isEmpty())
                .map(part -> SpokenNumber.decimal(part.descendant("decimal").orElseThrow()))
                .filter(Scale.OF_MILK::isUnclear)
                .map(Doubt.UnknownScale::new)
                .forEach(doubts::add);
        return doubts.stream().distinct().toList();
    }

    private static Optional<Doubt> ofCalf(CalfReference calf, Listening listening) {
        if (calf instanceof CalfReference.Numbered numbered
                && !listening.openCalves().contains(numbered.number())) {
            return Optional.of(new Doubt.NotListed(numbered.number()));
        }
        if (calf instanceof CalfReference.Same && !listening.sameCalf()) {
            return Optional.of(new Doubt.NoSameCalf());
        }
        String opened = calf instanceof CalfReference.New fresh
                ? fresh.number()
                : calf instanceof CalfReference.Renumbered renumbered ? renumbered.number() : null;
        return opened != null && listening.openCalves().contains(opened)
                ? Optional.of(new Doubt.AlreadyOpen(opened))
                : Optional.empty();
    }

    /** What is wrong with an official number. Sources: ISO 11784; USDA notice 2008 on 840 numbers. */
    static Optional<Doubt.TagFault> fault(String number) {
        if (number.length() != 15) {
            return Optional.of(Doubt.TagFault.NOT_FIFTEEN_DIGITS);
        }
        if (number.startsWith("999")) {
            return Optional.of(Doubt.TagFault.TEST_CODE);
        }
        return new BigInteger(number.substring(3)).compareTo(NATIONAL_MAX) > 0
                ? Optional.of(Doubt.TagFault.NATIONAL_PART_TOO_LARGE)
                : Optional.empty();
    }
}
