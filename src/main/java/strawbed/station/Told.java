package strawbed.station;

import strawbed.dialog.Prompt;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/**
 * What came of the last thing that was said or pressed.
 *
 * @param word to be read from two metres
 * @param text in sentences
 */
public record Told(String word, String text) {
    /** The word for a prompt. */
    public static String word(Prompt prompt, Messages messages) {
        MessageKey key = key(prompt);
        return messages.text(key);
    }

    private static MessageKey key(Prompt prompt) {
        if (prompt instanceof Prompt.Saved) {
            return MessageKey.STATION_SAVED;
        }
        if (prompt instanceof Prompt.NotSaved
                || prompt instanceof Prompt.NotKept
                || prompt instanceof Prompt.KeptOpen) {
            return MessageKey.STATION_NOT_SAVED;
        }
        if (prompt instanceof Prompt.Cancelled) {
            return MessageKey.STATION_CANCELLED;
        }
        if (prompt instanceof Prompt.Undone) {
            return MessageKey.STATION_UNDONE;
        }
        return prompt instanceof Prompt.NotUnderstood ? MessageKey.STATION_SAY_AGAIN : MessageKey.STATION_READY;
    }
}
