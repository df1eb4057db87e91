package strawbed.app;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.care.Farm;
import strawbed.entry.FarmChoices;
import strawbed.grammar.GrammarException;
import strawbed.protocol.Units;
import strawbed.speech.LexiconException;
import strawbed.station.Act;
import strawbed.station.Choices;
import strawbed.station.Known;
import strawbed.station.Place;
import strawbed.station.Screen;
import strawbed.station.Screens;
import strawbed.text.Language;
import strawbed.text.MessageKey;
import strawbed.text.Messages;
import strawbed.window.StationWindow;

/** The command {@code strawbed station}: the recorder on a screen of its own, by voice, keys and pedal. */
@Command(
        name = "station",
        description = "Opens the recorder over the whole screen: it listens, shows and says what it understood, and"
                + " tells what is due. All that can be said can be pressed as well.",
        mixinStandardHelpOptions = true)
final class StationCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Option(
            names = "--window",
            paramLabel = "WxH",
            description = "A window of this many dots instead of the whole screen, such as 1280x800.")
    @Nullable
    String window;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        if (!StationWindow.hasDisplay()) {
            throw new BadInputException(
                    "There is no screen that a window can be opened on. Start it where one is, or use"
                            + " \"strawbed listen\" in a terminal.");
        }
        new Opened(settings, program.err()).run(size());
        return 0;
    }

    /** Of a window, in dots. */
    private record Size(int width, int height) {}

    /** Empty for the whole screen. */
    private Optional<Size> size() {
        if (window == null) {
            return Optional.empty();
        }
        String[] sides = window.split("x", -1);
        try {
            if (sides.length == 2) {
                Size size = new Size(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
                if (isASize(size.width()) && isASize(size.height())) {
                    return Optional.of(size);
                }
            }
        } catch (NumberFormatException e) {
            throw notASize(e);
        }
        throw notASize(null);
    }

    private static boolean isASize(int dots) {
        return dots >= 200 && dots <= 20_000;
    }

    private BadInputException notASize(@Nullable Exception cause) {
        BadInputException refused = new BadInputException(
                "\"" + window + "\" is no size of a window. Give width and height in dots, such as 1280x800.");
        if (cause != null) {
            refused.initCause(cause);
        }
        return refused;
    }

    /** A station in its window. */
    private static final class Opened {
        private final Settings settings;
        private final PrintWriter err;
        private final AtomicReference<StationLoop> loop = new AtomicReference<>();
        private final CountDownLatch end = new CountDownLatch(1);
        private String broken = "";

        Opened(Settings settings, PrintWriter err) {
            this.settings = settings;
            this.err = err;
        }

        void run(Optional<Size> size) {
            Choices choices = choices();
            Instant origin = settings.clock().instant();
            // First, as these take longest: they go on beside the opening of the window.
            try (LoadingEars loading = Ears.beginLoading(settings);
                    ChosenMicrophone microphone =
                            new ChosenMicrophone(choices.microphone(), settings.clock(), origin)) {
                run(size, choices, new Beginning(loading, microphone, origin));
            }
        }

        /** What was begun before the window. */
        private record Beginning(LoadingEars loading, ChosenMicrophone microphone, Instant origin) {}

        private void run(Optional<Size> size, Choices choices, Beginning begun) {
            Messages messages = messages(choices);
            // Beside the opening of the record.
            CompletableFuture<StationWindow> opening =
                    CompletableFuture.supplyAsync(() -> opened(size, choices, messages));
            try {
                listen(opening, choices, messages, begun);
            } catch (RuntimeException failure) {
                tell(failure, opening, messages);
                throw failure;
            } finally {
                CompletableFuture<Void> unused = opening.thenAccept(window -> StationWindow.onItsThread(window::close));
            }
        }

        /** Who stands at the screen sees no terminal. */
        private void tell(RuntimeException failure, CompletableFuture<StationWindow> opening, Messages messages) {
            StationWindow window;
            try {
                window = LoadingEars.wait(opening);
            } catch (RuntimeException noWindow) {
                if (noWindow != failure) {
                    failure.addSuppressed(noWindow);
                }
                return;
            }
            StationWindow.onItsThread(() -> window.show(Screens.failed(messages, LeftOpen.sentence(failure))));
            awaitEnd();
        }

        private StationWindow opened(Optional<Size> size, Choices choices, Messages messages) {
            StationWindow window = StationWindow.made(
                    messages.text(MessageKey.STATION_TITLE),
                    messages.text(MessageKey.STATION_KEYS_UNHEARD),
                    messages.text(MessageKey.STATION_SMALL_SCREEN),
                    this::pressed,
                    settings.clock());
            StationWindow.onItsThread(() -> {
                look(window, choices);
                window.show(Screens.starting(messages));
                size.ifPresentOrElse(given -> window.open(given.width(), given.height()), window::open);
            });
            return window;
        }

        private void pressed(Act act) {
            if (act instanceof Act.Quit) {
                end.countDown();
            }
            StationLoop listens = loop.get();
            if (listens != null) {
                listens.press(act);
            }
        }

        private void awaitEnd() {
            try {
                end.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        /** A broken file stops nothing: what is usual holds. */
        private Choices choices() {
            try {
                return StationFile.in(settings.data()).choices();
            } catch (BadInputException refused) {
                broken = LeftOpen.sentence(refused);
                err.println(broken);
                return Choices.USUAL;
            }
        }

        private static Messages messages(Choices choices) {
            return new Messages((choices.spanish() ? Language.SPANISH : Language.ENGLISH).locale());
        }

        private static void look(StationWindow window, Choices choices) {
            window.panel().dark(choices.dark());
            window.panel().dotsPerInch(choices.dotsPerInch().orElse(StationWindow.systemsDotsPerInch()));
            window.use(choices.pedal());
        }

        private void listen(
                CompletableFuture<StationWindow> opening, Choices choices, Messages messages, Beginning begun) {
            // Closed here already, so that a station that could not begin holds no microphone.
            try (ChosenMicrophone microphone = begun.microphone();
                    Stage stage = Stage.openWithKeys(settings, begun.origin(), err, messages, begun.loading());
                    DailyWork daily = DailyWork.begin(settings, stage.station());
                    PrintWork printing = PrintWork.begin(settings, messages);
                    Speaker speaker = Speaker.open(choices.speaker(), err)) {
                StationWindow window = LoadingEars.wait(opening);
                MicrophoneCounts counts = new MicrophoneCounts(settings.data(), begun.origin());
                StationDesk desk = new StationDesk(
                        settings,
                        printing,
                        messages,
                        choices,
                        StationWindow::keyName,
                        StationWindow.systemsDotsPerInch(),
                        changed -> {
                            microphone.choose(changed.microphone());
                            StationWindow.onItsThread(() -> look(window, changed));
                        });
                StationLoop made = new StationLoop(
                        stage,
                        microphone,
                        speaker,
                        desk,
                        new InWindow(window, new Screens(messages, settings.zone(), choices(stage, begun.loading()))),
                        new StationNews(
                                daily,
                                printing,
                                new ClockWatch(settings.clock(), System::nanoTime),
                                counts,
                                microphone));
                made.tellFirst(broken);
                loop.set(made);
                while (made.goesOn()) {
                    made.turn();
                }
                made.end();
                counts.note(microphone.losses());
            }
        }

        private static FarmChoices choices(Stage stage, LoadingEars loading) {
            boolean metric = Farm.of(stage.herd()).protocol().units() == Units.METRIC;
            try {
                return FarmNames.of(loading.words().grammar(), metric);
            } catch (GrammarException | LexiconException unreadable) {
                // The stage tells why nothing is heard; there is no grammar at all then.
                return new FarmChoices(FarmChoices.USUAL.breeds(), FarmChoices.USUAL.places(), metric);
            }
        }
    }

    /** Screens for the window's own thread. */
    private record InWindow(StationWindow window, Screens screens) implements StationLoop.Panel {
        @Override
        public void show(Place place, Known known) {
            Screen screen = screens.of(place, known);
            StationWindow.onItsThread(() -> {
                window.learn(place instanceof Place.Pedal pedal ? pedal.learning() : Optional.empty());
                window.show(screen);
            });
        }

        @Override
        public void level(double decibel) {
            StationWindow.onItsThread(() -> window.panel().level(decibel));
        }
    }
}
