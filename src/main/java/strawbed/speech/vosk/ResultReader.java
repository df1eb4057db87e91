package strawbed.speech.vosk;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;

/** Vosk's JSON to readings, with its clock set to that of the sound's source. */
final class ResultReader {
    private final Sound sound;
    private final double startSeconds;

    /**
     * A reader for the result of one sound.
     *
     * @param startSample where the sound began on the recogniser's clock
     */
    ResultReader(Sound sound, long startSample) {
        this.sound = sound;
        this.startSeconds = (double) startSample / Sound.RATE;
    }

    /** The readings, best first, without those that have no word. */
    List<Hypothesis> hypotheses(String json) {
        Map<String, Object> result = read(json);
        List<Hypothesis> hypotheses = new ArrayList<>();
        for (Object alternative : list(result.get("alternatives"))) {
            List<RecognizedWord> words = list(map(alternative).get("result")).stream()
                    .map(word -> word(map(word)))
                    .toList();
            if (!words.isEmpty()) {
                hypotheses.add(new Hypothesis(words, number(map(alternative), "confidence")));
            }
        }
        return List.copyOf(hypotheses);
    }

    /** The words of an utterance that goes on. */
    static List<String> wordsSoFar(String json) {
        String words = String.valueOf(read(json).getOrDefault("partial", "")).strip();
        return words.isEmpty() ? List.of() : List.of(words.split("\\s+"));
    }

    private static Map<String, Object> read(String json) {
        try {
            return JSON.std.mapFrom(json);
        } catch (IOException e) {
            throw new ModelException("The recogniser answered with something other than JSON; start again.", e);
        }
    }

    private RecognizedWord word(Map<?, ?> word) {
        Duration from = time(number(word, "start"));
        Duration to = time(number(word, "end"));
        return new RecognizedWord(String.valueOf(word.get("word")), from, to);
    }

    /** A time on the recogniser's clock as one of the source, moved into the sound when it lies in the padding. */
    private Duration time(double seconds) {
        Duration inSound = Duration.ofMillis(Math.round((seconds - startSeconds) * 1000));
        Duration clipped = inSound.isNegative() ? Duration.ZERO : inSound;
        return sound.start().plus(clipped.compareTo(sound.duration()) > 0 ? sound.duration() : clipped);
    }

    private static List<?> list(@Nullable Object value) {
        return value instanceof List<?> list ? list : List.of();
    }

    private static Map<?, ?> map(@Nullable Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }

    private static double number(Map<?, ?> map, String name) {
        if (map.get(name) instanceof Number number) {
            return number.doubleValue();
        }
        throw new ModelException(
                "The recogniser's answer has no \"" + name + "\"; the model does not fit the library.");
    }
}
