package strawbed.app;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strawbed.grammar.GrammarMatcher;
import strawbed.hearing.Heard;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.statement.Interpretation;
import strawbed.statement.Misgiving;
import strawbed.text.DoubtWords;
import strawbed.text.Messages;

/** How an utterance was heard, as lines for whoever writes the grammar. */
final class HeardReadings {
    private final Ears ears;
    private final Settings settings;
    private final DoubtWords doubts;

    HeardReadings(Ears ears, Settings settings) {
        this.ears = ears;
        this.settings = settings;
        this.doubts = new DoubtWords(new Messages(Locale.US), settings.zone());
    }

    List<String> of(Heard heard) {
        List<Hypothesis> readings = heard.evidence().plain();
        List<String> lines = new ArrayList<>();
        if (readings.isEmpty()) {
            lines.add("  no word was heard");
        } else {
            lines.add("  word by word, of the best reading:");
            readings.get(0).words().forEach(word -> lines.add(word(word)));
            lines.add("  readings, the best first (higher scores fit the sound better):");
            readings.forEach(reading -> lines.add(reading(reading)));
        }
        lines.addAll(verdict(heard));
        return lines;
    }

    private static String word(RecognizedWord word) {
        return String.format(
                Locale.ROOT, "    %7.2f to %.2f s  %s", seconds(word.from()), seconds(word.to()), shown(word.text()));
    }

    private String reading(Hypothesis reading) {
        List<String> words = reading.texts();
        GrammarMatcher matcher = new GrammarMatcher(ears.grammar());
        String outcome;
        if (!matcher.match(ears.grammar().root(), words, 1).isEmpty()) {
            outcome = "is a whole sentence";
        } else {
            int good = matcher.longestPrefix(ears.grammar().root(), words);
            if (good == words.size()) {
                outcome = "is the beginning of a sentence";
            } else if (good == 0) {
                outcome = "no sentence begins with \"" + shown(words.get(0)) + "\"";
            } else {
                outcome = "\"" + shown(words.get(good)) + "\" cannot follow \"" + shown(words.subList(0, good)) + "\"";
            }
        }
        return String.format(Locale.ROOT, "    %9.2f  %s: %s", reading.score(), shown(words), outcome);
    }

    /** As the recorder took it: from several hearings of the sound, with what was said before. */
    private List<String> verdict(Heard heard) {
        Interpretation meaning = heard.meaning();
        if (meaning instanceof Interpretation.Unsure unsure) {
            List<String> lines = new ArrayList<>(List.of("  verdict: unsure, it would ask. " + shown(unsure.words())));
            doubts.of(unsure, settings.clock().instant()).forEach(reason -> lines.add("    " + reason));
            lines.addAll(misgivings(heard));
            return lines;
        }
        if (meaning instanceof Interpretation.NoMatch) {
            List<String> misgivings = misgivings(heard);
            if (misgivings.isEmpty()) {
                return List.of("  verdict: not understood. "
                        + (heard.evidence().passes().size() == 1
                                ? "No reading begins like a sentence, so it was heard once only."
                                : "No reading of the four hearings is a whole sentence."));
            }
            List<String> lines = new ArrayList<>(
                    List.of("  verdict: not understood. It could be " + shown(meaning.words()) + ", but"));
            lines.addAll(misgivings);
            return lines;
        }
        return List.of("  verdict: understood, " + shown(meaning.words()) + ". The hearings agree, or none disagrees.");
    }

    private List<String> misgivings(Heard heard) {
        return ears.misgivings(heard).stream()
                .map(misgiving -> "    " + words(misgiving))
                .toList();
    }

    private static String words(Misgiving misgiving) {
        if (misgiving instanceof Misgiving.LagsBehind lags) {
            return String.format(
                    Locale.ROOT,
                    "what was heard best fits the sound better by %.1f, on the average of the hearings (limit %.1f)",
                    lags.behind(),
                    lags.most());
        }
        if (misgiving instanceof Misgiving.FewHearings few) {
            return few.first() + " of " + few.hearings() + " hearings had it before all other sentences";
        }
        if (misgiving instanceof Misgiving.FreeSpeechFits free) {
            return String.format(
                    Locale.ROOT,
                    "any words of the language fit better by %.1f for each word (limit %.1f)",
                    free.better(),
                    free.most());
        }
        if (misgiving instanceof Misgiving.LeavesOut out) {
            return String.format(
                    Locale.ROOT,
                    "%.2f s as loud as its words lie in none of them (limit %.2f s)",
                    seconds(out.sound()),
                    seconds(out.most()));
        }
        Misgiving.Rival rival = (Misgiving.Rival) misgiving;
        return String.format(
                Locale.ROOT,
                "%s is behind by %.1f only (limit %.1f)",
                shown(rival.words()),
                rival.behind(),
                rival.least());
    }

    private static String shown(List<String> words) {
        return shown(String.join(" ", words));
    }

    private static String shown(String words) {
        return words.replace(RecognizedWord.UNKNOWN, "(other speech)");
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }
}
