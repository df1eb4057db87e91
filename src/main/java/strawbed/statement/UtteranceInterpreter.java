package strawbed.statement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.ParseTree;
import strawbed.grammar.RuleId;
import strawbed.speech.Hypothesis;

/**
 * From the readings of an utterance to what it was taken for.
 *
 * <p>The parse is strict: every word is consumed by the grammar, or the reading does not count. What several hearings of
 * the sound allow is weighed; the sound decides first, what is plausible only ranks and asks questions. Immutable, safe
 * for any thread.
 */
public final class UtteranceInterpreter implements Interpreter {
    /** More parses than this of one word list are the same mistake in the grammar seen often. */
    private static final int MOST_PARSES = 24;

    private static final Pattern ZEROS = Pattern.compile("0+");

    private static final RuleId CALF = new RuleId("calf.abnf", "calf");

    private final GrammarMatcher matcher;
    private final RuleId utterance;
    private final RuleId facts;
    private final Set<String> factWords;
    private final Thresholds thresholds;

    /** An interpreter for what the grammar allows. */
    public UtteranceInterpreter(Grammar grammar, Thresholds thresholds) {
        this.matcher = new GrammarMatcher(grammar);
        this.utterance = grammar.ruleNamed("utterance");
        this.facts = grammar.ruleNamed("facts");
        this.factWords = Set.copyOf(grammar.tokens(List.of(facts)));
        this.thresholds = thresholds;
    }

    @Override
    public Interpretation interpret(Evidence evidence, SpeechTime speech, Listening listening) {
        return weighed(evidence, speech, listening).map(Weighed::meaning).orElseGet(() -> noMatch(evidence.plain()));
    }

    private Optional<Weighed> weighed(Evidence evidence, SpeechTime speech, Listening listening) {
        return Weighing.of(evidence, thresholds, hypothesis -> read(hypothesis, speech, listening))
                .or(() -> incomplete(evidence, speech, listening));
    }

    @Override
    public List<Misgiving> misgivings(Evidence evidence, SpeechTime speech, Listening listening) {
        return weighed(evidence, speech, listening).map(Weighed::misgivings).orElse(List.of());
    }

    @Override
    public Optional<Interpretation> continued(
            Interpretation before, List<Hypothesis> hypotheses, SpeechTime speech, Listening listening) {
        for (Hypothesis hypothesis : hypotheses) {
            for (ParseTree tree : matcher.match(facts, hypothesis.texts(), 1)) {
                List<SaidFact> more = StatementReader.facts(tree, speech);
                if (before instanceof Interpretation.Understood understood) {
                    return Optional.of(extended(
                            understood.words(),
                            understood.tree(),
                            understood.statement(),
                            List.of(),
                            more,
                            hypothesis.texts(),
                            speech,
                            listening));
                }
                if (before instanceof Interpretation.Unsure unsure && unsure.tree() != null && !unsure.isIncomplete()) {
                    return Optional.of(extended(
                            unsure.words(),
                            unsure.tree(),
                            unsure.best(),
                            unsure.doubts(),
                            more,
                            hypothesis.texts(),
                            speech,
                            listening));
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean begins(List<String> words) {
        return matcher.isPrefix(utterance, words);
    }

    private static Interpretation extended(
            List<String> wordsBefore,
            ParseTree tree,
            Statement before,
            List<Doubt> doubtsBefore,
            List<SaidFact> more,
            List<String> moreWords,
            SpeechTime speech,
            Listening listening) {
        Statement whole = before.and(more);
        List<String> words =
                Stream.concat(wordsBefore.stream(), moreWords.stream()).toList();
        List<Doubt> doubts = Stream.concat(doubtsBefore.stream(), Doubts.of(whole, tree, speech, listening).stream())
                .distinct()
                .toList();
        return doubts.isEmpty()
                ? new Interpretation.Understood(words, tree, whole)
                : new Interpretation.Unsure(words, tree, whole, doubts);
    }

    /** The meanings of one reading: empty when it does not parse whole. */
    Optional<Reading> read(Hypothesis hypothesis, SpeechTime speech, Listening listening) {
        List<String> words = hypothesis.texts();
        List<Reading> all = new ArrayList<>();
        for (ParseTree tree : matcher.match(utterance, words, MOST_PARSES)) {
            if (isFactTakenForFreeSpeech(tree)) {
                continue;
            }
            Reading reading = new Reading(words, tree, meaning(words, tree, speech, listening), hypothesis.score());
            if (all.stream().noneMatch(reading::sameMeaning)) {
                all.add(reading);
            }
        }
        List<Reading> clear = all.stream().filter(Reading::isClear).toList();
        // Words that can go together are one fact: "from cow 88, frozen" is one source, not two.
        List<Reading> candidates = clear.isEmpty() ? all : clear;
        int fewest = candidates.stream().mapToInt(Reading::facts).min().orElse(0);
        List<Reading> left =
                candidates.stream().filter(reading -> reading.facts() == fewest).toList();
        if (left.size() < 2) {
            return left.stream().findFirst();
        }
        Reading first = left.get(0);
        if (!(first.meaning() instanceof Interpretation.Understood understood)) {
            return Optional.of(first);
        }
        List<Statement> statements = left.stream()
                .map(Reading::meaning)
                .filter(Interpretation.Understood.class::isInstance)
                .map(meaning -> ((Interpretation.Understood) meaning).statement())
                .toList();
        return Optional.of(new Reading(
                words,
                first.tree(),
                new Interpretation.Unsure(
                        words, first.tree(), understood.statement(), List.of(new Doubt.Ambiguous(statements))),
                hypothesis.score()));
    }

    /** "Born now, bull" may be heard as "born, note bull": free speech is not made of the words of facts alone. */
    private boolean isFactTakenForFreeSpeech(ParseTree tree) {
        return tree.descendants()
                .filter(part -> part.rule().equals("open_speech"))
                .map(part -> part.children().get(0))
                .map(open -> open.words()
                        .subList(
                                Math.min(open.words().size(), opening(open)),
                                open.words().size()))
                .anyMatch(free -> !free.isEmpty() && factWords.containsAll(free));
    }

    private static int opening(ParseTree open) {
        return open.rule().equals("voice_note") ? 1 : 2;
    }

    private static Interpretation meaning(List<String> words, ParseTree tree, SpeechTime speech, Listening listening) {
        Optional<ParseTree> control = tree.child("control");
        if (control.isPresent()) {
            return control(words, tree, control.get());
        }
        ParseTree said = tree.children().get(0);
        Statement statement = StatementReader.statement(said, speech);
        List<Doubt> doubts = Doubts.of(statement, said, speech, listening);
        return doubts.isEmpty()
                ? new Interpretation.Understood(words, tree, statement)
                : new Interpretation.Unsure(words, tree, statement, doubts);
    }

    private static Interpretation control(List<String> words, ParseTree tree, ParseTree control) {
        ParseTree named = control.tag() != null ? control : control.children().get(0);
        return new Interpretation.ControlHeard(
                words,
                tree,
                Tags.term(Control.class, named),
                named.child("calf").map(StatementReader::calf).orElse(null));
    }

    /** A calf that was named, with as many whole facts as there are, of a sentence that is not at its end. */
    private Optional<Weighed> incomplete(Evidence evidence, SpeechTime speech, Listening listening) {
        return evidence.plain().stream()
                .filter(hypothesis -> begins(hypothesis.texts()))
                .flatMap(hypothesis -> begun(hypothesis.texts(), speech, listening)
                        .map(half -> judged(
                                half,
                                evidence.freeLead(
                                        hypothesis.score(), half.words().size())))
                        .stream())
                .findFirst();
    }

    private Weighed judged(Interpretation half, double freeLead) {
        return freeLead > thresholds.rejectFree()
                ? new Weighed(
                        new Interpretation.NoMatch(half.words()),
                        List.of(new Misgiving.FreeSpeechFits(freeLead, thresholds.rejectFree())))
                : new Weighed(half, List.of());
    }

    private Optional<Interpretation> begun(List<String> words, SpeechTime speech, Listening listening) {
        for (int end = words.size(); end >= 2; end--) {
            List<String> start = words.subList(0, end);
            for (ParseTree tree : matcher.match(utterance, start, 1)) {
                // Free speech takes any words, so a sentence with it is never begun only.
                if (tree.child("control").isEmpty()
                        && tree.descendant("open_speech").isEmpty()) {
                    Statement statement =
                            StatementReader.statement(tree.children().get(0), speech);
                    return Optional.of(incomplete(words, tree, statement, listening));
                }
            }
            for (ParseTree calf : matcher.match(CALF, start, 1)) {
                Statement statement = new Statement(StatementReader.calf(calf), List.of());
                return isCowsCall(statement.calf(), listening)
                        ? Optional.empty()
                        : Optional.of(incomplete(words, null, statement, listening));
            }
        }
        return Optional.empty();
    }

    /** It sounds like "calf oh", and no farm counts from zero; one that does has that calf on its list. */
    private static boolean isCowsCall(CalfReference calf, Listening listening) {
        return calf instanceof CalfReference.Numbered numbered
                && ZEROS.matcher(numbered.number()).matches()
                && !listening.openCalves().contains(numbered.number());
    }

    private static Interpretation incomplete(
            List<String> words, @Nullable ParseTree tree, Statement statement, Listening listening) {
        List<Doubt> doubts = new ArrayList<>(List.of(new Doubt.Incomplete()));
        if (statement.calf() instanceof CalfReference.Numbered numbered
                && !listening.openCalves().contains(numbered.number())) {
            doubts.add(new Doubt.NotListed(numbered.number()));
        }
        return new Interpretation.Unsure(words, tree, statement, doubts);
    }

    private static Interpretation noMatch(List<Hypothesis> hypotheses) {
        return new Interpretation.NoMatch(
                hypotheses.isEmpty() ? List.of() : hypotheses.get(0).texts());
    }
}
