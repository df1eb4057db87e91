package strawbed.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.LinkedBlockingQueue;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.audio.MicrophoneSource;
import strawbed.audio.Sound;
import strawbed.dialog.Prompt;
import strawbed.statement.Control;
import strawbed.text.Messages;

/** The command {@code strawbed listen}: the recorder at the microphone, in a terminal. */
@Command(
        name = "listen",
        description = "Listens to the microphone. Speak, or type: y or Enter confirms, n cancels, r repeats, u undoes,"
                + " q ends.",
        mixinStandardHelpOptions = true)
final class ListenCommand implements Callable<Integer> {
    private static final int METER_WIDTH = 24;
    private static final int LONGEST_NAME = 40;
    private static final String NOBODY = "nobody";

    @ParentCommand
    @Nullable
    Main main;

    @Option(names = "--microphone", paramLabel = "NAME", description = "Which one; \"strawbed check\" names them.")
    @Nullable
    String microphone;

    @Option(
            names = "--operator",
            paramLabel = "NAME",
            description = "Who works from now on, kept with each fact; \"nobody\" for nobody. Else as last chosen.")
    @Nullable
    String operator;

    @Option(names = "--quiet", description = "Do not speak: show only.")
    boolean quiet;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        PrintWriter out = program.out();
        BlockingQueue<String> keys = new LinkedBlockingQueue<>();
        Optional<String> chosen = Optional.ofNullable(operator).map(ListenCommand::name);
        Instant origin = settings.clock().instant();
        try (MicrophoneSource source = MicrophoneSource.open(microphone);
                Stage stage = Stage.open(settings, origin, program.err());
                DailyWork daily = DailyWork.begin(settings, stage.station());
                PrintWork printing = PrintWork.begin(settings, new Messages(Locale.US));
                Speaker speaker = Speaker.open(quiet, program.err())) {
            chosen.ifPresent(name -> stage.choose(name.equals(NOBODY) ? null : name));
            Thread typing = new Thread(() -> readKeys(keys), "keys");
            typing.setDaemon(true);
            typing.start();
            out.println("Listening on " + source.name() + ". Begin with \"calf\" and its number, or \"new calf\".");
            out.println(stage.operator()
                    .map(name -> name + " works now. To change that, start with --operator NAME.")
                    .orElse("Nobody is chosen to work now. To choose, start with --operator NAME."));
            source.warning().ifPresent(out::println);
            listen(
                    source,
                    stage,
                    speaker,
                    new Beside(keys, daily, printing, new ClockWatch(settings.clock(), System::nanoTime)),
                    out);
            tell(stage.stop(), stage, printing, speaker, out);
        }
        return 0;
    }

    private void listen(MicrophoneSource source, Stage stage, Speaker speaker, Beside beside, PrintWriter out) {
        int blocks = 0;
        while (true) {
            String key = beside.keys().poll();
            if (key != null) {
                speaker.stop();
                if (key.equals("q")) {
                    return;
                }
                Optional<Control> control = control(key);
                if (control.isPresent()) {
                    tell(stage.pressed(control.get()), stage, beside.printing(), speaker, out);
                } else {
                    out.println("Type y or Enter to confirm, n to cancel, r to repeat, u to undo, q to end.");
                }
            }
            Optional<Sound> block = source.read();
            if (block.isEmpty()) {
                return;
            }
            // Its own voice never becomes a statement.
            if (speaker.isSpeaking()) {
                continue;
            }
            Optional<Stage.Answer> answer = stage.accept(block.get());
            if (answer.isPresent()) {
                show(answer.get(), stage, beside.printing(), speaker, out);
            }
            tell(stage.tick(), stage, beside.printing(), speaker, out);
            if (++blocks % 10 == 0) {
                beside.clock().look().ifPresent(jump -> tell(stage.note(jump), stage, beside.printing(), speaker, out));
                String news = beside.news();
                if (news != null) {
                    out.println("\r  " + news);
                }
                out.print("\r" + meter(source.level(), !stage.isPaused()));
                out.flush();
            }
        }
    }

    /** What goes on while it listens. */
    private record Beside(BlockingQueue<String> keys, DailyWork daily, PrintWork printing, ClockWatch clock) {
        /** The next line for a person; null while there is none. */
        @Nullable
        String news() {
            String news = daily.news();
            return news == null ? printing.news() : news;
        }
    }

    /** A name as it can be kept and shown. */
    private static String name(String text) {
        String name = text.strip();
        if (name.isEmpty() || name.length() > LONGEST_NAME || name.codePoints().anyMatch(Character::isISOControl)) {
            throw new BadInputException("An operator's name has 1 to " + LONGEST_NAME
                    + " letters and no control characters. Give another with --operator.");
        }
        return name;
    }

    /** While it is paused there is nothing to say, and what was heard is nobody's business. */
    private static void show(Stage.Answer answer, Stage stage, CardSender sender, Speaker speaker, PrintWriter out) {
        if (!answer.prompts().isEmpty()) {
            out.println("\r  heard  " + HeardText.words(answer.heard()));
            tell(answer.prompts(), stage, sender, speaker, out);
            stage.answers().ofSound(answer.heard()).ifPresent(advice -> out.println("\r  sound  " + advice));
        }
    }

    private static void tell(List<Prompt> prompts, Stage stage, CardSender sender, Speaker speaker, PrintWriter out) {
        for (Prompt prompt : prompts) {
            Answers.Said said = stage.answers().said(prompt, stage.herd(), sender);
            out.println("\r  says   " + said.shown());
            speaker.say(said.spoken());
        }
    }

    private static Optional<Control> control(String key) {
        return Optional.ofNullable(
                switch (key) {
                    case "", "y" -> Control.CONFIRM_ENTRY;
                    case "n" -> Control.CANCEL_ENTRY;
                    case "r" -> Control.REPEAT_ENTRY;
                    case "u" -> Control.UNDO_LAST_ENTRY;
                    default -> null;
                });
    }

    private static String meter(double level, boolean listening) {
        int bars = (int) Math.max(0, Math.min(METER_WIDTH, Math.round((level + 60) / 60 * METER_WIDTH)));
        return (listening ? "listening " : "paused    ") + "#".repeat(bars) + ".".repeat(METER_WIDTH - bars) + " ";
    }

    private static void readKeys(BlockingQueue<String> keys) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                keys.add(line.strip().toLowerCase(Locale.ROOT));
            }
        } catch (IOException e) {
            // The terminal is gone: what waits goes to the open statements, as at the end.
            keys.add("q");
        }
    }
}
