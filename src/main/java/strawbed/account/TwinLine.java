package strawbed.account;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event.TwinNoted;
import strawbed.text.CalfNames;
import strawbed.text.Figures;
import strawbed.text.Messages;

/** The line that names the calves born with this one. */
public record TwinLine(Messages messages, Figures figures) {
    public Optional<String> of(CalfRecord calf, Herd herd) {
        List<CalfRecord> others = herd.twinsOf(calf);
        int born = Stream.concat(Stream.of(calf), others.stream())
                .flatMap(each -> each.twin().stream())
                .mapToInt(TwinNoted::count)
                .max()
                .orElse(others.size() + 1);
        if (born < 2) {
            return Optional.empty();
        }
        Optional<String> named = others.stream()
                .map(other -> named(other, herd))
                .reduce((one, other) -> messages.text(CARD_NAMES_JOIN, one, other))
                .or(() -> calf.twin().map(TwinNoted::of).map(figures::animal));
        if (born == 2) {
            return Optional.of(
                    named.map(name -> messages.text(CARD_TWIN_OF, name)).orElseGet(() -> messages.text(CARD_TWIN)));
        }
        return Optional.of(named.map(name -> messages.text(CARD_MULTIPLE_WITH, name))
                .orElseGet(() -> messages.text(CARD_MULTIPLE, figures.number(BigDecimal.valueOf(born)))));
    }

    /** With its sex, because that of a twin decides whether a heifer will breed. */
    private String named(CalfRecord calf, Herd herd) {
        String name = calf.number().orElseGet(() -> new CalfNames(messages).of(calf, herd));
        return calf.sex()
                .map(sex -> messages.text(CARD_NAMED_TWIN, name, messages.word(sex)))
                .orElse(name);
    }
}
