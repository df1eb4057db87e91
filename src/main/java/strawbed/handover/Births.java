package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import strawbed.account.Identity;
import strawbed.account.TwinLine;
import strawbed.calf.CalfRecord;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;

/** The calves that were born in a shift or first told of in it, and those that died in it. */
record Births(Wordings words) {
    private static final Comparator<CalfRecord> BY_BIRTH =
            Comparator.comparing(calf -> calf.bornAbout().orElse(Instant.MAX));

    SheetSection section() {
        return words.section(
                words.text(HANDOVER_BORN), calves().stream().map(this::entry).toList());
    }

    List<CalfRecord> calves() {
        return words.herd().calves().stream()
                .filter(calf -> isBorn(calf) || isTold(calf) || isLost(calf))
                .sorted(BY_BIRTH)
                .toList();
    }

    private boolean isBorn(CalfRecord calf) {
        return calf.bornAbout().filter(words.shift()::contains).isPresent();
    }

    /** A calf that was born earlier and told late stood on no sheet before. */
    private boolean isTold(CalfRecord calf) {
        return calf.history().stream()
                .filter(entry -> !entry.withdrawn() && entry.recorded().event() instanceof CalfOpened)
                .anyMatch(entry -> words.shift().recorded(entry.recorded()));
    }

    private boolean isLost(CalfRecord calf) {
        return calf.death().map(CalfDied::at).filter(words.shift()::contains).isPresent();
    }

    private SheetEntry entry(CalfRecord calf) {
        return SheetEntry.told(words.name(calf), strong(calf), told(calf));
    }

    private String strong(CalfRecord calf) {
        return calf.death()
                .map(died -> words.list(List.of(time(calf), died(died))))
                .orElseGet(() -> time(calf));
    }

    private String time(CalfRecord calf) {
        Optional<String> born = calf.born().map(this::when);
        return born.or(() -> calf.found().map(found -> words.text(HANDOVER_FOUND, when(found))))
                .orElseGet(() -> words.text(HANDOVER_TIME_NOT_RECORDED));
    }

    private String when(When when) {
        return when instanceof When.Between window
                ? words.text(
                        HANDOVER_WINDOW,
                        words.clock(window.earliest()),
                        words.figures().clockAsSeenFrom(window.earliest(), window.latest()))
                : words.clock(when.midpoint());
    }

    private String died(CalfDied died) {
        return words.text(
                HANDOVER_DIED,
                died.when() == Term.DeathTime.AT_BIRTH ? words.text(CARD_DIED_AT_BIRTH) : words.clock(died.at()));
    }

    private String told(CalfRecord calf) {
        Identity identity = new Identity(calf, words.messages(), words.figures());
        List<String> told = new ArrayList<>();
        told.add(words.text(
                HANDOVER_SEX_AND_DAM,
                calf.sex().map(words.messages()::word).orElseGet(() -> words.text(HANDOVER_SEX_NOT_RECORDED)),
                calf.dam().isEmpty()
                        ? words.text(HANDOVER_DAM_NOT_RECORDED)
                        : words.text(HANDOVER_DAM, identity.dam())));
        told.add(words.text(
                HANDOVER_BIRTH, identity.birth().isEmpty() ? words.text(ACCOUNT_NOT_RECORDED) : identity.birth()));
        new TwinLine(words.messages(), words.figures())
                .of(calf, words.herd())
                .map(twin -> words.text(HANDOVER_SENTENCE, twin))
                .ifPresent(told::add);
        return words.sentences(told);
    }
}
