package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strawbed.bench.BarnSound;
import strawbed.testkit.PrivateDisplay;
import strawbed.testkit.PrivatePulse;

/**
 * A screen and a sound server that nobody else has, and the real station in them. Its microphone always gives at least
 * a hush, as exact silence is taken for a microphone that is off.
 */
final class StationRoom implements AutoCloseable {
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;

    private final PrivateDisplay display;
    private final PrivatePulse pulse;
    private final StationLine hush;

    private StationRoom(PrivateDisplay display, PrivatePulse pulse) {
        this.display = display;
        this.pulse = pulse;
        this.hush = new StationLine(pulse);
    }

    /** What is missing here, in words; empty if a station can be opened. */
    static Optional<String> missing() {
        return PrivateDisplay.missing().or(PrivatePulse::missing);
    }

    /** @param folder is made; has a short path, as a socket lies in it */
    static StationRoom open(Path folder) throws IOException, InterruptedException {
        PrivateDisplay display = PrivateDisplay.open(WIDTH, HEIGHT);
        try {
            StationRoom room = new StationRoom(display, PrivatePulse.start(Files.createDirectories(folder)));
            room.begin();
            return room;
        } catch (IOException | InterruptedException | RuntimeException failure) {
            display.close();
            throw failure;
        }
    }

    private void begin() throws IOException, InterruptedException {
        try {
            loadHeadset();
            hush.plays(BarnSound.hush());
        } catch (IOException | InterruptedException failure) {
            close();
            throw failure;
        }
    }

    /** The station's own sounds go elsewhere, as into a headset. */
    private void loadHeadset() throws IOException, InterruptedException {
        ProcessBuilder load = new ProcessBuilder("pactl", "load-module", "module-null-sink", "sink_name=headset")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD);
        load.environment().putAll(pulse.environment());
        int code = load.start().waitFor();
        if (code != 0) {
            throw new IOException("pactl loads no second sink: it ended with " + code);
        }
    }

    /**
     * Starts the real station, over the whole screen.
     *
     * @param data its folder; gets the settings of the bench
     * @param options for Java
     */
    StationChild start(Path data, String classes, List<String> options) throws IOException {
        Files.createDirectories(data);
        Files.writeString(data.resolve(StationFile.NAME), "headset = yes\nvoice = off\n");
        Map<String, String> surroundings = new HashMap<>(display.environment());
        surroundings.putAll(pulse.environment());
        surroundings.put("PULSE_SINK", "headset");
        return StationChild.start(data, classes, options, surroundings);
    }

    PrivatePulse pulse() {
        return pulse;
    }

    @Override
    public void close() {
        hush.close();
        pulse.close();
        display.close();
    }
}
