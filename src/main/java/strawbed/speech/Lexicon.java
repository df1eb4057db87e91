package strawbed.speech;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Stand-ins: words that the model knows and that sound like one it lacks.
 *
 * <pre>
 * # The model lacks these.
 * colostrum = cole ostrom
 * replacer  = replace er    # milk replacer
 * </pre>
 *
 * One stand-in a word: several at once were measured to hear worse. Immutable.
 */
public final class Lexicon {
    private static final Pattern WORD = Pattern.compile("[a-z][a-z']*");

    private final Map<String, List<String>> standIns;
    private final Map<List<String>, String> written;
    private final int longest;

    private Lexicon(Map<String, List<String>> standIns, Map<List<String>, String> written) {
        this.standIns = standIns;
        this.written = written;
        this.longest = written.keySet().stream().mapToInt(List::size).max().orElse(0);
    }

    /** A lexicon without stand-ins. */
    public static Lexicon empty() {
        return new Lexicon(Map.of(), Map.of());
    }

    /**
     * Reads lines of the form {@code word = stand in}; what follows a # is a comment.
     *
     * @param fileName named in errors
     * @throws LexiconException for the first line that is wrong
     */
    public static Lexicon parse(String fileName, String text) {
        Map<String, List<String>> standIns = new LinkedHashMap<>();
        Map<List<String>, String> written = new HashMap<>();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            String content = line.replaceFirst("#.*", "").strip();
            if (content.isEmpty()) {
                continue;
            }
            String where = fileName + ", line " + number + ": ";
            List<String> sides = List.of(content.split("=", -1));
            if (sides.size() != 2) {
                throw new LexiconException(where + "\"" + content + "\" is not of the form \"word = stand in\".");
            }
            String word = word(where, sides.get(0).strip());
            List<String> standIn = words(where, sides.get(1).strip());
            if (standIns.put(word, standIn) != null) {
                throw new LexiconException(
                        where + "\"" + word + "\" has a stand-in already; keep the better one, two hear worse.");
            }
            String other = written.put(standIn, word);
            if (other != null) {
                throw new LexiconException(where + "\"" + String.join(" ", standIn) + "\" stands for \"" + other
                        + "\" already; choose another stand-in for \"" + word + "\".");
            }
        }
        for (List<String> standIn : standIns.values()) {
            for (String part : standIn) {
                if (standIns.containsKey(part)) {
                    throw new LexiconException(fileName + ": \"" + part + "\" is part of a stand-in and has one itself;"
                            + " use words that the model knows.");
                }
            }
        }
        return new Lexicon(standIns, written);
    }

    private static List<String> words(String where, String text) {
        List<String> words = new ArrayList<>();
        for (String part : text.split("\\s+", -1)) {
            words.add(word(where, part));
        }
        return List.copyOf(words);
    }

    private static String word(String where, String text) {
        if (!WORD.matcher(text).matches()) {
            throw new LexiconException(
                    where + "\"" + text + "\" is not a word; a word has small letters a to z and apostrophes only.");
        }
        return text;
    }

    /** The words that have a stand-in, in the order of the file. */
    public List<String> words() {
        return List.copyOf(standIns.keySet());
    }

    /** What stands in for a word, its parts with a space between them; empty when nothing does. */
    public Optional<String> standIn(String word) {
        return Optional.ofNullable(standIns.get(word)).map(parts -> String.join(" ", parts));
    }

    /** The words with each one replaced by what stands in for it, as the recogniser is given them. */
    public List<String> toSpoken(List<String> words) {
        // Tens of thousands of sentences go through here at each start, and most have none.
        if (Collections.disjoint(standIns.keySet(), words)) {
            return List.copyOf(words);
        }
        return words.stream()
                .flatMap(word -> standIns.getOrDefault(word, List.of(word)).stream())
                .toList();
    }

    /** The recognised words with stand-ins replaced by what they stand for; the longest match wins, times are merged. */
    public List<RecognizedWord> toWritten(List<RecognizedWord> heard) {
        List<RecognizedWord> words = new ArrayList<>();
        int at = 0;
        while (at < heard.size()) {
            int length = matchLength(heard, at);
            if (length == 0) {
                words.add(heard.get(at));
                at++;
            } else {
                List<RecognizedWord> parts = heard.subList(at, at + length);
                words.add(new RecognizedWord(
                        written.getOrDefault(texts(parts), ""),
                        parts.get(0).from(),
                        parts.get(length - 1).to()));
                at += length;
            }
        }
        return List.copyOf(words);
    }

    /** The reading with stand-ins replaced. */
    public Hypothesis toWritten(Hypothesis heard) {
        return new Hypothesis(toWritten(heard.words()), heard.score());
    }

    private int matchLength(List<RecognizedWord> heard, int at) {
        for (int length = Math.min(longest, heard.size() - at); length > 0; length--) {
            if (written.containsKey(texts(heard.subList(at, at + length)))) {
                return length;
            }
        }
        return 0;
    }

    private static List<String> texts(List<RecognizedWord> words) {
        return words.stream().map(RecognizedWord::text).toList();
    }
}
