package strawbed.entry;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.statement.CalfReference;
import strawbed.statement.SpeechTime;

/** A calf in the making that cannot be picked from the list: new, or called by its dam. Immutable. */
public final class CalfDraft {
    private final CalfKind kind;
    private final Asking asking;
    private final @Nullable CalfDraft before;

    private CalfDraft(CalfKind kind, Asking asking, @Nullable CalfDraft before) {
        this.kind = kind;
        this.asking = asking;
        this.before = before;
    }

    /** Nothing is answered yet. */
    public static CalfDraft start(CalfKind kind, SpeechTime moment) {
        return new CalfDraft(kind, new Asking(kind.steps(), Given.nothing(moment)), null);
    }

    public CalfKind kind() {
        return kind;
    }

    /** What is asked now; empty when all is answered. */
    public Optional<Step> step() {
        return asking.step();
    }

    /** Answers what is asked now. */
    public Outcome<CalfDraft> answer(Answer answer) {
        return asking.answer(answer).map(next -> new CalfDraft(kind, next, this));
    }

    public boolean canGoBack() {
        return before != null;
    }

    /** As it was before the last press; itself where nothing was pressed. */
    public CalfDraft back() {
        return before == null ? this : before;
    }

    /** The calf, once all that has to be known is known. */
    public Optional<CalfReference> reference() {
        return asking.isWhole() ? Optional.of(kind.reference(asking.given())) : Optional.empty();
    }
}
