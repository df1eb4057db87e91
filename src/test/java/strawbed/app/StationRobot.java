package strawbed.app;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import strawbed.window.ScreenPanel;

/**
 * A program that opens the station and uses it as a person would: with a finger on the screen, with a pedal, or by
 * waiting while somebody speaks. Ends with an exception where a key does not come.
 */
final class StationRobot {
    private static final long PATIENCE_MILLIS = 60_000;

    /** Longer than what is too quick to be meant. */
    private static final int SETTLED_MILLIS = 600;

    private final Robot robot;
    private final Path pictures;
    private int picture;

    private StationRobot(Path pictures) throws AWTException {
        this.robot = new Robot();
        this.pictures = pictures;
    }

    /**
     * Opens the station and uses it.
     *
     * @param arguments data folder, folder for pictures, and what to do: touch, pedal, voice or refused
     */
    public static void main(String[] arguments) throws Exception {
        Path data = Path.of(arguments[0]);
        Path pictures = Files.createDirectories(Path.of(arguments[1]));
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        CompletableFuture<Integer> station =
                CompletableFuture.supplyAsync(() -> Main.run(out, err, "station", "--data", data.toString()));
        StationRobot person = new StationRobot(pictures);
        try {
            person.does(arguments[2], out);
        } catch (Exception missing) {
            // The station's own threads would keep the program alive.
            missing.printStackTrace(err);
            System.exit(1);
        }
        try {
            int code = ended(station);
            out.println("ended " + code);
            System.exit(code);
        } catch (TimeoutException e) {
            err.println("the station does not end");
            System.exit(1);
        }
    }

    private void does(String what, PrintWriter out) throws Exception {
        switch (what) {
            case "touch" -> recordsABirthByTouch();
            case "pedal" -> recordsAFeedByPedal();
            case "voice" -> waitsWhileSomebodySpeaks(out);
            case "refused" -> {
                sees("End Strawbed");
                takesAPicture("refused");
                touches("End Strawbed");
                return;
            }
            default -> throw new IllegalArgumentException(what);
        }
        touches("More");
        touches("End Strawbed");
        touches("End Strawbed");
    }

    private static int ended(CompletableFuture<Integer> station)
            throws InterruptedException, ExecutionException, TimeoutException {
        return station.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
    }

    // What a person does.

    private void recordsABirthByTouch() throws Exception {
        sees("By hand");
        takesAPicture("ready");
        touches("By hand");
        touches("New calf");
        touchesDigits("512");
        touches("OK");
        touches("Not noted");
        touches("Birth");
        touches("Born");
        takesAPicture("born-when");
        touches("10 min ago");
        touches("Heifer");
        touches("Birth");
        touches("Calving ease");
        touches("Unassisted");
        touches("Navel dipped");
        touches("Iodine");
        touches("Next fact");
        touches("Fed");
        touches("3 quarts");
        touches("Bottle");
        takesAPicture("before-done");
        touches("Done");
        sees("YES");
        takesAPicture("asked");
        touches("YES");
        sees("By hand");
        takesAPicture("saved");
        touches("By hand");
        touches("512");
        touches("Measures");
        touches("Weight");
        touchesDigits("88");
        touches("OK");
        touches("Done");
        touches("YES");
        touches("Undo");
        sees("By hand");
        touches("Calves");
        takesAPicture("calves");
        touches("512");
        takesAPicture("one-calf");
        touches("Back");
        touches("Back");
    }

    private void recordsAFeedByPedal() throws Exception {
        sees("By hand");
        goesTo("By hand");
        goesTo("12");
        takesAPicture("pedal");
        goesTo("Fed");
        goesTo("2 quarts");
        goesTo("Done");
        sees("YES");
        // The answer needs no way to a key.
        presses(KeyEvent.VK_ENTER);
        sees("By hand");
    }

    private void waitsWhileSomebodySpeaks(PrintWriter out) throws Exception {
        BufferedReader told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        String sign = "";
        while (true) {
            String now = onItsThread(this::sign);
            if (!now.equals(sign)) {
                sign = now;
                out.println("sign " + sign);
                takesAPicture("voice-" + sign);
            }
            if (told.ready() && "enough".equals(told.readLine())) {
                takesAPicture("voice-end");
                return;
            }
            Thread.sleep(50);
        }
    }

    // How.

    private void touches(String label) throws Exception {
        // The key before it may have opened another page by now, on which this one has its own place.
        Thread.sleep(SETTLED_MILLIS);
        Rectangle place = sees(label);
        robot.mouseMove((int) place.getCenterX(), (int) place.getCenterY());
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        robot.delay(60);
        // A wet glove slides.
        robot.mouseMove((int) place.getCenterX() + 15, (int) place.getCenterY() + 8);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.delay(50);
    }

    private void touchesDigits(String digits) throws Exception {
        for (int i = 0; i < digits.length(); i++) {
            touches(digits.substring(i, i + 1));
        }
    }

    private void presses(int code) throws InterruptedException {
        Thread.sleep(SETTLED_MILLIS);
        robot.keyPress(code);
        robot.delay(60);
        robot.keyRelease(code);
        robot.delay(50);
    }

    /** Steps from key to key until this one has the focus, then says yes. */
    private void goesTo(String label) throws Exception {
        sees(label);
        for (int step = 0; step < 60; step++) {
            String focused = onItsThread(() -> {
                Component owner =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                return owner instanceof JComponent key ? name(key) : "";
            });
            if (isCalled(focused, label)) {
                presses(KeyEvent.VK_ENTER);
                return;
            }
            robot.keyPress(KeyEvent.VK_PAGE_DOWN);
            robot.delay(40);
            robot.keyRelease(KeyEvent.VK_PAGE_DOWN);
            robot.delay(170);
            robot.delay(50);
        }
        throw new IllegalStateException("the pedal does not come to " + label);
    }

    /** Waits for a key; gives its place at that moment, as it may be exchanged for another one in the next. */
    private Rectangle sees(String label) throws Exception {
        long until = System.nanoTime() + PATIENCE_MILLIS * 1_000_000;
        List<String> seen = List.of();
        while (System.nanoTime() < until) {
            Optional<Rectangle> place = onItsThread(() -> keys().stream()
                    .filter(one -> one.isShowing() && isCalled(name(one), label))
                    .findFirst()
                    .map(StationRobot::place));
            if (place.isPresent()) {
                return place.get();
            }
            seen = onItsThread(() -> keys().stream().map(StationRobot::name).toList());
            Thread.sleep(50);
        }
        takesAPicture("missing");
        throw new IllegalStateException("no key is called " + label + ", only " + seen);
    }

    private static Rectangle place(JComponent key) {
        Point corner = key.getLocationOnScreen();
        return new Rectangle(corner.x, corner.y, key.getWidth(), key.getHeight());
    }

    private static boolean isCalled(String name, String label) {
        return name.equals(label) || name.startsWith(label + ", ");
    }

    private static String name(JComponent key) {
        return String.valueOf(key.getAccessibleContext().getAccessibleName());
    }

    private static List<JComponent> keys() {
        return panel().map(ScreenPanel::keys).orElse(List.of());
    }

    /** The upper edge says whether it listens; its accessible name begins with that word. */
    private String sign() {
        return panel().stream()
                .flatMap(panel -> Stream.of(panel.getComponents()))
                .filter(part -> part.getClass().getSimpleName().equals("SignStrip"))
                .map(part -> String.valueOf(part.getAccessibleContext().getAccessibleName())
                        .replaceFirst("\\..*", ""))
                .findFirst()
                .orElse("");
    }

    private static Optional<ScreenPanel> panel() {
        List<ScreenPanel> panels = new ArrayList<>();
        for (Window window : Window.getWindows()) {
            if (window instanceof javax.swing.JFrame frame) {
                Container content = frame.getContentPane();
                if (content instanceof ScreenPanel panel) {
                    panels.add(panel);
                }
            }
        }
        return panels.stream().findFirst();
    }

    private static <T> T onItsThread(Callable<T> question) throws InterruptedException, ExecutionException {
        FutureTask<T> task = new FutureTask<>(question);
        EventQueue.invokeLater(task);
        return task.get();
    }

    private void takesAPicture(String name) throws IOException, InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> {});
        robot.delay(120);
        Rectangle all = new Rectangle(java.awt.Toolkit.getDefaultToolkit().getScreenSize());
        picture++;
        ImageIO.write(
                robot.createScreenCapture(all),
                "png",
                pictures.resolve(String.format(java.util.Locale.ROOT, "%02d-%s.png", picture, name.replace(' ', '-')))
                        .toFile());
    }
}
