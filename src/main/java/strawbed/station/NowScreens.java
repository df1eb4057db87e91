package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.care.DueItem;
import strawbed.care.DueState;
import strawbed.dialog.Pending;
import strawbed.dialog.Target;
import strawbed.statement.Control;
import strawbed.text.DuePhrases;

/** The page that is read from afar: what waits for an answer, else what came of the last statement and what is due. */
record NowScreens(Frame frame, DuePhrases due) {
    /** More than the largest screen has room for. */
    private static final int ROWS = 8;

    Screen of(Known known) {
        return known.pending().map(pending -> answer(pending, known)).orElseGet(() -> ready(known));
    }

    private Screen answer(Pending pending, Known known) {
        Act no = new Act.Order(Control.CANCEL_ENTRY);
        Optional<Act> yes =
                pending.canBeConfirmed() ? Optional.of(new Act.Order(Control.CONFIRM_ENTRY)) : Optional.empty();
        List<Key> keys = new ArrayList<>();
        yes.ifPresent(act -> keys.add(frame.key(STATION_YES, Rank.YES, act)));
        keys.add(frame.key(STATION_NO, Rank.NO, no));
        keys.add(frame.key(STATION_AGAIN, Rank.USUAL, new Act.Order(Control.REPEAT_ENTRY)));
        talk(known).ifPresent(keys::add);
        return frame.far(known, new Body.Telling(number(pending, known), known.asked()), keys, yes, Optional.of(no));
    }

    private Optional<Key> talk(Known known) {
        return known.choices().holdToTalk() && !known.sign().isDeaf()
                ? Optional.of(frame.key(STATION_TALK, Rank.USUAL, new Act.Talk(true)))
                : Optional.empty();
    }

    private String number(Pending pending, Known known) {
        if (pending.target() instanceof Target.Known calf) {
            return Optional.ofNullable(calf.number())
                    .or(() -> known.herd().calf(calf.id()).map(frame::number))
                    .orElse("");
        }
        if (pending.target() instanceof Target.Opened opened) {
            return opened.number() != null ? opened.number() : frame.ofCow(opened.dam());
        }
        return "";
    }

    private Screen ready(Known known) {
        List<Key> keys = new ArrayList<>();
        if (known.sign() == Sign.PAUSED) {
            keys.add(frame.key(STATION_WAKE_UP, Rank.PRESSING, new Act.Order(Control.WAKE_UP_RECORDER)));
        } else {
            talk(known).ifPresent(keys::add);
        }
        // One place for both, so that no key moves under a finger when a task becomes late.
        keys.add(
                known.canPutOff()
                        ? frame.key(STATION_PUT_OFF, Rank.PRESSING, new Act.Order(Control.PUT_IT_OFF))
                        : frame.key(STATION_WHAT_IS_DUE, Rank.USUAL, new Act.Order(Control.WHAT_IS_DUE)));
        keys.add(frame.go(STATION_BY_HAND, new Place.WhoseFacts(0, Optional.empty())));
        keys.add(frame.key(STATION_UNDO, Rank.USUAL, new Act.Order(Control.UNDO_LAST_ENTRY)));
        keys.add(frame.go(STATION_CALVES, new Place.Calves(0)));
        keys.add(new Key(
                frame.text(STATION_MORE),
                known.open().isEmpty()
                        ? ""
                        : frame.text(
                                STATION_OPEN_COUNT,
                                Integer.toString(known.open().size())),
                Rank.USUAL,
                new Act.Go(new Place.More())));
        List<DueRow> rows =
                known.due().stream().limit(ROWS).map(item -> row(item, known)).toList();
        String number =
                known.named().flatMap(known.herd()::calf).map(frame::number).orElse("");
        return frame.far(
                known,
                new Body.Ready(number, known.told().word(), known.told().text(), rows),
                keys,
                Optional.empty(),
                Optional.empty());
    }

    private DueRow row(DueItem item, Known known) {
        return new DueRow(
                known.herd().calf(item.calf()).map(frame::number).orElse(""),
                due.brief(item),
                due.onScreen(item, known.now()),
                item.state() == DueState.LATE);
    }
}
