package strawbed.hearing;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import strawbed.speech.SpeechRecognizer;

/**
 * Who listens at once to one speaker. Closed by whoever made them.
 *
 * @param plain hears the farm's sentences in the sound as it is
 * @param clearer the same with less noise
 * @param faster the same with less noise, a little faster
 * @param slower the same with less noise, a little slower
 * @param any hears any words of the language, as a second opinion; empty to go without
 */
public record Recognizers(
        SpeechRecognizer plain,
        SpeechRecognizer clearer,
        SpeechRecognizer faster,
        SpeechRecognizer slower,
        Optional<SpeechRecognizer> any)
        implements AutoCloseable {
    /**
     * Four that hear the farm's sentences, without a second opinion. They are made at once on all processors, as a person
     * waits for them when a calf is new.
     */
    public static Recognizers four(Supplier<SpeechRecognizer> ours) {
        List<SpeechRecognizer> four =
                IntStream.range(0, 4).parallel().mapToObj(any -> ours.get()).toList();
        return new Recognizers(four.get(0), four.get(1), four.get(2), four.get(3), Optional.empty());
    }

    /** The same with a second opinion, which is made meanwhile. */
    public static Recognizers five(Supplier<SpeechRecognizer> ours, Supplier<SpeechRecognizer> any) {
        List<SpeechRecognizer> five = Stream.of(any, ours, ours, ours, ours)
                .parallel()
                .map(Supplier::get)
                .toList();
        return new Recognizers(five.get(1), five.get(2), five.get(3), five.get(4), Optional.of(five.get(0)));
    }

    /** The same with a second opinion. */
    public Recognizers with(Optional<SpeechRecognizer> secondOpinion) {
        return new Recognizers(plain, clearer, faster, slower, secondOpinion);
    }

    /** Lets those go that hear the farm's sentences. */
    public void closeOurs() {
        Stream.of(plain, clearer, faster, slower).forEach(SpeechRecognizer::close);
    }

    @Override
    public void close() {
        closeOurs();
        any.ifPresent(SpeechRecognizer::close);
    }
}
