package strawbed.text;

import static strawbed.text.MessageKey.*;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.ZoneId;
import strawbed.dialog.Prompt;

/** The prompts in one wording. */
final class PromptPhrases {
    private final Wording wording;
    private final PendingPhrases pending;
    private final ZoneId zone;
    private final Clock clock;

    PromptPhrases(Wording wording, ZoneId zone, Clock clock) {
        this.wording = wording;
        this.pending = new PendingPhrases(wording, zone);
        this.zone = zone;
        this.clock = clock;
    }

    String of(Prompt prompt) {
        if (prompt instanceof Prompt.ReadBack readBack) {
            return pending.ask(readBack.pending(), clock.instant());
        }
        if (prompt instanceof Prompt.Ask ask) {
            return pending.ask(ask.pending(), clock.instant());
        }
        if (prompt instanceof Prompt.CannotConfirm refused) {
            return wording.text(PROMPT_CANNOT_CONFIRM, pending.missing(refused.pending(), clock.instant()));
        }
        if (prompt instanceof Prompt.Warn warn) {
            return new CautionPhrases(wording).caution(warn.caution());
        }
        if (prompt instanceof Prompt.Saved saved) {
            return saved.calf() == null
                    ? wording.text(PROMPT_SAVED)
                    : wording.text(PROMPT_SAVED_CALF, wording.digits(saved.calf()));
        }
        if (prompt instanceof Prompt.NotSaved failed) {
            return wording.text(PROMPT_NOT_SAVED, Sentences.ended(failed.reason()));
        }
        if (prompt instanceof Prompt.NotKept failed) {
            return wording.text(PROMPT_NOT_KEPT, Sentences.ended(failed.reason()));
        }
        if (prompt instanceof Prompt.Undone undone) {
            return undone.facts() == 1
                    ? wording.text(PROMPT_UNDONE_ONE)
                    : wording.text(PROMPT_UNDONE_MANY, wording.number(BigDecimal.valueOf(undone.facts())));
        }
        if (prompt instanceof Prompt.Noticed noticed) {
            return wording.text(PROMPT_NOTICED, new EventPhrases(wording, zone).of(noticed.event()));
        }
        if (prompt instanceof Prompt.CardWritten written) {
            return written.notNoted() == null
                    ? wording.text(PROMPT_CARD_WRITTEN, written.file())
                    : wording.text(PROMPT_CARD_COPIED, written.file(), Sentences.ended(written.notNoted()));
        }
        if (prompt instanceof Prompt.CardNotWritten failed) {
            return wording.text(PROMPT_CARD_NOT_WRITTEN, Sentences.ended(failed.reason()));
        }
        return wording.text(plain(prompt));
    }

    private static MessageKey plain(Prompt prompt) {
        if (prompt instanceof Prompt.Cancelled) {
            return PROMPT_CANCELLED;
        }
        if (prompt instanceof Prompt.KeptOpen) {
            return PROMPT_KEPT_OPEN;
        }
        if (prompt instanceof Prompt.NotUnderstood) {
            return PROMPT_NOT_UNDERSTOOD;
        }
        if (prompt instanceof Prompt.NothingPending) {
            return PROMPT_NOTHING_PENDING;
        }
        if (prompt instanceof Prompt.NothingToUndo) {
            return PROMPT_NOTHING_TO_UNDO;
        }
        if (prompt instanceof Prompt.NoSuchCalf) {
            return PROMPT_NO_SUCH_CALF;
        }
        if (prompt instanceof Prompt.TellDue) {
            return PROMPT_TELL_DUE;
        }
        if (prompt instanceof Prompt.TellCalf) {
            return PROMPT_TELL_CALF;
        }
        if (prompt instanceof Prompt.PrintCard) {
            return PROMPT_PRINT_CARD;
        }
        if (prompt instanceof Prompt.NothingToPutOff) {
            return PROMPT_PUT_OFF;
        }
        if (prompt instanceof Prompt.Paused) {
            return PROMPT_PAUSED;
        }
        if (prompt instanceof Prompt.Awake) {
            return PROMPT_AWAKE;
        }
        throw new AssertionError(prompt);
    }
}
