package strawbed.text;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.statement.CalfReference;

/** How a calf is called: by its number, else by the cow that bore it. Immutable, safe for any thread. */
public final class CalfNames {
    private final Wording wording;

    /** For the eye. */
    public CalfNames(Messages messages) {
        this(new Written(messages));
    }

    CalfNames(Wording wording) {
        this.wording = wording;
    }

    /** "calf 417", "calf of cow 212"; of several open ones of the cow, "second calf of cow 212". */
    public String of(CalfRecord calf, Herd herd) {
        return calf.number()
                .map(this::numbered)
                .orElseGet(() -> calf.dam()
                        .map(dam -> ofCow(dam, order(calf, herd.byDam(dam)).orElse(null)))
                        .orElseGet(() -> wording.text(MessageKey.CALF_WITHOUT_NUMBER)));
    }

    /** "calf 417", "calf of cow 212". */
    public String of(CalfRecord calf) {
        return of(calf, Herd.of(List.of()));
    }

    /** As it was said: "calf 417", "same calf", "new calf 512 of cow 212". */
    public String of(CalfReference said) {
        if (said instanceof CalfReference.Numbered calf) {
            return numbered(calf.number());
        }
        if (said instanceof CalfReference.Same) {
            return wording.text(MessageKey.CALF_SAME);
        }
        if (said instanceof CalfReference.OfCow calf) {
            return ofCow(calf.dam(), calf.order());
        }
        if (said instanceof CalfReference.New calf) {
            return opened(calf.number(), calf.dam());
        }
        if (said instanceof CalfReference.Renumbered calf) {
            return of(calf.calf());
        }
        if (said instanceof CalfReference.Listed) {
            return wording.text(MessageKey.CALF_WITHOUT_NUMBER);
        }
        if (said instanceof CalfReference.Barn) {
            return wording.text(MessageKey.BARN);
        }
        throw new AssertionError(said);
    }

    String numbered(String number) {
        return wording.text(MessageKey.CALF_NUMBERED, wording.digits(number));
    }

    String opened(@Nullable String number, @Nullable String dam) {
        if (number == null) {
            return dam == null
                    ? wording.text(MessageKey.CALF_NEW)
                    : wording.text(MessageKey.CALF_NEW_OF_COW, wording.digits(dam));
        }
        return dam == null
                ? wording.text(MessageKey.CALF_NEW_NUMBERED, wording.digits(number))
                : wording.text(MessageKey.CALF_NEW_NUMBERED_OF_COW, wording.digits(number), wording.digits(dam));
    }

    private String ofCow(String dam, @Nullable Integer order) {
        List<String> orders = List.of(wording.text(MessageKey.ORDER_WORDS).split(" ", -1));
        return order == null || order > orders.size()
                ? wording.text(MessageKey.CALF_OF_COW, wording.digits(dam))
                : wording.text(MessageKey.CALF_IN_ORDER, orders.get(order - 1), wording.digits(dam));
    }

    /** Its place among the calves that a person would have to tell apart. */
    private static Optional<Integer> order(CalfRecord calf, List<CalfRecord> ofTheCow) {
        int place = ofTheCow.stream().map(CalfRecord::id).toList().indexOf(calf.id());
        return place < 0 || ofTheCow.size() == 1 ? Optional.empty() : Optional.of(place + 1);
    }
}
