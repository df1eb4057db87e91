package strawbed.journal;

import java.time.Instant;
import java.util.UUID;

/**
 * A kept statement that waits for an answer.
 *
 * @param id ours, of UUID version 7
 * @param recordedAt when it was kept
 */
public record OpenStatement(UUID id, Instant recordedAt, NewOpenStatement statement) {}
