package strawbed.app;

import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import strawbed.testkit.SimulatedHerd;

/**
 * Starts the recorder, all but the microphone, at a given time, tells how long after the start of Java it could listen, and
 * ends: a program for {@link StartsRun}.
 */
final class ScaleStart {
    static final String LISTENS = "listens after ms: ";

    private ScaleStart() {}

    public static void main(String[] arguments) {
        Clock clock = Clock.fixed(Instant.parse(arguments[1]), SimulatedHerd.ZONE);
        Settings settings = Settings.of(Optional.of(Path.of(arguments[0])), Optional.empty())
                .withClock(clock);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        try (Stage stage = Stage.open(settings, clock.instant(), err)) {
            if (stage.isPaused()) {
                throw new IllegalStateException("it does not listen");
            }
            System.out.println(LISTENS
                    + (System.currentTimeMillis()
                            - ManagementFactory.getRuntimeMXBean().getStartTime()));
        }
    }
}
