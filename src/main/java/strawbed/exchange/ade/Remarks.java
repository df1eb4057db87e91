package strawbed.exchange.ade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.event.Event.TwinNoted;
import strawbed.event.Term;
import strawbed.event.When;

/**
 * What of a birth has no field in the standard, as names and values. A calving ease score stays a score: farms count by
 * different scales, and the standard's words are of one.
 *
 * @param birth whether the times of birth have no field
 * @param parity whether the dam's calvings have no field
 * @param count whether the number of calves has no field
 * @param ease whether the calving ease has no field
 */
record Remarks(boolean birth, boolean parity, boolean count, boolean ease) {
    /** Empty when nothing is left to say. */
    Optional<String> of(List<CalfFacts> calves) {
        String remark = calves.stream()
                .filter(calf -> !notes(calf, calves.size()).isEmpty())
                .map(calf -> "calf " + calf.name() + ": " + String.join(", ", notes(calf, calves.size())))
                .collect(Collectors.joining("; "));
        return remark.isEmpty() ? Optional.empty() : Optional.of(remark);
    }

    private List<String> notes(CalfFacts calf, int calves) {
        List<String> notes = new ArrayList<>();
        // The field tells of twins when the first of them was born.
        if (birth || calves > 1) {
            note(notes, "born", calf.born().map(born -> time(born.value())));
        }
        note(notes, "found", calf.found().map(found -> time(found.value())));
        if (parity) {
            note(notes, "calvings of the dam", calf.parity().map(told -> String.valueOf(told.value())));
        }
        Optional<TwinNoted> twin = calf.twin().map(CalfFacts.Told::value);
        if (count) {
            note(notes, "one of", twin.map(noted -> String.valueOf(noted.count())));
        }
        note(notes, "born with", twin.map(TwinNoted::of));
        if (ease) {
            note(notes, "calving ease", calf.ease().map(told -> told.value().word()));
        }
        note(notes, "calving ease score", calf.easeScore().map(score -> String.valueOf(score.value())));
        note(notes, "presentation", calf.presentation().map(told -> word(told.value())));
        return notes;
    }

    private static void note(List<String> notes, String name, Optional<String> value) {
        value.filter(known -> !known.isBlank()).ifPresent(known -> notes.add(name + " " + known));
    }

    private static String word(Term term) {
        return term.word();
    }

    private static String time(When when) {
        if (when instanceof When.Between window) {
            return "between " + window.earliest() + " and " + window.latest();
        }
        return "at " + when.midpoint();
    }
}
