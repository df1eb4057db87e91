package strawbed.statement;

import java.time.Instant;
import java.time.ZoneId;

/**
 * When and where somebody spoke: what spoken times are counted from.
 *
 * @param start the start of speech
 * @param zone the farm's zone
 */
public record SpeechTime(Instant start, ZoneId zone) {}
