package strawbed.testkit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Utterance;

/** Hears what a script says is spoken from which second on, in whatever stretch of sound it is given. */
public final class ScriptedRecognizer implements SpeechRecognizer {
    private final TreeMap<Duration, String> script = new TreeMap<>();
    private int asked;

    /** Words that are spoken from here on; a stretch of sound holds them when it holds this point. */
    public ScriptedRecognizer at(Duration second, String words) {
        script.put(second, words);
        return this;
    }

    /** How many stretches of sound it was given. */
    public int timesAsked() {
        return asked;
    }

    @Override
    public Utterance recognize(Sound sound) {
        asked++;
        Duration end = sound.start().plus(sound.duration());
        List<RecognizedWord> words = new ArrayList<>();
        for (Map.Entry<Duration, String> spoken :
                script.subMap(sound.start(), end).entrySet()) {
            for (String word : Arrays.asList(spoken.getValue().split(" "))) {
                words.add(new RecognizedWord(word, spoken.getKey(), spoken.getKey()));
            }
        }
        return new Utterance(sound, words.isEmpty() ? List.of() : List.of(new Hypothesis(words, 0)));
    }

    @Override
    public void close() {
        script.clear();
    }
}
