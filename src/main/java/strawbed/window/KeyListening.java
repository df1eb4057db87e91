package strawbed.window;

import java.awt.KeyEventDispatcher;
import java.awt.event.KeyEvent;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import strawbed.station.Act;
import strawbed.station.Meaning;

/**
 * Takes every key before any part of the window does, so that a pedal and a focused key do not act twice. A key acts when
 * it goes down, once, however long it is held; two presses within 150 ms are one, as worn switches chatter (a value to
 * try on farms, no published source).
 */
final class KeyListening implements KeyEventDispatcher {
    private static final long CHATTER = 150;

    private final Consumer<Meaning> down;
    private final Consumer<Act> acts;
    private final Set<Integer> held = new HashSet<>();
    private final Map<Integer, Long> lastDown = new HashMap<>();
    private Shortcuts shortcuts = new Shortcuts(Map.of());
    private Optional<Meaning> learning = Optional.empty();

    /**
     * @param down is told what a key means that went down
     * @param acts is told of the talk key, and of a key that is learnt
     */
    KeyListening(Consumer<Meaning> down, Consumer<Act> acts) {
        this.down = down;
        this.acts = acts;
    }

    void use(Map<Integer, Meaning> chosen) {
        shortcuts = new Shortcuts(chosen);
    }

    /** The next key that goes down shall mean this. */
    void learn(Optional<Meaning> meaning) {
        learning = meaning;
    }

    /** The window is not there for keys any more: whatever was held is up. */
    void release() {
        held.stream()
                .filter(code -> shortcuts.of(code).equals(Optional.of(Meaning.TALK)))
                .forEach(code -> acts.accept(new Act.Talk(false)));
        held.clear();
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (event.getID() == KeyEvent.KEY_PRESSED) {
            pressed(event.getKeyCode(), event.getWhen());
        } else if (event.getID() == KeyEvent.KEY_RELEASED) {
            released(event.getKeyCode());
        }
        return true;
    }

    void pressed(int code, long when) {
        Long before = lastDown.put(code, when);
        boolean chatters = before != null && when - before < CHATTER;
        if (!held.add(code) || chatters) {
            return;
        }
        if (learning.isPresent()) {
            // A key without a code is told as well: a person must know why it cannot be used.
            acts.accept(new Act.Learn(learning.get(), code));
            return;
        }
        shortcuts.of(code).ifPresent(meaning -> {
            if (meaning == Meaning.TALK) {
                acts.accept(new Act.Talk(true));
            } else {
                down.accept(meaning);
            }
        });
    }

    void released(int code) {
        if (held.remove(code) && learning.isEmpty() && shortcuts.of(code).equals(Optional.of(Meaning.TALK))) {
            acts.accept(new Act.Talk(false));
        }
    }
}
