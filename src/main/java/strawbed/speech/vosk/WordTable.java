package strawbed.speech.vosk;

import com.sun.jna.Function;
import com.sun.jna.Library;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Platform;
import java.util.Map;
import org.vosk.LibVosk;
import org.vosk.Model;

/** The model's list of words, asked through a native function that the Java wrapper 0.3.45 leaves out. */
final class WordTable {
    private final Function find;

    WordTable() {
        // With the wrapper's own options: with others JNA loads a second copy of the library, and the two break each
        // other's globals when one is unloaded.
        find = NativeLibrary.getInstance(
                        Platform.isWindows() ? "libvosk" : "vosk",
                        Map.of(Library.OPTION_CLASSLOADER, LibVosk.class.getClassLoader()))
                .getFunction("vosk_model_find_word");
    }

    boolean contains(Model model, String word) {
        return find.invokeInt(new Object[] {model, word}) >= 0;
    }
}
