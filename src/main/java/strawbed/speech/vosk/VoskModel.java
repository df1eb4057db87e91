package strawbed.speech.vosk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.vosk.LibVosk;
import org.vosk.Model;
import strawbed.speech.SpeechModel;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Vocabulary;

/**
 * A Vosk model in memory.
 *
 * <pre>
 * try (SpeechModel model = VoskModel.load(directory);
 *         SpeechRecognizer recognizer = model.recognizer(vocabulary, 5)) {
 *     List<Hypothesis> readings = recognizer.recognize(sound);
 * }
 * </pre>
 *
 * May be shared among threads. Its recognisers outlive it: the native library counts who uses a model.
 */
public final class VoskModel implements SpeechModel {
    /** What every model that takes a vocabulary has; without them the native library ends the whole program. */
    private static final List<String> NEEDED =
            List.of("am/final.mdl", "conf/mfcc.conf", "conf/model.conf", "graph/Gr.fst", "graph/HCLr.fst");

    private static final int NO_LOGGING = -2;

    private final Model model;
    private final WordTable words;
    private final String name;
    private final NativeHeap heap = new NativeHeap();
    private final Object writing = new Object();
    private @Nullable Written written;
    private boolean closed;

    /** A vocabulary as Vosk takes it. */
    private record Written(Vocabulary vocabulary, String json) {}

    private VoskModel(Model model, WordTable words, String name) {
        this.model = model;
        this.words = words;
        this.name = name;
    }

    /**
     * Begins to load the native library (a quarter of a second), so that it is there when a model is loaded. Returns at
     * once.
     */
    public static void prepare() {
        Thread loading = new Thread(VoskModel::loadLibrary, "speech library");
        loading.setDaemon(true);
        loading.start();
    }

    private static void loadLibrary() {
        try {
            LibVosk.vosk_set_log_level(NO_LOGGING);
        } catch (LinkageError e) {
            // Who loads a model meets it again and tells.
            Logger.getLogger(VoskModel.class.getName()).log(Level.FINE, "The speech library does not load", e);
        }
    }

    /**
     * Loads the model of a folder (about 1 s).
     *
     * @throws ModelException when the folder has no whole model or the native library does not run here
     */
    public static VoskModel load(Path directory) {
        for (String file : NEEDED) {
            if (!Files.isReadable(directory.resolve(file))) {
                throw new ModelException("The folder " + directory + " has no speech model that takes a vocabulary: "
                        + file + " is missing; unpack the model again or set the path of another one.");
            }
        }
        try {
            LibVosk.vosk_set_log_level(NO_LOGGING);
            Model model = new Model(directory.toString());
            return new VoskModel(
                    model,
                    new WordTable(),
                    directory.toAbsolutePath().normalize().getFileName() + "");
        } catch (IOException e) {
            throw new ModelException(
                    "The speech model in " + directory
                            + " does not load; delete the folder and unpack the model again.",
                    e);
        } catch (LinkageError e) {
            throw new ModelException(
                    "The speech library does not run on this computer; it needs 64-bit Linux, Windows or macOS.", e);
        }
    }

    @Override
    public synchronized boolean knows(String word) {
        requireOpen();
        return words.contains(model, word);
    }

    /** Several may be made at once on several threads; the model must not be closed meanwhile. */
    @Override
    public SpeechRecognizer recognizer(Vocabulary vocabulary, int alternatives) {
        requireOpen();
        if (alternatives < 1) {
            throw new IllegalArgumentException("A recogniser gives at least one reading, not " + alternatives);
        }
        List<String> unknown = vocabulary.unknownWords(this);
        if (!unknown.isEmpty()) {
            throw new ModelException("The speech model " + name + " does not know and would never hear: "
                    + String.join(", ", unknown) + "; give each a stand-in that sounds alike, or use another word.");
        }
        return new VoskRecognizer(model, heap, written(vocabulary), vocabulary.lexicon(), alternatives);
    }

    /** Several recognisers of one vocabulary are made at once, and it has tens of thousands of sentences. */
    private String written(Vocabulary vocabulary) {
        synchronized (writing) {
            if (written == null || written.vocabulary() != vocabulary) {
                written = new Written(vocabulary, VoskRecognizer.json(vocabulary));
            }
            return written.json();
        }
    }

    @Override
    public SpeechRecognizer anyWords() {
        requireOpen();
        return new VoskRecognizer(model, heap);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            model.close();
        }
    }

    private synchronized void requireOpen() {
        if (closed) {
            throw new IllegalStateException("The speech model " + name + " is closed");
        }
    }
}
