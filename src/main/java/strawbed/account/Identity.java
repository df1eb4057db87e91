package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.event.When;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** Who the calf is, and how it came. What is not on record is blank: the card says what that means. */
public record Identity(CalfRecord calf, Messages messages, Figures figures) {
    public String number() {
        return calf.number()
                .orElseGet(() -> calf.dam()
                        .map(dam -> messages.text(CARD_COW, dam))
                        .orElseGet(() -> messages.text(CARD_NO_NUMBER)));
    }

    public String sex() {
        return messages.text(calf.sex()
                .map(sex -> switch (sex) {
                    case FEMALE -> CARD_SEX_FEMALE;
                    case MALE -> CARD_SEX_MALE;
                })
                .orElse(CARD_SEX_UNKNOWN));
    }

    public String born() {
        String found = calf.found().map(this::when).orElse("");
        if (calf.born().isEmpty()) {
            return found.isEmpty() ? "" : messages.text(CARD_FOUND, found);
        }
        String born = when(calf.born().get());
        return found.isEmpty()
                ? born
                : messages.text(
                        CARD_BORN_AND_FOUND,
                        born,
                        clock(calf.born().get().midpoint(), calf.found().get().midpoint()));
    }

    public String dam() {
        return calf.dam()
                .map(dam -> calf.parity()
                        .map(parity -> messages.text(CARD_DAM_PARITY, dam, count(parity)))
                        .orElse(dam))
                .orElse("");
    }

    public String birth() {
        return Stream.of(
                        calf.ease().map(messages::word),
                        calf.easeScore().map(score -> messages.text(CARD_EASE_SCORE, count(score))),
                        calf.presentation().map(messages::word))
                .flatMap(part -> part.stream())
                .collect(Collectors.joining(", "));
    }

    private String when(When when) {
        if (when instanceof When.Between window) {
            return messages.text(
                    CARD_BETWEEN,
                    figures.day(window.earliest()),
                    figures.clock(window.earliest()),
                    clock(window.earliest(), window.latest()));
        }
        return figures.dayAndClock(when.midpoint());
    }

    private String clock(Instant seenFrom, Instant at) {
        return figures.clockAsSeenFrom(seenFrom, at);
    }

    private String count(int count) {
        return figures.number(BigDecimal.valueOf(count));
    }
}
