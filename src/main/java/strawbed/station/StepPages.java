package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import strawbed.entry.Answer;
import strawbed.entry.EntryUnit;
import strawbed.entry.Step;
import strawbed.text.EntryPhrases;

/** The page of one step: keys to choose from, or a pad of digits. */
record StepPages(Frame frame, EntryPhrases phrases) {
    private static final String POINT = ".";

    /** In the order of a telephone's, beside them what takes back and the point. */
    private static final List<String> DIGITS = List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", "0");

    /**
     * What the page stands in.
     *
     * @param name whose facts they are
     * @param more keys behind those of the step
     * @param back where back leads
     * @param typing the page after something was typed
     * @param answering the page after an answer
     */
    record Around(
            String name, List<Key> more, Act back, Function<Typed, Place> typing, Function<Answer, Place> answering) {}

    Screen of(Step step, Typed typed, Known known, Around around) {
        if (step instanceof Step.Choose choose) {
            List<Key> keys = choose.options().stream()
                    .map(option -> answer(phrases.label(option), new Answer.Chosen(option), around))
                    .toList();
            return page(step, typed, known, keys, List.of(), around);
        }
        if (step instanceof Step.Digits number) {
            List<Key> beginnings = number.beginnings().stream()
                    .map(digits -> type(digits, typed.and(digits), around))
                    .toList();
            return pad(step, typed, known, beginnings, around, false, new Answer.Digits(typed.digits()));
        }
        if (step instanceof Step.Quantity quantity) {
            return quantity(quantity, typed, known, around);
        }
        if (step instanceof Step.Time time) {
            return time(time, typed, known, around);
        }
        throw new AssertionError(step);
    }

    private Screen quantity(Step.Quantity step, Typed typed, Known known, Around around) {
        if (!typed.onPad() && !step.quick().isEmpty()) {
            List<Key> keys = Stream.concat(
                            step.quick().stream().map(amount -> answer(phrases.label(amount), amount, around)),
                            Stream.of(other(typed, around)))
                    .toList();
            return page(step, typed, known, keys, List.of(), around);
        }
        List<Key> units = new ArrayList<>();
        if (step.units().size() > 1 && typed.digits().isEmpty()) {
            for (EntryUnit unit : step.units()) {
                boolean isChosen = typed.unit()
                        .map(unit::equals)
                        .orElse(step.scale() == null && unit == step.units().get(0));
                units.add(Key.of(
                        phrases.label(unit),
                        isChosen ? Rank.CHOSEN : Rank.USUAL,
                        new Act.Go(around.typing().apply(typed.in(unit)))));
            }
        }
        if (!typed.digits().isEmpty() && !typed.digits().contains(POINT)) {
            step.parts()
                    .forEach(part -> units.add(type(
                            phrases.part(part), typed.and(part.toPlainString().replaceFirst("^0", "")), around)));
        }
        Answer answer = new Answer.Amount(number(typed.digits()), typed.unit().orElse(null));
        return pad(step, typed, known, units, around, step.decimals() > 0, answer);
    }

    private Screen time(Step.Time step, Typed typed, Known known, Around around) {
        if (!typed.onPad() && !step.ago().isEmpty()) {
            // What does not fit is pressed as a time of day.
            int others = step.canBeBetween() ? 2 : 1;
            List<Key> keys = new ArrayList<>(step.ago().stream()
                    .limit(Frame.PAGE - others)
                    .map(ago -> answer(phrases.label(new Answer.Ago(ago)), new Answer.Ago(ago), around))
                    .toList());
            keys.add(frame.go(STATION_CLOCK_TIME, around.typing().apply(typed.pad())));
            if (step.canBeBetween()) {
                keys.add(answer(phrases.label(new Answer.Between()), new Answer.Between(), around));
            }
            return page(step, typed, known, keys, List.of(), around);
        }
        Key yesterday = answer(phrases.yesterday(), new Answer.Clock(typed.digits(), true), around);
        List<Key> extra = typed.digits().isEmpty() ? List.of() : List.of(yesterday);
        return pad(step, typed, known, extra, around, false, new Answer.Clock(typed.digits(), false));
    }

    private Screen pad(
            Step step, Typed typed, Known known, List<Key> extra, Around around, boolean point, Answer answer) {
        List<Key> keys = new ArrayList<>();
        for (int row = 0; row < 3; row++) {
            for (String digit : DIGITS.subList(row * 3, row * 3 + 3)) {
                keys.add(type(digit, typed.and(digit), around));
            }
            keys.add(
                    switch (row) {
                        case 0 ->
                            Key.of(
                                    frame.text(STATION_DELETE),
                                    Rank.USUAL,
                                    new Act.Go(around.typing().apply(typed.shorter())));
                        case 1 ->
                            point && !typed.digits().contains(POINT)
                                    ? type(POINT, typed.and(POINT), around)
                                    : Key.of(
                                            " ",
                                            Rank.USUAL,
                                            new Act.Go(around.typing().apply(typed)));
                        default -> type("0", typed.and("0"), around);
                    });
        }
        List<Key> below = new ArrayList<>(extra);
        if (!typed.digits().isEmpty()) {
            below.add(Key.of(
                    frame.text(STATION_ENTER),
                    Rank.YES,
                    new Act.Go(around.answering().apply(answer))));
        }
        return page(step, typed, known, keys, below, around);
    }

    private Screen page(Step step, Typed typed, Known known, List<Key> keys, List<Key> below, Around around) {
        List<Key> foot = new ArrayList<>(below);
        if (step.mayBeLeftOut() && typed.digits().isEmpty()) {
            foot.add(answer(phrases.label(new Answer.NotNoted()), new Answer.NotNoted(), around));
        }
        if (typed.digits().isEmpty()) {
            foot.addAll(around.more());
        }
        String asked = frame.text(STATION_ASKED, around.name(), phrases.question(step));
        String heading = typed.digits().isEmpty() ? asked : asked + " " + typed.digits();
        String note = typed.refused().map(phrases::refusal).orElse(known.note());
        return frame.near(known, heading, note, new Body.Choices(keys), foot, around.back());
    }

    private static Key answer(String label, Answer answer, Around around) {
        return Key.of(label, Rank.USUAL, new Act.Go(around.answering().apply(answer)));
    }

    private static Key type(String label, Typed typed, Around around) {
        return Key.of(label, Rank.USUAL, new Act.Go(around.typing().apply(typed)));
    }

    private Key other(Typed typed, Around around) {
        return frame.go(STATION_OTHER, around.typing().apply(typed.pad()));
    }

    /** Nothing typed, or a point alone, is nothing: it is never taken, as the page has no key for it then. */
    private static BigDecimal number(String digits) {
        String plain = digits.endsWith(POINT) ? digits + "0" : digits;
        return plain.isEmpty() || plain.equals(".0") ? BigDecimal.ZERO : new BigDecimal(plain);
    }
}
