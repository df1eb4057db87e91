package strawbed.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarException;
import strawbed.hearing.FarmGrammar;
import strawbed.hearing.Heard;
import strawbed.hearing.Hearing;
import strawbed.hearing.Recognizers;
import strawbed.speech.SpeechModel;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Vocabulary;
import strawbed.speech.vosk.ModelStore;
import strawbed.speech.vosk.VoskModel;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.Misgiving;
import strawbed.statement.PhraseInterpreter;
import strawbed.statement.Thresholds;
import strawbed.statement.UtteranceInterpreter;

/**
 * A loaded speech model with the recogniser and interpreter for what can be said now. Owned by one thread; closed by
 * whoever made it.
 */
final class Ears implements AutoCloseable {
    private final SpeechModel model;
    private final @Nullable FarmWords words;
    private Grammar grammar;
    private Recognizers recognizers;
    private Interpreter interpreter;
    private Listening listening;
    private final String grammarVersion;

    private Ears(
            SpeechModel model,
            @Nullable FarmWords words,
            Grammar grammar,
            Recognizers recognizers,
            Interpreter interpreter,
            Listening listening,
            String grammarVersion) {
        this.model = model;
        this.words = words;
        this.grammar = grammar;
        this.recognizers = recognizers;
        this.interpreter = interpreter;
        this.listening = listening;
        this.grammarVersion = grammarVersion;
    }

    /** Begins to load the speech model, and to read the phrasebook. */
    static LoadingEars beginLoading(Settings settings) {
        return new LoadingEars(settings);
    }

    /** Ears for the farm's grammar with these open calves. The model loads while the sentences are made. */
    static Ears forCalves(Settings settings, Collection<String> openCalves) {
        try (LoadingEars loading = beginLoading(settings)) {
            return forCalves(openCalves, loading);
        }
    }

    /** The same with what is on its way already. */
    static Ears forCalves(Collection<String> openCalves, LoadingEars loading) {
        FarmWords words = loading.words();
        FarmGrammar farm = words.phrasebook().with(openCalves);
        SpeechModel model = loading.take();
        try {
            List<String> unknown = farm.vocabulary().unknownWords(model);
            while (!unknown.isEmpty()) {
                words = words.insteadOf(unknownWords(unknown));
                farm = words.phrasebook().with(openCalves);
                unknown = farm.vocabulary().unknownWords(model);
            }
            return new Ears(
                    model,
                    words,
                    farm.grammar(),
                    Recognizers.five(ours(model, farm.vocabulary()), model::anyWords),
                    new UtteranceInterpreter(farm.grammar(), Thresholds.set()),
                    new Listening(Set.copyOf(openCalves), false),
                    words.phrasebook().version());
        } catch (RuntimeException failure) {
            model.close();
            throw failure;
        }
    }

    /** Ears for any other grammar. How free speech compares depends on the grammar, so there is no second opinion. */
    static Ears forPhrases(Settings settings, Grammar grammar) {
        SpeechModel model = load(settings);
        return new Ears(
                model,
                null,
                grammar,
                Recognizers.four(ours(model, FarmGrammar.phrases(grammar))),
                new PhraseInterpreter(grammar, Thresholds.set()),
                new Listening(Set.of(), false),
                "other");
    }

    /** A new hearing, for a source whose first sample was at this instant. */
    Hearing hearing(Settings settings, Instant origin) {
        listening = new Listening(listening.openCalves(), false);
        return new Hearing(recognizers, interpreter, listening, origin, settings.zone());
    }

    /** Changes the list of open calves, for the hearing that goes on. */
    void listenFor(Collection<String> openCalves, boolean sameCalf, Hearing hearing) {
        if (words != null && !listening.openCalves().equals(Set.copyOf(openCalves))) {
            FarmGrammar farm = words.phrasebook().with(openCalves);
            grammar = farm.grammar();
            Recognizers before = recognizers;
            recognizers = Recognizers.four(ours(model, farm.vocabulary())).with(before.any());
            interpreter = new UtteranceInterpreter(farm.grammar(), Thresholds.set());
            hearing.use(recognizers, interpreter);
            before.closeOurs();
        }
        listening = new Listening(Set.copyOf(openCalves), sameCalf);
        hearing.use(listening);
    }

    /** Tells a hearing whether "same calf" means one. */
    void named(Hearing hearing, boolean sameCalf) {
        listening = new Listening(listening.openCalves(), sameCalf);
        hearing.use(listening);
    }

    /** Which state of the grammar's files is in use, for the record. */
    String grammarVersion() {
        return grammarVersion;
    }

    /** What a person must be told of the farm's grammar, in lines; mostly nothing. */
    List<String> told() {
        return words == null ? List.of() : words.told();
    }

    /** Keeps what a later start needs of the farm's grammar, and tells what went wrong with that. */
    List<String> keepWords() {
        return words == null ? List.of() : words.keep();
    }

    /** What of the sound speaks against what it was taken for. */
    List<Misgiving> misgivings(Heard heard) {
        return interpreter.misgivings(heard.evidence(), heard.speech(), listening);
    }

    /** What can be said now. */
    Grammar grammar() {
        return grammar;
    }

    SpeechModel model() {
        return model;
    }

    @Override
    public void close() {
        recognizers.close();
        model.close();
    }

    static SpeechModel load(Settings settings) {
        return VoskModel.load(modelFolder(settings));
    }

    static Path modelFolder(Settings settings) {
        return new ModelStore(settings.model(), Settings.userData(), "/speech-model/model-en-us").directory();
    }

    private static Supplier<SpeechRecognizer> ours(SpeechModel model, Vocabulary vocabulary) {
        List<String> unknown = vocabulary.unknownWords(model);
        if (!unknown.isEmpty()) {
            throw unknownWords(unknown);
        }
        return () -> model.recognizer(vocabulary, Thresholds.set().readings());
    }

    /** What to do about words that the model would never hear. */
    static GrammarException unknownWords(List<String> unknown) {
        return new GrammarException(
                "lexicon.txt",
                "the speech model does not know " + String.join(", ", unknown)
                        + ". Give each a stand-in in lexicon.txt: known words that sound like it, as in"
                        + " \"colostrum = cole ostrom\"; or use another word in the grammar. \"strawbed grammar check\""
                        + " finds words that sound alike.");
    }
}
