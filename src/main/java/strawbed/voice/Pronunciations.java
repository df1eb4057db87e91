package strawbed.voice;

import com.sun.speech.freetts.en.us.CMULexicon;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * How English words sound, in the phones of the CMU Pronouncing Dictionary as FreeTTS keeps it: small letters, the
 * unstressed "uh" as {@code ax}, stress left out. A word that the dictionary lacks is sounded out by its letter-to-sound
 * rules, which may be off for names and trade words. Owned by one thread.
 */
public final class Pronunciations {
    /**
     * Words of the trade that the rules of spelling sound out wrongly. Source: the pronunciations of the Merriam-Webster
     * dictionary, from memory.
     */
    private static final Map<String, String> TRADE = Map.of(
            "colostrum", "k ax l aa s t r ax m",
            "meconium", "m ax k ow n iy ax m",
            "refractometer", "r iy f r ae k t aa m ax t er",
            "chlorhexidine", "k l ao r hh eh k s ax d ay n",
            "dystocia", "d ih s t ow sh ax",
            "shorthorn", "sh ao r t hh ao r n",
            "heifer", "hh eh f er");

    private final CMULexicon lexicon = new CMULexicon("cmulex");

    /**
     * Loads the dictionary (about 0.3 s).
     *
     * @throws VoiceException when its data are not on the class path
     */
    public Pronunciations() {
        try {
            lexicon.load();
        } catch (IOException | RuntimeException | Error e) {
            throw new VoiceException("The pronouncing dictionary does not load; install the program again.", e);
        }
    }

    /** The phones of a word in small letters; empty for a word without letters. */
    public List<String> phones(String word) {
        if (word.chars().noneMatch(letter -> letter >= 'a' && letter <= 'z')) {
            return List.of();
        }
        String known = TRADE.get(word);
        return Arrays.stream(known == null ? lexicon.getPhones(word, null) : known.split(" "))
                .map(phone -> phone.replaceAll("[0-9]", ""))
                .toList();
    }

    /** Whether the dictionary lists the word, as it cannot be sounded out by rule. */
    public boolean isListed(String word) {
        return lexicon.getPhones(word, null, false) != null;
    }
}
