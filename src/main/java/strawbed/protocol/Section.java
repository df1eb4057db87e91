package strawbed.protocol;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A part of the protocol, in the order in which it is read. */
public enum Section {
    FIRST_MINUTES("The first minutes"),
    NAVEL("The navel"),
    COLOSTRUM("Colostrum: when, how much, how good"),
    STORED_COLOSTRUM("Colostrum in stock"),
    HARD_BIRTH("After a hard birth"),
    WARMTH("A cold calf, and the barn's air"),
    PEN("Before the calf leaves the pen"),
    SERUM("Did the calf take up enough"),
    SIGNS("Signs of vigour"),
    SHOWN("What is shown");

    private final String title;

    Section(String title) {
        this.title = title;
    }

    /** In words, for people. */
    public String title() {
        return title;
    }

    /** The name in the file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The section with this name in a file. */
    public static Optional<Section> find(String key) {
        return Arrays.stream(values())
                .filter(section -> section.key().equals(key))
                .findFirst();
    }

    /** Its settings in their order. */
    public List<Setting> settings() {
        return Arrays.stream(Setting.values())
                .filter(setting -> setting.section() == this)
                .toList();
    }
}
