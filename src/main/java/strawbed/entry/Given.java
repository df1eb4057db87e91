package strawbed.entry;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;
import strawbed.statement.ClockTimes;
import strawbed.statement.SpeechTime;

/**
 * The answers so far. Only answers that their steps take come here; what was left out is there as "not noted".
 *
 * @param moment what times are counted from
 */
record Given(Map<Question, Answer> answers, SpeechTime moment) {
    Given {
        Map<Question, Answer> copy = new EnumMap<>(Question.class);
        copy.putAll(answers);
        answers = Collections.unmodifiableMap(copy);
    }

    static Given nothing(SpeechTime moment) {
        return new Given(Map.of(), moment);
    }

    Given with(Question question, Answer answer) {
        Map<Question, Answer> more = new EnumMap<>(Question.class);
        more.putAll(answers);
        more.put(question, answer);
        return new Given(more, moment);
    }

    Given without(Question... questions) {
        Map<Question, Answer> fewer = new EnumMap<>(Question.class);
        fewer.putAll(answers);
        for (Question question : questions) {
            fewer.remove(question);
        }
        return new Given(fewer, moment);
    }

    boolean isAnswered(Question question) {
        return answers.containsKey(question);
    }

    /** Whether the answer says something. */
    boolean has(Question question) {
        return isAnswered(question) && !(answers.get(question) instanceof Answer.NotNoted);
    }

    boolean isBetween() {
        return answers.get(Question.WHEN) instanceof Answer.Between;
    }

    <T extends Enum<T>> @Nullable T word(Class<T> list, Question question) {
        return option(question)
                .filter(Option.Word.class::isInstance)
                .map(option -> ((Option.Word) option).constant())
                .filter(list::isInstance)
                .map(list::cast)
                .orElse(null);
    }

    @Nullable
    String name(Question question) {
        return option(question)
                .filter(Option.Name.class::isInstance)
                .map(option -> ((Option.Name) option).name())
                .orElse(null);
    }

    @Nullable
    Integer count(Question question) {
        return option(question)
                .filter(Option.Count.class::isInstance)
                .map(option -> ((Option.Count) option).count())
                .orElse(null);
    }

    private Optional<Option> option(Question question) {
        return answers.get(question) instanceof Answer.Chosen chosen ? Optional.of(chosen.option()) : Optional.empty();
    }

    /** Digits as they were pressed. */
    @Nullable
    String digits(Question question) {
        return answers.get(question) instanceof Answer.Digits said ? said.digits() : null;
    }

    /** An animal's number, without zeros in front, as the record has it when it is spoken. */
    @Nullable
    String animal(Question question) {
        String digits = digits(question);
        return digits == null ? null : String.valueOf(Integer.parseInt(digits));
    }

    /** A whole figure. */
    @Nullable
    BigDecimal whole(Question question) {
        return answers.get(question) instanceof Answer.Amount said
                ? said.amount().setScale(0)
                : null;
    }

    /** A figure that may have a point, in the form that it has when it is spoken. */
    @Nullable
    BigDecimal amount(Question question) {
        return answers.get(question) instanceof Answer.Amount said
                ? said.amount().stripTrailingZeros()
                : null;
    }

    @Nullable
    Volume volume(Question question) {
        return answers.get(question) instanceof Answer.Amount said && said.unit() != null
                ? new Volume(said.amount(), said.unit().volume())
                : null;
    }

    @Nullable
    Mass mass(Question question) {
        return answers.get(question) instanceof Answer.Amount said && said.unit() != null
                ? new Mass(said.amount(), said.unit().mass())
                : null;
    }

    @Nullable
    Temperature temperature(Question question) {
        return answers.get(question) instanceof Answer.Amount said && said.unit() != null
                ? new Temperature(said.amount(), said.unit().temperature())
                : null;
    }

    /** When the fact happened: where nobody told, now. */
    When when() {
        if (isBetween()) {
            Instant latest = instant(Question.LATEST, moment);
            // The window begins at the nearest such time before it ends.
            return new When.Between(instant(Question.EARLIEST, new SpeechTime(latest, moment.zone())), latest);
        }
        return new When.At(instant(Question.WHEN, moment));
    }

    @Nullable
    Instant drawn() {
        return has(Question.DRAWN) ? instant(Question.DRAWN, moment) : null;
    }

    private Instant instant(Question question, SpeechTime from) {
        Answer answer = answers.get(question);
        if (answer instanceof Answer.Ago ago) {
            return from.start().minus(ago.duration());
        }
        if (answer instanceof Answer.Clock clock) {
            return clock.yesterday()
                    ? ClockTimes.yesterday(List.of(TimeOfDay.ofWholeDay(clock.digits())), from)
                    : ClockTimes.nearest(TimeOfDay.read(clock.digits()).orElseThrow(), from);
        }
        return from.start();
    }
}
