package strawbed.hearing;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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
        List<SpeechRecognizer> four = made(List.of(ours, ours, ours, ours));
        return new Recognizers(four.get(0), four.get(1), four.get(2), four.get(3), Optional.empty());
    }

    /** The same with a second opinion, which is made meanwhile. */
    public static Recognizers five(Supplier<SpeechRecognizer> ours, Supplier<SpeechRecognizer> any) {
        List<SpeechRecognizer> five = made(List.of(any, ours, ours, ours, ours));
        return new Recognizers(five.get(1), five.get(2), five.get(3), five.get(4), Optional.of(five.get(0)));
    }

    /** All of them; where one fails, none. */
    private static List<SpeechRecognizer> made(List<Supplier<SpeechRecognizer>> makers) {
        List<Made> all = makers.parallelStream().map(Made::by).toList();
        // Only now, when nobody makes one any more, may they be closed, and the model.
        Optional<RuntimeException> failure =
                all.stream().map(Made::failure).filter(Objects::nonNull).findFirst();
        if (failure.isPresent()) {
            all.stream().map(Made::recognizer).filter(Objects::nonNull).forEach(SpeechRecognizer::close);
            throw failure.get();
        }
        return all.stream().map(Made::recognizer).map(Objects::requireNonNull).toList();
    }

    private record Made(
            @Nullable SpeechRecognizer recognizer, @Nullable RuntimeException failure) {
        static Made by(Supplier<SpeechRecognizer> maker) {
            try {
                return new Made(maker.get(), null);
            } catch (RuntimeException failure) {
                return new Made(null, failure);
            }
        }
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
