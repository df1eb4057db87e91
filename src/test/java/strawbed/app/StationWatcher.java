package strawbed.app;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.awt.Window;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import strawbed.station.Sign;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.window.ScreenPanel;

/**
 * A program that opens the station in its window and tells what is shown, a line each: "sign" and its word; "answers"
 * when it listens and the note that its ears are coming is gone; "shown", the time after it was painted, and the text. Told "next" it answers no to what is asked, and says "next" when
 * nothing is; told "rest" it looks no more, as looking takes processor time too; told "end" it ends the station.
 */
final class StationWatcher {
    static final String SIGN = "sign ";
    static final String SHOWN = "shown ";
    static final String ASKED = "asked ";
    static final String AGAIN = "again ";
    static final String ANSWERS = "answers";
    static final String NEXT = "next";
    static final String REST = "rest";
    static final String END = "end";

    private static final int EACH_LOOK_MILLIS = 3;

    /** Longer than what is too quick to be meant. */
    private static final int SETTLED_MILLIS = 600;

    private final Messages messages = new Messages(Locale.US);
    private final PrintWriter out;
    private final BlockingQueue<String> orders = new LinkedBlockingQueue<>();
    private boolean rests;
    private String sign = "";
    private boolean answers;
    private String shown = "";

    private StationWatcher(PrintWriter out) {
        this.out = out;
    }

    /**
     * Runs the station and this beside it.
     *
     * @param arguments the data folder
     */
    public static void main(String[] arguments) throws Exception {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        String data = Path.of(arguments[0]).toString();
        CompletableFuture<Integer> station =
                CompletableFuture.supplyAsync(() -> Main.run(out, err, "station", "--data", data));
        StationWatcher watcher = new StationWatcher(out);
        Thread orders = new Thread(watcher::takeOrders, "taking orders");
        orders.setDaemon(true);
        orders.start();
        watcher.watch();
        watcher.end(station);
        System.exit(station.get());
    }

    private void watch() throws InterruptedException, ExecutionException {
        for (String order = ""; !order.equals(END); order = rests ? orders.take() : next()) {
            if (order.equals(NEXT)) {
                beginAnew();
            } else if (order.equals(REST)) {
                rests = true;
            }
            if (!rests) {
                look();
            }
        }
    }

    /** By the keys that a person would press: first those that are nearest to the end. */
    private void end(CompletableFuture<Integer> station) throws InterruptedException, ExecutionException {
        while (!station.isDone()) {
            if (!press(MessageKey.STATION_END) && !press(MessageKey.STATION_MORE)) {
                press(MessageKey.STATION_NO);
            }
        }
    }

    /** An order, or nothing for as long as one look lasts. */
    private String next() throws InterruptedException {
        return Objects.requireNonNullElse(orders.poll(EACH_LOOK_MILLIS, TimeUnit.MILLISECONDS), "");
    }

    /** Whoever gives orders may be gone; then nobody else would end this program. */
    private void takeOrders() {
        BufferedReader told = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        told.lines().forEach(orders::add);
        orders.add(END);
    }

    private void look() throws InterruptedException, ExecutionException {
        String nowSign = onItsThread(StationWatcher::sign);
        if (!nowSign.equals(sign)) {
            sign = nowSign;
            out.println(SIGN + sign);
        }
        if (!answers && (SIGN + sign).equals(listening()) && !onItsThread(this::isComing)) {
            answers = true;
            out.println(ANSWERS);
        }
        String now = onItsThread(this::answer);
        if (!now.equals(shown)) {
            shown = now;
            // What is to be painted stands in the queue before this.
            Instant painted = onItsThread(() -> {
                Toolkit.getDefaultToolkit().sync();
                return Instant.now().truncatedTo(ChronoUnit.MICROS);
            });
            out.println(SHOWN + painted + " " + (now.isEmpty() ? "nothing" : now));
        }
    }

    private void beginAnew() throws InterruptedException, ExecutionException {
        while (!onItsThread(this::answer).isEmpty()) {
            press(onItsThread(this::answer).startsWith(ASKED) ? MessageKey.STATION_NO : MessageKey.STATION_UNDO);
        }
        look();
        out.println(NEXT);
    }

    /** Presses a key if it is there after a moment; whether it was. */
    private boolean press(MessageKey label) throws InterruptedException, ExecutionException {
        Thread.sleep(SETTLED_MILLIS);
        String name = messages.text(label);
        return onItsThread(() -> {
            Optional<JComponent> found = panel().stream()
                    .flatMap(panel -> panel.keys().stream())
                    .filter(key -> name(key).equals(name) || name(key).startsWith(name + ", "))
                    .findFirst();
            found.ifPresent(key -> ((AbstractButton) key).doClick(0));
            return found.isPresent();
        });
    }

    /** What came of the last thing said: asked, not understood, or empty for anything else. */
    private String answer() {
        String again = messages.text(MessageKey.STATION_SAY_AGAIN) + ". ";
        return part("TellingPart")
                .map(text -> ASKED + text)
                .or(() -> part("ReadyPart").filter(text -> text.contains(again)).map(text -> AGAIN + text))
                .orElse("")
                .replace('\n', ' ');
    }

    /** The upper edge says whether it listens; its accessible name begins with that word. */
    private static String sign() {
        return part("SignStrip").map(text -> text.replaceFirst("\\..*", "")).orElse("");
    }

    private boolean isComing() {
        return part("NoteBand")
                .filter(messages.text(MessageKey.STATION_EARS_COMING)::equals)
                .isPresent();
    }

    /** The line that tells that it listens. */
    static String listening() {
        return SIGN + new Messages(Locale.US).word(Sign.LISTENING);
    }

    private static Optional<String> part(String kind) {
        return panel().stream()
                .flatMap(panel -> Stream.of(panel.getComponents()))
                .filter(part -> part.getClass().getSimpleName().equals(kind))
                .map(StationWatcher::name)
                .findFirst();
    }

    private static String name(Component part) {
        return String.valueOf(part.getAccessibleContext().getAccessibleName());
    }

    private static Optional<ScreenPanel> panel() {
        return Stream.of(Window.getWindows())
                .filter(JFrame.class::isInstance)
                .map(window -> ((JFrame) window).getContentPane())
                .filter(ScreenPanel.class::isInstance)
                .map(ScreenPanel.class::cast)
                .findFirst();
    }

    private static <T> T onItsThread(Callable<T> question) throws InterruptedException, ExecutionException {
        FutureTask<T> task = new FutureTask<>(question);
        EventQueue.invokeLater(task);
        return task.get();
    }
}
