package strawbed.audio;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Scanner;

/**
 * Listens to the microphone in a process of its own until that is ended, and prints what it hears: states, holes, and
 * twice a second how many samples came that count 1, 2, 3 to 30,000 and again, and how often the count jumped. For each
 * line that it is given, the name of a cue, it plays that cue five times over and tells how it went.
 */
public final class MicrophoneTeller {
    /** The highest sample of a sound that counts. */
    static final int HIGHEST = 30_000;

    /** How often a cue is played for one order, so that a speaker can go away meanwhile. */
    static final int TIMES = 5;

    private static final Duration WAIT = Duration.ofMillis(100);
    private static final Duration BETWEEN = Duration.ofMillis(500);

    private long polls;
    private long end;
    private short last;
    private long counted;
    private long jumps;

    private MicrophoneTeller() {}

    public static void main(String[] args) {
        SoundDevices.start("orders", MicrophoneTeller::play);
        new MicrophoneTeller().listen(Clock.systemUTC());
    }

    private static void play() {
        SpeakerSink speaker = new SpeakerSink();
        Scanner orders = new Scanner(System.in, StandardCharsets.UTF_8);
        while (orders.hasNextLine()) {
            Sound once = Cue.valueOf(orders.nextLine()).sound();
            Sound sound = once;
            for (int i = 1; i < TIMES; i++) {
                sound = sound.join(once.at((long) i * once.length()));
            }
            try {
                System.out.println("played " + speaker.play(sound));
            } catch (SpeakerException failure) {
                System.out.println("speaker: " + failure.getMessage());
            }
        }
    }

    private void listen(Clock clock) {
        Instant told = clock.instant();
        try (LiveMicrophone microphone = LiveMicrophone.open(null, clock, told)) {
            while (true) {
                polls++;
                Optional<Sound> block = microphone.poll(WAIT, true);
                microphone.changed().ifPresent(state -> System.out.println("state " + state));
                block.ifPresent(this::count);
                if (Duration.between(told, clock.instant()).compareTo(BETWEEN) >= 0) {
                    told = clock.instant();
                    tell(microphone, clock);
                }
            }
        }
    }

    private void count(Sound block) {
        if (block.startSample() != end) {
            System.out.println("hole " + (block.startSample() - end));
        }
        end = block.startSample() + block.length();
        for (short sample : block.copySamples()) {
            if (sample != 0) {
                counted++;
                if (last != 0 && sample != last % HIGHEST + 1) {
                    jumps++;
                }
            }
            last = sample;
        }
    }

    private void tell(LiveMicrophone microphone, Clock clock) {
        long cpu = ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class)
                .getProcessCpuTime();
        System.out.println("told counted=" + counted + " jumps=" + jumps + " end=" + end + " polls=" + polls + " cpu="
                + cpu / 1_000_000 + " at=" + clock.millis() + " losses=" + microphone.losses() + " dropped="
                + microphone.dropped());
    }
}
