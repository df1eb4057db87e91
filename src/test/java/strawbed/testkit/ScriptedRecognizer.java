package strawbed.testkit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.speech.Ending;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;

/** Hears what a script says is spoken from which second on, in whatever stretch of sound it is given. */
public final class ScriptedRecognizer implements SpeechRecognizer {
    private final NavigableMap<Duration, String> script;
    private final List<Ending> endings;
    private @Nullable Sound utterance;
    private @Nullable String firstHeard;

    public ScriptedRecognizer() {
        this(new TreeMap<>(), new CopyOnWriteArrayList<>());
    }

    private ScriptedRecognizer(NavigableMap<Duration, String> script, List<Ending> endings) {
        this.script = script;
        this.endings = endings;
    }

    /** Another one with the same script. */
    public ScriptedRecognizer another() {
        return new ScriptedRecognizer(script, endings);
    }

    /** Until an utterance ends, hears these words in the place of those of its script. */
    public ScriptedRecognizer firstHearing(String words) {
        firstHeard = words;
        return this;
    }

    /** Words that are spoken from here on; a stretch of sound holds them when it holds this point. */
    public ScriptedRecognizer at(Duration second, String words) {
        script.put(second, words);
        return this;
    }

    /** How many stretches of sound came to their end, for this one and all others with its script. */
    public int timesAsked() {
        return endings.size();
    }

    /** How each of these stretches was said to end. */
    public List<Ending> endings() {
        return List.copyOf(endings);
    }

    /** How much of an utterance it has so far. */
    public Duration taken() {
        return utterance == null ? Duration.ZERO : utterance.duration();
    }

    @Override
    public void accept(Sound block) {
        utterance = utterance == null ? block : utterance.join(block);
    }

    @Override
    public List<String> wordsSoFar() {
        if (utterance == null || words(utterance).isEmpty()) {
            return List.of();
        }
        return firstHeard != null
                ? List.of(firstHeard.split(" "))
                : words(utterance).stream().map(RecognizedWord::text).toList();
    }

    @Override
    public List<Hypothesis> finish(Ending ending) {
        endings.add(ending);
        List<RecognizedWord> words = utterance == null ? List.of() : words(utterance);
        utterance = null;
        return words.isEmpty() ? List.of() : List.of(new Hypothesis(words, 0));
    }

    private List<RecognizedWord> words(Sound sound) {
        Duration end = sound.start().plus(sound.duration());
        List<RecognizedWord> words = new ArrayList<>();
        for (Map.Entry<Duration, String> spoken :
                script.subMap(sound.start(), end).entrySet()) {
            for (String word : Arrays.asList(spoken.getValue().split(" "))) {
                words.add(new RecognizedWord(word, spoken.getKey(), spoken.getKey()));
            }
        }
        return words;
    }

    @Override
    public void forget() {
        utterance = null;
    }

    @Override
    public void close() {
        script.clear();
    }
}
