package strawbed.window;

import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import org.jspecify.annotations.Nullable;
import strawbed.statement.Control;
import strawbed.station.Act;
import strawbed.station.Body;
import strawbed.station.Key;
import strawbed.station.Meaning;
import strawbed.station.Screen;

/**
 * The station's window over the whole screen, with its keys. All methods belong to the event thread; what is pressed is
 * told on it.
 */
public final class StationWindow {
    /**
     * So long after the keys changed nothing is pressed, so that the second of two quick taps does not answer the next
     * question (a value to try on farms, no published source).
     */
    private static final Duration SETTLING = Duration.ofMillis(400);

    private static final int BACK_TO_FRONT = 1000;

    private final Consumer<Act> acts;
    private final Clock clock;
    private final JFrame frame;
    private final ScreenPanel panel;
    private final KeyListening keys;
    private final KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
    private @Nullable Screen screen;
    private Instant changed = Instant.MIN;

    /**
     * @param title of the window
     * @param acts is told what was pressed
     * @param clock for what is too quick to be meant
     */
    private StationWindow(String title, Consumer<Act> acts, Clock clock) {
        this.acts = acts;
        this.clock = clock;
        panel = new ScreenPanel(this::pressed, systemsDotsPerInch());
        keys = new KeyListening(this::meant, acts);
        frame = new JFrame(title);
        frame.setUndecorated(true);
        frame.setContentPane(panel);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                acts.accept(new Act.Quit());
            }
        });
        frame.addWindowFocusListener(new WindowAdapter() {
            @Override
            public void windowLostFocus(WindowEvent event) {
                keys.release();
                panel.heardKeys(false);
                Timer back = new Timer(BACK_TO_FRONT, tick -> {
                    frame.toFront();
                    frame.requestFocus();
                });
                back.setRepeats(false);
                back.start();
            }

            @Override
            public void windowGainedFocus(WindowEvent event) {
                panel.heardKeys(true);
            }
        });
    }

    /** Makes a window, on its own thread, and waits for it. What bands say is given in words. */
    public static StationWindow made(
            String title, String unheardKeys, String smallScreen, Consumer<Act> acts, Clock clock) {
        AtomicReference<StationWindow> made = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> {
                StationWindow window = new StationWindow(title, acts, clock);
                window.panel.notes(unheardKeys, smallScreen);
                made.set(window);
            });
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("no window can be made", e);
        }
        return Objects.requireNonNull(made.get());
    }

    /** Does something on the window's thread, soon. */
    public static void onItsThread(Runnable work) {
        EventQueue.invokeLater(work);
    }

    /** Whether there is a screen to open a window on. */
    public static boolean hasDisplay() {
        return !GraphicsEnvironment.isHeadless();
    }

    /** What the system believes; a ruler knows better. */
    public static double systemsDotsPerInch() {
        return GraphicsEnvironment.isHeadless()
                ? 96
                : Toolkit.getDefaultToolkit().getScreenResolution();
    }

    /** How a key is called, by its code. */
    public static String keyName(int code) {
        return KeyEvent.getKeyText(code);
    }

    /** Opens the window over the whole screen. */
    public void open() {
        Dimension all = GraphicsEnvironment.getLocalGraphicsEnvironment()
                .getDefaultScreenDevice()
                .getDefaultConfiguration()
                .getBounds()
                .getSize();
        open(all.width, all.height);
    }

    /** Opens the window in the upper left corner, with this many dots. */
    public void open(int width, int height) {
        frame.setBounds(0, 0, width, height);
        focus.addKeyEventDispatcher(keys);
        frame.setVisible(true);
        frame.toFront();
        frame.requestFocus();
    }

    /** Shows a screen. */
    public void show(Screen next) {
        Screen before = screen;
        String focused = focus.getFocusOwner() instanceof BigKey key ? key.key().label() : "";
        screen = next;
        panel.show(next);
        if (before == null || !keysOf(before).equals(keysOf(next))) {
            changed = clock.instant();
            focusOn(before != null && before.heading().equals(next.heading()) ? focused : "");
        } else if (!focused.isEmpty() && !panel.keys().contains(focus.getFocusOwner())) {
            // The key was painted anew, as its second line changed.
            focusOn(focused);
        }
    }

    private static List<String> keysOf(Screen screen) {
        return Stream.concat(
                        screen.keys().stream(),
                        screen.body() instanceof Body.Choices choices ? choices.keys().stream() : Stream.<Key>empty())
                .map(Key::label)
                .toList();
    }

    /** The panel, for tests and pictures. */
    public ScreenPanel panel() {
        return panel;
    }

    /** What keys mean, by their codes, where people chose. */
    public void use(Map<Integer, Meaning> pedal) {
        keys.use(pedal);
    }

    /** The next key that goes down shall mean this; empty when none is to be learnt. */
    public void learn(Optional<Meaning> meaning) {
        keys.learn(meaning);
    }

    /** Closes the window. */
    public void close() {
        focus.removeKeyEventDispatcher(keys);
        frame.dispose();
    }

    private boolean isTooQuick() {
        return clock.instant().isBefore(changed.plus(SETTLING));
    }

    private void pressed(Act act) {
        // To let the talk key go is never too quick.
        if (act instanceof Act.Talk || !isTooQuick()) {
            acts.accept(act);
        }
    }

    private void meant(Meaning meaning) {
        Screen now = screen;
        if (now == null) {
            return;
        }
        switch (meaning) {
            case TALK -> throw new AssertionError("the talk key is told by itself");
            case CONFIRM -> now.confirm().ifPresentOrElse(this::pressed, this::pressFocused);
            case CANCEL -> now.cancel().ifPresent(this::pressed);
            case REPEAT -> pressed(new Act.Order(Control.REPEAT_ENTRY));
            case UNDO -> pressed(new Act.Order(Control.UNDO_LAST_ENTRY));
            case NEXT -> move(1);
            case BEFORE -> move(-1);
        }
    }

    private void pressFocused() {
        if (focus.getFocusOwner() instanceof BigKey key && key.isShowing()) {
            key.doClick(0);
        }
    }

    /** On the key that had it, if that is still there on the same page; else on the first. */
    private void focusOn(String label) {
        List<JComponent> all = panel.keys();
        all.stream()
                .filter(key -> ((BigKey) key).key().label().equals(label))
                .findFirst()
                .or(() -> all.stream().findFirst())
                .ifPresent(JComponent::requestFocusInWindow);
    }

    private void move(int steps) {
        List<JComponent> all = panel.keys();
        if (!all.isEmpty()) {
            int at = all.indexOf(focus.getFocusOwner());
            int next = at < 0 ? 0 : Math.floorMod(at + steps, all.size());
            all.get(next).requestFocusInWindow();
        }
    }
}
