package strawbed.protocol;

import org.jspecify.annotations.Nullable;

/**
 * A value that a setting cannot have.
 *
 * @param lower the setting that it must be more than; null where its value cannot be whatever the others are
 * @param sentence names the setting, the value and what is allowed
 */
public record ProtocolFault(Setting setting, @Nullable Setting lower, String sentence) {}
