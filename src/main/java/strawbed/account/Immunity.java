package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import strawbed.calf.CalfRecord;
import strawbed.care.AgeStart;
import strawbed.care.Farm;
import strawbed.care.ImmunityCategory;
import strawbed.care.Judged;
import strawbed.care.PassiveImmunity;
import strawbed.event.Term.SerumMeasure;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** A calf's passive immunity, as its serum tells it. */
record Immunity(CalfRecord calf, Farm farm, Messages messages, Figures figures) {
    Line line() {
        Judged<PassiveImmunity> judged = PassiveImmunity.of(calf, farm);
        return new Judgements(messages)
                .line(
                        ACCOUNT_IMMUNITY,
                        judged,
                        this::verdict,
                        judged.value().map(this::reasons).orElse(List.of()));
    }

    private String verdict(PassiveImmunity immunity) {
        return messages.text(
                ACCOUNT_IMMUNITY_IS,
                messages.word(immunity.category()),
                measure(immunity.measure(), figures.number(immunity.shown())),
                figures.shortly(immunity.age()));
    }

    private List<String> reasons(PassiveImmunity immunity) {
        List<String> reasons = new ArrayList<>();
        reasons.add(messages.text(
                ACCOUNT_IMMUNITY_WHY,
                Arrays.stream(ImmunityCategory.values())
                        .flatMap(category -> category.from(immunity.measure()).stream()
                                .map(from -> messages.text(
                                        ACCOUNT_IMMUNITY_FROM, messages.word(category), figures.number(from))))
                        .collect(Collectors.joining(", "))));
        immunity.notes().forEach(note -> reasons.add(messages.word(note)));
        if (immunity.start().basis() != AgeStart.Basis.BORN) {
            reasons.add(messages.word(immunity.start().basis()));
        }
        return reasons;
    }

    private String measure(SerumMeasure measure, String value) {
        return messages.text(
                switch (measure) {
                    case PROTEIN -> ACCOUNT_SERUM_PROTEIN;
                    case BRIX -> ACCOUNT_SERUM_BRIX;
                    case IGG -> ACCOUNT_SERUM_ANTIBODY;
                },
                value);
    }
}
