package strawbed.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A sentence that was not heard wholly right.
 *
 * @param saidPart the words between what both have in common at the beginning and at the end
 * @param heardPart what was heard in their place
 */
public record Confusion(String voice, Outcome outcome, String said, String heard, String saidPart, String heardPart) {
    static Confusion of(String voice, Spoken spoken, List<HeardLine> lines) {
        return of(voice, spoken.outcome(lines), spoken.sentence().words(), lines);
    }

    static Confusion of(String voice, Outcome outcome, String said, List<HeardLine> lines) {
        String heard = Spoken.words(lines);
        List<String> a = new ArrayList<>(Arrays.asList(said.split(" ")));
        List<String> b = new ArrayList<>(Arrays.asList(heard.split(" ")));
        while (!a.isEmpty() && !b.isEmpty() && a.get(0).equals(b.get(0))) {
            a.remove(0);
            b.remove(0);
        }
        while (!a.isEmpty() && !b.isEmpty() && a.get(a.size() - 1).equals(b.get(b.size() - 1))) {
            a.remove(a.size() - 1);
            b.remove(b.size() - 1);
        }
        return new Confusion(voice, outcome, said, heard, part(a), part(b));
    }

    private static String part(List<String> words) {
        return words.isEmpty() ? "(nothing)" : String.join(" ", words);
    }

    @Override
    public String toString() {
        return voice + ", " + outcome.words() + ": \"" + said + "\" heard as \"" + heard + "\"";
    }
}
