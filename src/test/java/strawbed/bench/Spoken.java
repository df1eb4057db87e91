package strawbed.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import strawbed.testkit.SpokenSentence;

/** A sentence of the table, spoken to a file. */
public record Spoken(SpokenSentence sentence, Path file) {
    /** How it came out. */
    public Outcome outcome(List<HeardLine> heard) {
        return outcome(sentence, heard);
    }

    /** How a sentence came out. A noise that was not understood beside it changes no record and does not count. */
    static Outcome outcome(SpokenSentence sentence, List<HeardLine> lines) {
        List<HeardLine> heard = lines.stream()
                .filter(line -> line.isUnderstood() || line.isUnsure())
                .toList();
        boolean right = heard.size() == 1 && heard.get(0).says(sentence);
        if (heard.stream().anyMatch(HeardLine::isUnderstood)) {
            return right ? Outcome.RIGHT : Outcome.WRONG;
        }
        if (heard.stream().anyMatch(HeardLine::isUnsure)) {
            return right ? Outcome.ASKED_RIGHT : Outcome.ASKED_WRONG;
        }
        return Outcome.NOT_UNDERSTOOD;
    }

    /** What was heard, as one text; a bar parts utterances. */
    public static String words(List<HeardLine> heard) {
        return heard.isEmpty()
                ? "(nothing)"
                : heard.stream().map(HeardLine::words).collect(Collectors.joining(" | "));
    }
}
