package strawbed.protocol;

/**
 * A value that a setting cannot have.
 *
 * @param sentence names the setting, the value and what is allowed
 */
public record ProtocolFault(Setting setting, String sentence) {}
