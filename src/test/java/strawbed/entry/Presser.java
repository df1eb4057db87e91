package strawbed.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;
import strawbed.statement.CalfReference;
import strawbed.statement.SaidFact;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;

/**
 * Finds the presses by which a statement is entered that is known from speech. It tries each kind of fact, answers each
 * step by what the event says, and keeps the draft whose newest fact is the wanted one.
 */
final class Presser {
    private final SpeechTime moment;
    private int presses;

    Presser(SpeechTime moment) {
        this.moment = moment;
    }

    /** How many presses the last statement took, the choice of the calf not counted. */
    int presses() {
        return presses;
    }

    /** The same statement made by buttons; empty where a fact cannot be entered. */
    Optional<Statement> enter(Statement spoken) {
        presses = 0;
        Optional<CalfReference> calf = calf(spoken.calf());
        if (calf.isEmpty()) {
            return Optional.empty();
        }
        EntryDraft draft = EntryDraft.start(calf.get(), moment, FarmChoices.USUAL);
        List<SaidFact> facts =
                spoken.facts().subList(calf.get().facts().size(), spoken.facts().size());
        for (SaidFact fact : facts) {
            Optional<EntryDraft> next = enter(draft, fact);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            draft = next.get();
        }
        return draft.finish();
    }

    /** Numbers on the list are picked from it, the others are made. */
    private Optional<CalfReference> calf(CalfReference spoken) {
        if (spoken instanceof CalfReference.Numbered || spoken instanceof CalfReference.Same) {
            return Optional.of(spoken);
        }
        for (CalfKind kind : CalfKind.values()) {
            CalfDraft draft = CalfDraft.start(kind, moment);
            for (int i = 0; i < 3 && draft.step().isPresent(); i++) {
                Optional<Answer> answer = answer(draft.step().get(), spoken);
                Outcome<CalfDraft> outcome = draft.answer(answer.orElse(new Answer.NotNoted()));
                if (outcome instanceof Outcome.Taken<CalfDraft> taken) {
                    draft = taken.next();
                } else {
                    break;
                }
            }
            if (draft.reference().equals(Optional.of(spoken))) {
                return draft.reference();
            }
        }
        return Optional.empty();
    }

    private static Optional<Answer> answer(Step step, CalfReference spoken) {
        if (spoken instanceof CalfReference.Renumbered renumbered) {
            return step.question() == Question.NEW_NUMBER
                    ? Optional.of(new Answer.Digits(renumbered.number()))
                    : answer(step, renumbered.calf());
        }
        if (spoken instanceof CalfReference.OfCow ofCow) {
            return step.question() == Question.ORDER
                    ? Optional.ofNullable(ofCow.order()).map(order -> new Answer.Chosen(new Option.Count(order)))
                    : Optional.of(new Answer.Digits(ofCow.dam()));
        }
        if (spoken instanceof CalfReference.New fresh) {
            return Optional.ofNullable(step.question() == Question.DAM ? fresh.dam() : fresh.number())
                    .map(Answer.Digits::new);
        }
        return Optional.empty();
    }

    private Optional<EntryDraft> enter(EntryDraft draft, SaidFact wanted) {
        int before = presses;
        for (EntryKind kind :
                draft.groups().stream().flatMap(group -> group.kinds().stream()).toList()) {
            presses = before + (draft.groups().size() == 1 ? 1 : 2);
            Optional<EntryDraft> made = enter(draft, kind, wanted);
            if (made.isPresent()) {
                return made;
            }
        }
        return Optional.empty();
    }

    private Optional<EntryDraft> enter(EntryDraft draft, EntryKind kind, SaidFact wanted) {
        EntryDraft now = taken(draft.begin(kind, moment.start())).orElseThrow();
        Steps answers = new Steps(wanted);
        // What is left out at the end needs no press.
        int leftOut = 0;
        while (now.step().isPresent()) {
            Step step = now.step().get();
            Optional<EntryDraft> next = Optional.empty();
            for (Answer answer : answers.to(step)) {
                next = taken(now.answer(answer));
                if (next.isPresent()) {
                    boolean says = !(answer instanceof Answer.NotNoted);
                    presses += says ? leftOut + cost(step, answer) : 0;
                    leftOut = says ? 0 : leftOut + 1;
                    break;
                }
            }
            if (next.isEmpty()) {
                // What is whole is not answered further; what is not is of another kind.
                break;
            }
            now = next.get();
        }
        if (!now.isWhole()) {
            return Optional.empty();
        }
        if (wanted.timeWasSaid() && !newest(now).timeWasSaid()) {
            EntryDraft asked = taken(now.askTime()).orElseThrow();
            Answer time = answers.time(asked.step().orElseThrow(), wanted.occurredAt());
            Optional<EntryDraft> timed = taken(asked.answer(time));
            if (timed.isEmpty()) {
                return Optional.empty();
            }
            presses += 1 + cost(asked.step().orElseThrow(), time);
            now = timed.get();
        }
        return newest(now).equals(wanted) ? Optional.of(now) : Optional.empty();
    }

    private static SaidFact newest(EntryDraft draft) {
        return draft.facts().get(draft.facts().size() - 1);
    }

    static Optional<EntryDraft> taken(Outcome<EntryDraft> outcome) {
        return outcome instanceof Outcome.Taken<EntryDraft> taken ? Optional.of(taken.next()) : Optional.empty();
    }

    /** A button is one press; what is typed is one for each digit and one to say that it is all. */
    static int cost(Step step, Answer answer) {
        if (answer instanceof Answer.Amount amount && step instanceof Step.Quantity pad) {
            Optional<EntryUnit> meant = pad.unitOf(amount.amount());
            EntryUnit unit = amount.unit() == null ? meant.orElseThrow() : amount.unit();
            if (pad.quick().contains(new Answer.Amount(amount.amount(), unit))) {
                return 1;
            }
            boolean unitToo = !meant.equals(Optional.of(unit));
            return digits(amount.amount().toPlainString(), pad) + (unitToo ? 1 : 0) + 1;
        }
        if (answer instanceof Answer.Digits digits) {
            return digits.digits().length() + 1;
        }
        if (answer instanceof Answer.Clock clock) {
            return clock.digits().length() + 1 + (clock.yesterday() ? 1 : 0);
        }
        return 1;
    }

    private static int digits(String typed, Step.Quantity pad) {
        return pad.parts().stream()
                .map(part -> part.toPlainString().substring(1))
                .filter(typed::endsWith)
                .findFirst()
                .map(part -> typed.length() - part.length() + 1)
                .orElse(typed.length());
    }

    /** What a fact answers to steps: for each step the answers that could be meant, the best first. */
    private final class Steps {
        private final SaidFact fact;
        private final List<String> texts = new ArrayList<>();
        private final List<Answer> amounts = new ArrayList<>();
        private final List<Option> options = new ArrayList<>();

        Steps(SaidFact fact) {
            this.fact = fact;
            for (var part : fact.event().getClass().getRecordComponents()) {
                try {
                    collect(part.getName(), part.getAccessor().invoke(fact.event()));
                } catch (ReflectiveOperationException e) {
                    throw new LinkageError("no accessor of a record", e);
                }
            }
        }

        private void collect(String name, Object value) {
            if (value instanceof Term term) {
                options.add(new Option.Word((Enum<?>) term));
            } else if (value instanceof String text) {
                text(name, text);
            } else if (value instanceof Integer count) {
                options.add(new Option.Count(count));
                amounts.add(new Answer.Amount(new java.math.BigDecimal(count), null));
            } else if (value instanceof java.math.BigDecimal number) {
                amounts.add(new Answer.Amount(number, null));
            } else if (value instanceof Volume volume) {
                amounts.add(new Answer.Amount(volume.amount(), EntryUnit.of(volume.unit())));
            } else if (value instanceof Mass mass) {
                amounts.add(new Answer.Amount(mass.amount(), EntryUnit.of(mass.unit())));
            } else if (value instanceof Temperature degrees) {
                amounts.add(new Answer.Amount(degrees.amount(), EntryUnit.of(degrees.unit())));
            }
        }

        private void text(String name, String text) {
            texts.add(text);
            options.add(new Option.Name(text));
            for (Class<? extends Enum<?>> list :
                    List.of(SwollenPlace.class, GumColour.class, ReflexStrength.class, NumberedPlace.class)) {
                for (Enum<?> word : list.getEnumConstants()) {
                    String said = ((Term) word).word();
                    if (text.equals(said) || (name.equals("place") && text.matches(said + " \\d+"))) {
                        options.add(new Option.Word(word));
                        texts.add(text.substring(Math.min(text.length(), said.length() + 1)));
                    }
                }
            }
        }

        List<Answer> to(Step step) {
            List<Answer> leftOut = step.mayBeLeftOut() ? List.of(new Answer.NotNoted()) : List.of();
            return Stream.concat(said(step), leftOut.stream()).toList();
        }

        private Stream<Answer> said(Step step) {
            if (step instanceof Step.Choose choose) {
                return choose.options().stream().filter(options::contains).map(Answer.Chosen::new);
            }
            if (step instanceof Step.Digits digits) {
                return number(digits.question()).map(Answer.Digits::new);
            }
            if (step instanceof Step.Quantity) {
                return quantity(step.question());
            }
            return when((Step.Time) step).stream();
        }

        /** The cow and the batch of one source are told apart; of a move only the number is typed. */
        private Stream<String> number(Question question) {
            if (fact.event() instanceof Event.ColostrumSourceNoted source) {
                return Stream.ofNullable(question == Question.COW ? source.cow() : source.batch());
            }
            return texts.stream().sorted(java.util.Comparator.comparing(String::length));
        }

        /** Events with two quantities of one kind, or with a quantity that is left out. */
        private Stream<Answer> quantity(Question question) {
            if (fact.event() instanceof Event.ColostrumFed fed && question == Question.WARMED_TO) {
                return fed.warmedTo() == null ? Stream.of() : amounts.stream().skip(1);
            }
            if (fact.event() instanceof Event.ColostrumStored stored && question == Question.BRIX) {
                return stored.brix() == null ? Stream.of() : amounts.stream().skip(1);
            }
            if (question == Question.MILK_TEMPERATURE || question == Question.HUMIDITY) {
                return amounts.stream().skip(1);
            }
            return amounts.stream();
        }

        private Optional<Answer> when(Step.Time step) {
            if (step.question() == Question.DRAWN) {
                return fact.event() instanceof Event.SerumTested tested && tested.drawnAt() != null
                        ? Optional.of(time(step, tested.drawnAt()))
                        : Optional.empty();
            }
            if (!fact.timeWasSaid()) {
                return Optional.empty();
            }
            When when = fact.event() instanceof Event.CalfBorn born
                    ? born.when()
                    : fact.event() instanceof Event.CalfFound found ? found.when() : new When.At(fact.occurredAt());
            if (when instanceof When.Between window) {
                return Optional.of(
                        switch (step.question()) {
                            case EARLIEST -> time(step, window.earliest());
                            case LATEST -> time(step, window.latest());
                            default -> new Answer.Between();
                        });
            }
            return Optional.of(time(step, when.midpoint()));
        }

        /** One of the buttons, else by the clock. */
        Answer time(Step step, Instant at) {
            Duration ago = Duration.between(at, moment.start());
            if (((Step.Time) step).ago().contains(ago)) {
                return new Answer.Ago(ago);
            }
            LocalTime time = at.atZone(moment.zone()).toLocalTime();
            boolean near = ago.compareTo(Duration.ofHours(12)) < 0 && step.question() != Question.EARLIEST;
            String digits = near
                    ? "%d%02d".formatted((time.getHour() + 11) % 12 + 1, time.getMinute())
                    : "%02d%02d".formatted(time.getHour(), time.getMinute());
            boolean today = at.atZone(moment.zone())
                    .toLocalDate()
                    .equals(moment.start().atZone(moment.zone()).toLocalDate());
            return new Answer.Clock(digits, !near && !today && step.question() != Question.EARLIEST);
        }
    }
}
