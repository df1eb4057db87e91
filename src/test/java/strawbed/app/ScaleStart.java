package strawbed.app;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import strawbed.testkit.SimulatedHerd;

/** Starts the recorder, all but the microphone, at a given time, and ends: a program for {@link ScaleRun}. */
final class ScaleStart {
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
        }
    }
}
