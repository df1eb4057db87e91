package strawbed.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The texts of one language. Immutable, safe for any thread. */
public final class Messages {
    static final String BUNDLE = "strawbed.text.messages";

    private final Locale locale;
    private final ResourceBundle bundle;

    /**
     * Loads the texts; where a language has none, they are English, whatever the machine is set to.
     *
     * @throws java.util.MissingResourceException if the program has no texts at all
     */
    public Messages(Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** A text with its parts filled in; they should be words already. */
    public String text(MessageKey key, Object... args) {
        return at(key.inBundle(), args);
    }

    /**
     * The word for a constant of one of the program's lists, such as "heifer".
     *
     * @throws java.util.MissingResourceException if people have no word for it
     */
    public String word(Enum<?> constant) {
        return at(key(constant));
    }

    /** A value, or what stands in its place where there is none: on paper a blank looks like a "no". */
    public String orNotRecorded(String value) {
        return value.isBlank() ? text(MessageKey.ACCOUNT_NOT_RECORDED) : value;
    }

    public Locale locale() {
        return locale;
    }

    boolean has(String key) {
        return bundle.containsKey(key);
    }

    String at(String key, Object... args) {
        return new MessageFormat(bundle.getString(key), locale).format(args);
    }

    /** {@code Term.Sex.FEMALE} is {@code sex.female} in the bundle. */
    static String key(Enum<?> constant) {
        String list = constant.getDeclaringClass().getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_");
        return MessageKey.dotted(list + "_" + constant.name());
    }
}
