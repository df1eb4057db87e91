package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.stream.Collectors;
import strawbed.entry.Answer;
import strawbed.entry.EntryUnit;
import strawbed.entry.Option;
import strawbed.entry.Refusal;
import strawbed.entry.Step;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** What stands on the buttons and over them, in few and short words. Immutable, safe for any thread. */
public final class EntryPhrases {
    private final Wording wording;
    private final Figures figures;

    /** @param zone the farm's */
    public EntryPhrases(Messages messages, ZoneId zone) {
        this.wording = new Written(messages);
        this.figures = new Figures(wording, zone);
    }

    /** Of a group, a kind, a unit, or a word of one of the program's lists: "Navel dipped". */
    public String label(Enum<?> constant) {
        return constant instanceof EntryUnit ? wording.word(constant) : capitalised(wording.word(constant));
    }

    /** Of a button of a choice. */
    public String label(Option option) {
        if (option instanceof Option.Word word) {
            return label(word.constant());
        }
        if (option instanceof Option.Name name) {
            return Arrays.stream(name.name().split(" ", -1))
                    .map(this::capitalised)
                    .collect(Collectors.joining(" "));
        }
        return number(((Option.Count) option).count());
    }

    /** Of an answer that is one press: "3 quarts", "10 min ago", "Bottle", "Not noted". */
    public String label(Answer answer) {
        if (answer instanceof Answer.NotNoted) {
            return capitalised(wording.text(ENTRY_NOT_NOTED));
        }
        if (answer instanceof Answer.Chosen chosen) {
            return label(chosen.option());
        }
        if (answer instanceof Answer.Amount amount) {
            return amount(amount);
        }
        if (answer instanceof Answer.Digits digits) {
            return figures.animal(digits.digits());
        }
        if (answer instanceof Answer.Ago ago) {
            return ago.duration().isZero()
                    ? capitalised(wording.text(JUST_NOW))
                    : wording.text(AGO, figures.shortly(ago.duration()));
        }
        if (answer instanceof Answer.Clock clock) {
            return clock.yesterday() ? wording.text(DAY_BEFORE, clock.digits()) : clock.digits();
        }
        return capitalised(wording.text(ENTRY_BETWEEN));
    }

    /** "Yesterday", beside the digits of a time of day. */
    public String yesterday() {
        return capitalised(wording.text(ENTRY_YESTERDAY));
    }

    /** A part of one that can be added to a whole number: "½". */
    public String part(BigDecimal part) {
        String quarters = part.multiply(new BigDecimal(4)).stripTrailingZeros().toPlainString();
        return switch (quarters) {
            case "1" -> "¼";
            case "2" -> "½";
            case "3" -> "¾";
            default -> wording.number(part);
        };
    }

    /** "How much?" */
    public String question(Step step) {
        return wording.word(step.question());
    }

    /** Why a press does not count, and what can be done: one short sentence. */
    public String refusal(Refusal refusal) {
        if (refusal instanceof Refusal.NotAsked) {
            return wording.text(ENTRY_REFUSED_NOT_ASKED);
        }
        if (refusal instanceof Refusal.Needed) {
            return wording.text(ENTRY_REFUSED_NEEDED);
        }
        if (refusal instanceof Refusal.NotOffered) {
            return wording.text(ENTRY_REFUSED_NOT_OFFERED);
        }
        if (refusal instanceof Refusal.OutOfRange range) {
            return wording.text(ENTRY_REFUSED_RANGE, wording.number(range.low()), wording.number(range.high()));
        }
        if (refusal instanceof Refusal.TooManyDecimals decimals) {
            return wording.text(ENTRY_REFUSED_DECIMALS, number(decimals.most()));
        }
        if (refusal instanceof Refusal.UnitNeeded) {
            return wording.text(ENTRY_REFUSED_UNIT);
        }
        if (refusal instanceof Refusal.WrongLength length) {
            return wording.text(ENTRY_REFUSED_LENGTH, number(length.least()), number(length.most()));
        }
        if (refusal instanceof Refusal.NoSuchTime) {
            return wording.text(ENTRY_REFUSED_TIME);
        }
        if (refusal instanceof Refusal.TooLongAgo ago) {
            return wording.text(ENTRY_REFUSED_AGO, figures.shortly(ago.most()));
        }
        return wording.text(ENTRY_REFUSED_NOT_OF_THIS);
    }

    private String amount(Answer.Amount said) {
        EntryUnit unit = said.unit();
        if (unit == null) {
            return wording.number(said.amount());
        }
        return switch (unit) {
            case QUART, PINT, LITRE -> figures.volume(new Volume(said.amount(), VolumeUnit.valueOf(unit.name())));
            case POUND, KILOGRAM -> figures.mass(new Mass(said.amount(), MassUnit.valueOf(unit.name())));
            case FAHRENHEIT, CELSIUS ->
                figures.temperature(new Temperature(said.amount(), TemperatureUnit.valueOf(unit.name())));
            case PERCENT, PER_MINUTE, MILLIGRAMS_A_MILLILITRE, GRAMS_A_DECILITRE, GRAMS_A_LITRE ->
                wording.number(said.amount()) + " " + wording.word(unit);
        };
    }

    private String number(int number) {
        return wording.number(BigDecimal.valueOf(number));
    }

    private String capitalised(String words) {
        return Sentences.capitalised(words, wording.messages().locale());
    }
}
