package strawbed.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Some steps and the answers to the first of them.
 *
 * @param steps in the order in which they are asked
 */
record Asking(List<Asked> steps, Given given) {
    Asking {
        steps = List.copyOf(steps);
    }

    /** What is asked now; empty when all is answered. */
    Optional<Step> step() {
        return open().findFirst();
    }

    /** Whether all that has to be known is known. */
    boolean isWhole() {
        return open().allMatch(Step::mayBeLeftOut);
    }

    private Stream<Step> open() {
        return steps.stream()
                .filter(asked -> !given.isAnswered(asked.step().question()))
                .filter(asked -> asked.when().test(given))
                .map(Asked::step);
    }

    Outcome<Asking> answer(Answer answer) {
        Optional<Step> now = step();
        if (now.isEmpty()) {
            return new Outcome.Refused<>(new Refusal.NotAsked());
        }
        Step step = now.get();
        return step.refusal(answer)
                .<Outcome<Asking>>map(Outcome.Refused::new)
                .orElseGet(() ->
                        new Outcome.Taken<>(new Asking(steps, given.with(step.question(), withUnit(step, answer)))));
    }

    /** An amount always has its unit, so that whoever reads it need not know the pad. */
    private static Answer withUnit(Step step, Answer answer) {
        return step instanceof Step.Quantity pad && answer instanceof Answer.Amount said && said.unit() == null
                ? new Answer.Amount(said.amount(), pad.unitOf(said.amount()).orElse(null))
                : answer;
    }
}
