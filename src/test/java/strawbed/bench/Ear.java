package strawbed.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import strawbed.audio.AudioSource;
import strawbed.audio.Sound;
import strawbed.hearing.FarmGrammar;
import strawbed.hearing.Heard;
import strawbed.hearing.Hearing;
import strawbed.hearing.Recognizers;
import strawbed.speech.SpeechModel;
import strawbed.statement.Interpretation;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.Statement;
import strawbed.testkit.SpokenSentence;

/** Listens as the recorder does, without its files. Owned by one thread. */
final class Ear implements AutoCloseable {
    private final Recognizers recognizers;
    private final Interpreter interpreter;
    private final int version;

    Ear(SpeechModel model, FarmGrammar farm, Interpreter interpreter, int readings) {
        this.recognizers = Recognizers.four(() -> model.recognizer(farm.vocabulary(), readings))
                .with(Optional.of(model.anyWords()));
        this.interpreter = interpreter;
        this.version = Objects.hash(farm.vocabulary().spokenSentences(), readings);
    }

    /** Tells one state of grammar and recognisers from another. */
    int version() {
        return version;
    }

    Recognizers recognizers() {
        return recognizers;
    }

    /**
     * What was heard of a sound.
     *
     * @param last how long the recorder computed on its last utterance, from the block that ended it
     */
    record Result(List<HeardLine> lines, Duration computing, Duration last, Duration sound) {}

    /** Listens to a whole sound, as to a file. */
    Result hear(Sound sound) {
        Hearing hearing = new Hearing(
                recognizers,
                interpreter,
                new Listening(SpokenSentence.OPEN_CALVES, false),
                SpokenSentence.SPOKEN_AT,
                SpokenSentence.ZONE);
        List<Heard> heard = new ArrayList<>();
        long started = System.nanoTime();
        long last = 0;
        for (int at = 0; at < sound.length(); at += AudioSource.BLOCK) {
            long before = System.nanoTime();
            Optional<Heard> ended = hearing.accept(sound.slice(at, Math.min(sound.length(), at + AudioSource.BLOCK)));
            last = ended.isPresent() ? System.nanoTime() - before : last;
            ended.ifPresent(one -> add(one, heard));
        }
        long before = System.nanoTime();
        Optional<Heard> ended = hearing.finish();
        last = ended.isPresent() ? System.nanoTime() - before : last;
        ended.ifPresent(one -> add(one, heard));
        return new Result(
                heard.stream().map(Ear::line).toList(),
                Duration.ofNanos(System.nanoTime() - started),
                Duration.ofNanos(last),
                sound.duration());
    }

    private static void add(Heard one, List<Heard> heard) {
        if (one.goesOn()) {
            heard.remove(heard.size() - 1);
        }
        heard.add(one);
    }

    private static HeardLine line(Heard heard) {
        Interpretation meaning = heard.meaning();
        Statement statement = meaning instanceof Interpretation.Understood understood
                ? understood.statement()
                : meaning instanceof Interpretation.Unsure unsure ? unsure.best() : null;
        return new HeardLine(
                "-",
                String.join(" ", meaning.words()),
                meaning.verdict(),
                statement == null ? "-" : SpokenSentence.calfOf(statement),
                meaning instanceof Interpretation.ControlHeard control
                        ? control.control().toString()
                        : "-",
                statement == null
                        ? List.of()
                        : SpokenSentence.eventsOf(statement).stream()
                                .map(HeardLine::toTheMinute)
                                .toList());
    }

    /** How many events and the calf were right, of how many there are. */
    static Map<Boolean, Integer> slots(SpokenSentence sentence, List<HeardLine> lines) {
        Map<Boolean, Integer> counts = new LinkedHashMap<>();
        boolean calf = lines.stream().anyMatch(line -> line.calf().equals(sentence.calf()));
        counts.merge(calf, 1, Integer::sum);
        List<String> events =
                lines.stream().flatMap(line -> line.events().stream()).toList();
        sentence.events().stream()
                .map(HeardLine::toTheMinute)
                .forEach(event -> counts.merge(events.contains(event), 1, Integer::sum));
        return counts;
    }

    @Override
    public void close() {
        recognizers.close();
    }
}
