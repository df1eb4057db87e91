package strawbed.text;

import java.time.Clock;
import java.time.ZoneId;
import strawbed.care.Caution;
import strawbed.dialog.Prompt;

/**
 * What the recorder shows and says. The shown form also teaches the phrases that answer it; the spoken one is shorter
 * and writes every number out.
 *
 * <p>Immutable, safe for any thread.
 */
public final class Prompts {
    private final PromptPhrases shown;
    private final PromptPhrases spoken;
    private final CautionPhrases cautions;

    /**
     * @param zone the farm's
     * @param clock tells how long ago a time is that was said
     */
    public Prompts(Messages messages, ZoneId zone, Clock clock) {
        this.shown = new PromptPhrases(new Written(messages), zone, clock);
        this.spoken = new PromptPhrases(new Spoken(messages), zone, clock);
        this.cautions = new CautionPhrases(messages);
    }

    /** For the screen. */
    public String shown(Prompt prompt) {
        return shown.of(prompt);
    }

    /** For the voice. */
    public String spoken(Prompt prompt) {
        return spoken.of(prompt);
    }

    /** The sentences of a caution, for the screen: {@link CautionPhrases#caution}. */
    public String caution(Caution caution) {
        return cautions.caution(caution);
    }
}
