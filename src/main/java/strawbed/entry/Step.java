package strawbed.entry;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.statement.Scale;

/** One page: what is asked, and what can be pressed. */
public sealed interface Step {
    Question question();

    /** Whether the fact is whole without it. Then the next fact can be begun at once, or "not noted" be pressed. */
    boolean mayBeLeftOut();

    /** Why an answer cannot be taken; empty if it can. */
    default Optional<Refusal> refusal(Answer answer) {
        if (answer instanceof Answer.NotNoted) {
            return mayBeLeftOut() ? Optional.empty() : Optional.of(new Refusal.Needed());
        }
        return refusalOfValue(answer);
    }

    /** Why an answer that says something cannot be taken. */
    Optional<Refusal> refusalOfValue(Answer answer);

    /** One of some buttons. */
    record Choose(Question question, List<Option> options, boolean mayBeLeftOut) implements Step {
        public Choose {
            options = List.copyOf(options);
        }

        @Override
        public Optional<Refusal> refusalOfValue(Answer answer) {
            if (!(answer instanceof Answer.Chosen chosen)) {
                return Optional.of(new Refusal.NotAsked());
            }
            return options.contains(chosen.option()) ? Optional.empty() : Optional.of(new Refusal.NotOffered());
        }
    }

    /**
     * A number pad with units.
     *
     * @param units the first is meant where none is chosen and no scale tells another
     * @param scale tells Fahrenheit from Celsius by the number alone; null where there is nothing to tell
     * @param low the least that is possible
     * @param high the most that is possible
     * @param decimals how many digits may stand behind the point
     * @param quick what can be had by one press
     * @param parts what can be added to a whole number by one press, such as a half
     */
    record Quantity(
            Question question,
            List<EntryUnit> units,
            @Nullable Scale scale,
            BigDecimal low,
            BigDecimal high,
            int decimals,
            List<Answer.Amount> quick,
            List<BigDecimal> parts,
            boolean mayBeLeftOut)
            implements Step {
        public Quantity {
            units = List.copyOf(units);
            quick = List.copyOf(quick);
            parts = List.copyOf(parts);
        }

        /** The unit that an amount has where none was chosen; empty where the number alone does not tell. */
        public Optional<EntryUnit> unitOf(BigDecimal amount) {
            if (scale == null) {
                return Optional.of(units.get(0));
            }
            return scale.isUnclear(amount) ? Optional.empty() : Optional.of(EntryUnit.of(scale.unitOf(amount)));
        }

        @Override
        public Optional<Refusal> refusalOfValue(Answer answer) {
            if (!(answer instanceof Answer.Amount said)) {
                return Optional.of(new Refusal.NotAsked());
            }
            if (said.unit() != null && !units.contains(said.unit())) {
                return Optional.of(new Refusal.NotOffered());
            }
            if (said.amount().compareTo(low) < 0 || said.amount().compareTo(high) > 0) {
                return Optional.of(new Refusal.OutOfRange(low, high));
            }
            if (said.amount().stripTrailingZeros().scale() > decimals) {
                return Optional.of(new Refusal.TooManyDecimals(decimals));
            }
            return said.unit() == null && unitOf(said.amount()).isEmpty()
                    ? Optional.of(new Refusal.UnitNeeded())
                    : Optional.empty();
        }
    }

    /**
     * A pad for the digits of a number that names something.
     *
     * @param least how many digits it has at least
     * @param most how many at most
     * @param beginnings what many such numbers begin with, by one press
     */
    record Digits(Question question, int least, int most, List<String> beginnings, boolean mayBeLeftOut)
            implements Step {
        public Digits {
            beginnings = List.copyOf(beginnings);
        }

        @Override
        public Optional<Refusal> refusalOfValue(Answer answer) {
            if (!(answer instanceof Answer.Digits said)) {
                return Optional.of(new Refusal.NotAsked());
            }
            String digits = said.digits();
            return digits.length() >= least && digits.length() <= most && TimeOfDay.isDigits(digits)
                    ? Optional.empty()
                    : Optional.of(new Refusal.WrongLength(least, most));
        }
    }

    /**
     * When something was.
     *
     * @param ago what can be had by one press; empty where only a time of day is asked
     * @param canBeBetween whether it may be known by two times only
     */
    record Time(Question question, List<Duration> ago, boolean canBeBetween, boolean mayBeLeftOut) implements Step {
        /** The longest time ago, as it can be told in words. */
        public static final Duration LONGEST_AGO = Duration.ofHours(13);

        public Time {
            ago = List.copyOf(ago);
        }

        @Override
        public Optional<Refusal> refusalOfValue(Answer answer) {
            if (answer instanceof Answer.Clock clock) {
                return TimeOfDay.read(clock.digits()).isEmpty()
                        ? Optional.of(new Refusal.NoSuchTime())
                        : Optional.empty();
            }
            if (answer instanceof Answer.Ago said && !ago.isEmpty()) {
                return said.duration().isNegative() || said.duration().compareTo(LONGEST_AGO) > 0
                        ? Optional.of(new Refusal.TooLongAgo(LONGEST_AGO))
                        : Optional.empty();
            }
            return answer instanceof Answer.Between && canBeBetween
                    ? Optional.empty()
                    : Optional.of(new Refusal.NotAsked());
        }
    }
}
