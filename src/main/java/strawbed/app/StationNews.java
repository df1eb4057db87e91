package strawbed.app;

import java.util.List;
import java.util.Optional;
import strawbed.dialog.Prompt;

/** What clock, backup and printer have to tell while the station listens. */
final class StationNews implements StationLoop.Beside {
    private final DailyWork daily;
    private final PrintWork printing;
    private final ClockWatch clock;
    private final MicrophoneCounts counts;
    private final SoundIn microphone;

    StationNews(DailyWork daily, PrintWork printing, ClockWatch clock, MicrophoneCounts counts, SoundIn microphone) {
        this.counts = counts;
        this.microphone = microphone;
        this.daily = daily;
        this.printing = printing;
        this.clock = clock;
    }

    @Override
    public String news(Stage stage) {
        counts.note(microphone.losses());
        List<Prompt> jumped = clock.look().map(stage::note).orElse(List.of());
        if (!jumped.isEmpty()) {
            return stage.answers().shown(jumped.get(0), stage.herd());
        }
        return Optional.ofNullable(daily.news())
                .or(() -> Optional.ofNullable(printing.news()))
                .orElse("");
    }
}
