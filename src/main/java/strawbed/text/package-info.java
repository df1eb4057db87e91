/**
 * Every word that a person reads or hears, and how numbers and times are written and said.
 *
 * <p>Entry types: {@link strawbed.text.Prompts} (what the recorder says and shows), {@link
 * strawbed.text.EventPhrases}, {@link strawbed.text.DuePhrases}, {@link strawbed.text.CautionPhrases}, {@link
 * strawbed.text.CalfNames}, all over one {@link strawbed.text.Messages}. The words stand in {@code messages.properties};
 * the code holds none. A missing bundle or key ends in a {@link java.util.MissingResourceException}, because the
 * program was put together wrongly. Everything here is immutable and safe for any thread; locale, zone and clock are
 * handed in.
 */
@NullMarked
package strawbed.text;

import org.jspecify.annotations.NullMarked;
