package strawbed.window;

import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import strawbed.station.Meaning;

/**
 * What keys of a keyboard, pedal or clicker mean. What people chose comes before what is usual: clickers send Page Down,
 * Page Up, Enter, and F5 and Escape by turns from one button, so these two mean the same. Sources: findings of our own
 * trials with key codes; what clickers send is from their public pages.
 */
final class Shortcuts {
    private static final Map<Integer, Meaning> USUAL = Map.ofEntries(
            Map.entry(KeyEvent.VK_SPACE, Meaning.TALK),
            Map.entry(KeyEvent.VK_ENTER, Meaning.CONFIRM),
            Map.entry(KeyEvent.VK_ESCAPE, Meaning.CANCEL),
            Map.entry(KeyEvent.VK_F5, Meaning.CANCEL),
            Map.entry(KeyEvent.VK_BACK_SPACE, Meaning.CANCEL),
            Map.entry(KeyEvent.VK_R, Meaning.REPEAT),
            Map.entry(KeyEvent.VK_U, Meaning.UNDO),
            Map.entry(KeyEvent.VK_PAGE_DOWN, Meaning.NEXT),
            Map.entry(KeyEvent.VK_RIGHT, Meaning.NEXT),
            Map.entry(KeyEvent.VK_DOWN, Meaning.NEXT),
            Map.entry(KeyEvent.VK_TAB, Meaning.NEXT),
            Map.entry(KeyEvent.VK_PAGE_UP, Meaning.BEFORE),
            Map.entry(KeyEvent.VK_LEFT, Meaning.BEFORE),
            Map.entry(KeyEvent.VK_UP, Meaning.BEFORE));

    private final Map<Integer, Meaning> meanings = new HashMap<>(USUAL);

    /** @param chosen by people, by the key's code */
    Shortcuts(Map<Integer, Meaning> chosen) {
        meanings.putAll(chosen);
    }

    Optional<Meaning> of(int code) {
        return Optional.ofNullable(meanings.get(code));
    }
}
