package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import strawbed.dialog.Pending;
import strawbed.dialog.Target;
import strawbed.event.Provenance;
import strawbed.statement.Doubt;
import strawbed.statement.Interpretation;

/** Why a statement would be asked about, without the dialog that asks: one sentence for each doubt, as shown. */
public final class DoubtWords {
    private final Written wording;
    private final DoubtPhrases phrases;

    /** @param zone the farm's zone */
    public DoubtWords(Messages messages, ZoneId zone) {
        this.wording = new Written(messages);
        this.phrases = new DoubtPhrases(wording, zone);
    }

    /** The sentences, in the order of the doubts. */
    public List<String> of(Interpretation.Unsure unsure, Instant now) {
        Pending pending = new Pending(
                unsure.best(),
                new Target.Unknown(Target.Reason.NO_SUCH_CALF),
                unsure.doubts(),
                new Provenance(Provenance.Source.VOICE, unsure.words(), unsure.verdict(), null, null, null, null));
        return unsure.doubts().stream()
                .map(doubt -> phrases.of(doubt, pending, now).orElseGet(() -> alone(doubt)))
                .toList();
    }

    /** What the dialog's own question says. */
    private String alone(Doubt doubt) {
        if (doubt instanceof Doubt.Incomplete) {
            return wording.text(DOUBT_ALONE_INCOMPLETE);
        }
        return doubt instanceof Doubt.Ambiguous
                ? wording.text(DOUBT_ALONE_AMBIGUOUS)
                : wording.word(Target.Reason.NO_CALF_NAMED_BEFORE);
    }
}
