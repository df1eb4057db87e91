package strawbed.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.alike.StandIn;
import strawbed.alike.StandIns;
import strawbed.speech.vosk.ModelWords;
import strawbed.voice.Pronunciations;

/** How words sound, and what stands in for those that the speech model lacks. Loads what it needs when it is needed. */
final class WordAdvice {
    /** Rarer ones are mostly names that the rules of spelling sound out badly. */
    private static final int COMMON = 75_000;

    /** Rarer short ones are mostly initials, such as "qa". */
    private static final int COMMON_SHORT = 5_000;

    private static final int SHORT = 3;

    private static final int SHOWN = 3;

    private final Pronunciations pronunciations = new Pronunciations();
    private final Map<String, List<String>> known = new HashMap<>();
    private final Path model;
    private @Nullable StandIns standIns;

    /** @param model the folder of the speech model */
    WordAdvice(Path model) {
        this.model = model;
    }

    /** The phones of a word. */
    List<String> phones(String word) {
        return known.computeIfAbsent(word, pronunciations::phones);
    }

    /**
     * The best stand-ins for a word, the closest sound first.
     *
     * @param taken words that mean something in the grammar
     * @throws strawbed.speech.vosk.ModelException when the model's words cannot be listed
     */
    List<StandIn> standIns(String word, Set<String> taken) {
        StandIns ready = standIns;
        if (ready == null) {
            ready = new StandIns(candidates(), this::phones);
            standIns = ready;
        }
        return ready.closest(word, taken, SHOWN);
    }

    private List<String> candidates() {
        List<String> words = ModelWords.of(model);
        List<String> candidates = new ArrayList<>();
        for (int place = 0; place < Math.min(COMMON, words.size()); place++) {
            String word = words.get(place);
            if (word.length() > SHORT || place < COMMON_SHORT || pronunciations.isListed(word)) {
                candidates.add(word);
            }
        }
        return candidates;
    }
}
