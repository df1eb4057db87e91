package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * When the station says what it has to say: a question after a moment of quiet, as the speaker may go on; what was decided
 * at once. Owned by one thread.
 */
final class Speech {
    /** People go on speaking after a pause: the voice begins so long after the last word. */
    private static final Duration QUIET = Duration.ofMillis(1200);

    /** Where it never becomes quiet, because machines bang, the voice begins all the same. */
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(4);

    private final Mouth mouth;
    private List<String> texts = List.of();
    private Instant begin = Instant.MAX;
    private Instant beginAtLast = Instant.MAX;
    private Instant lastWord = Instant.MIN;

    Speech(Mouth mouth) {
        this.mouth = mouth;
    }

    /** Somebody speaks now. */
    void hears(Instant now) {
        lastWord = now;
    }

    /** Says this in the place of what waits, after a moment of quiet. */
    void ask(List<String> question, Instant now) {
        wait(question, lastWord.equals(Instant.MIN) ? now : lastWord.plus(QUIET));
    }

    /** Says this in the place of what waits, at once. */
    void tell(List<String> news, Instant now) {
        wait(news, now);
    }

    private void wait(List<String> other, Instant from) {
        texts = other;
        begin = from;
        beginAtLast = from.plus(LONGEST_WAIT);
    }

    /**
     * Begins to speak if it is time.
     *
     * @param isOn whether people want to hear it at all
     */
    void look(Instant now, boolean somebodySpeaks, boolean isOn) {
        if (texts.isEmpty()) {
            return;
        }
        if (somebodySpeaks && now.isBefore(beginAtLast)) {
            begin = now.plus(QUIET);
        } else if (!now.isBefore(begin) || !now.isBefore(beginAtLast)) {
            if (isOn) {
                texts.forEach(mouth::say);
            }
            texts = List.of();
        }
    }

    /** Ends what is being said, and what waits. */
    void hush() {
        texts = List.of();
        mouth.stop();
    }
}
