package strawbed.speech.vosk;

import com.sun.jna.Function;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Platform;
import org.vosk.Model;

/** The model's list of words, asked through a native function that the Java wrapper 0.3.45 leaves out. */
final class WordTable {
    private final Function find;

    WordTable() {
        find = NativeLibrary.getInstance(Platform.isWindows() ? "libvosk" : "vosk")
                .getFunction("vosk_model_find_word");
    }

    boolean contains(Model model, String word) {
        return find.invokeInt(new Object[] {model, word}) >= 0;
    }
}
