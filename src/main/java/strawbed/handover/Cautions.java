package strawbed.handover;

import static strawbed.text.MessageKey.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.care.Caution;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.text.CautionPhrases;

/** The cautions for the work that the sheet asks for, gravest first, with the calves they hold for. */
record Cautions(List<CalfRecord> calves, Wordings words) {
    /** Who breeds must know them, not who works in the next hours. */
    private static final Set<Caution> ABOUT_BREEDING = Set.of(Caution.FREEMARTIN, Caution.FREEMARTIN_UNKNOWN);

    /** More names than this nobody reads behind a caution: their number says more. */
    private static final int NAMED = 6;

    SheetSection section() {
        Map<Caution, List<String>> holding = new EnumMap<>(Caution.class);
        for (CalfRecord calf : calves) {
            for (Caution caution : Caution.of(calf, words.herd())) {
                if (!ABOUT_BREEDING.contains(caution)) {
                    holding.computeIfAbsent(caution, key -> new ArrayList<>()).add(words.name(calf));
                }
            }
        }
        CautionPhrases phrases = new CautionPhrases(words.messages());
        List<SheetEntry> entries = new ArrayList<>();
        holding.forEach((caution, names) -> entries.add(SheetEntry.warning(phrases.brief(caution), holdsFor(names))));
        if (!entries.isEmpty()) {
            entries.add(SheetEntry.plain(words.text(HANDOVER_CAUTIONS_DEFER)));
        }
        return words.section(words.text(HANDOVER_CAUTIONS), entries);
    }

    private String holdsFor(List<String> names) {
        return names.size() > NAMED
                ? words.text(HANDOVER_CAUTIONS_CALVES, words.count(names.size()))
                : words.list(names);
    }
}
