package strawbed.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.audio.AudioException;
import strawbed.audio.SoundCondition;
import strawbed.audio.WavFile;
import strawbed.text.Messages;

/** How the sounds of the last day were, in one line of {@code strawbed check}. */
final class SoundTelling {
    private static final Duration LAST = Duration.ofDays(1);

    /** More are not read: enough to tell what is wrong, however much was kept. */
    private static final int MOST = 200;

    /** As they are told, and which comes first where two are equally frequent. */
    private static final List<SoundCondition> TOLD =
            List.of(SoundCondition.TOO_NOISY, SoundCondition.TOO_QUIET, SoundCondition.TOO_LOUD);

    private final Map<SoundCondition, Integer> counts = new EnumMap<>(SoundCondition.class);
    private int unreadable;

    private SoundTelling() {}

    /** The line; none where nothing was kept in the last day. */
    static Optional<String> lastDay(Settings settings) {
        SoundFolder sounds = new SoundFolder(settings.data(), () -> {
            throw new AssertionError("no sound is written here");
        });
        Instant now = settings.clock().instant();
        try {
            List<String> names = sounds.names().stream()
                    .filter(name -> SoundFolder.namedAt(name)
                            .filter(at -> at.isAfter(now.minus(LAST)) && !at.isAfter(now))
                            .isPresent())
                    .collect(Collectors.toList());
            if (names.isEmpty()) {
                return Optional.empty();
            }
            // Names sort by time.
            Collections.reverse(names);
            SoundTelling telling = new SoundTelling();
            names.stream().limit(MOST).map(sounds::file).forEach(telling::count);
            return Optional.of(telling.line(names.size()));
        } catch (IOException failure) {
            return Optional.of("Sounds of the last day: their folder cannot be read (" + failure.getMessage()
                    + "). Check the disk and the rights to it.");
        }
    }

    private void count(Path file) {
        try {
            counts.merge(SoundCondition.of(WavFile.read(file)), 1, Integer::sum);
        } catch (AudioException broken) {
            unreadable++;
        }
    }

    private String line(int all) {
        String looked = all > MOST ? "the newest " + MOST + " of " + all : String.valueOf(all);
        String parts = TOLD.stream()
                .map(condition -> condition.word() + " " + counts.getOrDefault(condition, 0))
                .collect(Collectors.joining(", "));
        String broken = unreadable == 0 ? "" : " " + unreadable + " could not be read: check the disk.";
        return "Sounds of the last day: " + looked + "; " + parts + "." + broken + advice();
    }

    private String advice() {
        SoundCondition most = TOLD.get(0);
        for (SoundCondition condition : TOLD) {
            most = counts.getOrDefault(condition, 0) > counts.getOrDefault(most, 0) ? condition : most;
        }
        return counts.getOrDefault(most, 0) == 0 ? "" : " " + new Messages(Locale.US).word(most);
    }
}
