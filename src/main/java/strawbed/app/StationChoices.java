package strawbed.app;

import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import strawbed.entry.EntryGroup;
import strawbed.station.Choices;
import strawbed.station.Meaning;

/** The lines of {@code station.properties} that say how the station listens, speaks and looks. */
final class StationChoices {
    static final String MICROPHONE = "microphone";
    static final String SPEAKER = "speaker";
    static final String LISTEN = "listen";
    static final String HEADSET = "headset";
    static final String VOICE = "voice";
    static final String UNSPOKEN = "voice.not-for";
    static final String LOOK = "look";
    static final String LANGUAGE = "language";
    static final String DOTS_PER_INCH = "screen.dots-per-inch";
    static final String OPERATORS = "operators";
    static final String ANNOUNCE = "late.again-minutes";
    static final String PUT_OFF = "late.put-off-minutes";
    private static final String PEDAL = "pedal.";

    /** As many as fit on one page, beside nobody. */
    private static final int MOST_OPERATORS = 11;

    private static final int LONGEST_NAME = 40;

    private StationChoices() {}

    /** Takes lines out of the file. */
    interface Lines {
        /** What a line means; empty where the file has none of that name. */
        <T> Optional<T> taken(String name, Function<String, T> meaning);
    }

    static Choices read(Lines lines) {
        Choices usual = Choices.USUAL;
        return new Choices(
                lines.taken(MICROPHONE, text -> text).filter(name -> !name.isEmpty()),
                lines.taken(SPEAKER, text -> text).filter(name -> !name.isEmpty()),
                lines.taken(LISTEN, text -> oneOf(text, "hold", "open")).orElse(usual.holdToTalk()),
                lines.taken(HEADSET, text -> oneOf(text, "yes", "no")).orElse(usual.headset()),
                lines.taken(VOICE, text -> oneOf(text, "on", "off")).orElse(usual.voice()),
                lines.taken(UNSPOKEN, StationChoices::unspoken).orElse(usual.unspoken()),
                lines.taken(LOOK, text -> oneOf(text, "dark", "light")).orElse(usual.dark()),
                lines.taken(LANGUAGE, text -> oneOf(text, "es", "en")).orElse(usual.spanish()),
                lines.taken(DOTS_PER_INCH, StationChoices::dots),
                lines.taken(OPERATORS, StationChoices::operators).orElse(usual.operators()),
                lines.taken(ANNOUNCE, StationChoices::minutes).orElse(usual.announceAgain()),
                lines.taken(PUT_OFF, StationChoices::minutes).orElse(usual.putOffFor()),
                pedal(lines));
    }

    /** The names that lines may have. */
    static String names() {
        return String.join(
                ", ",
                MICROPHONE,
                SPEAKER,
                LISTEN,
                HEADSET,
                VOICE,
                UNSPOKEN,
                LOOK,
                LANGUAGE,
                DOTS_PER_INCH,
                OPERATORS,
                ANNOUNCE,
                PUT_OFF,
                Arrays.stream(Meaning.values()).map(StationChoices::line).collect(Collectors.joining(", ")));
    }

    /** The line that names the keys with this meaning. */
    static String line(Meaning meaning) {
        return PEDAL + meaning.name().toLowerCase(Locale.ROOT);
    }

    private static boolean oneOf(String text, String yes, String no) {
        if (text.equals(yes) || text.equals(no)) {
            return text.equals(yes);
        }
        throw new IllegalArgumentException("write " + no + " or " + yes);
    }

    private static Double dots(String text) {
        double dots;
        try {
            dots = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("write how many dots an inch has, such as 149", e);
        }
        if (!(dots >= 30 && dots <= 1000)) {
            throw new IllegalArgumentException("write a number from 30 to 1000");
        }
        return dots;
    }

    private static Set<EntryGroup> unspoken(String text) {
        return Arrays.stream(text.split(",", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .map(StationChoices::group)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static EntryGroup group(String word) {
        return Arrays.stream(EntryGroup.values())
                .filter(group -> word(group).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("write some of "
                        + Arrays.stream(EntryGroup.values())
                                .map(StationChoices::word)
                                .collect(Collectors.joining(", "))));
    }

    /** As it is written in the file. */
    static String word(EntryGroup group) {
        return group.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<String> operators(String text) {
        List<String> names = Arrays.stream(text.split(",", -1))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        if (names.size() > MOST_OPERATORS) {
            throw new IllegalArgumentException("write " + MOST_OPERATORS + " names at most");
        }
        if (names.stream()
                .anyMatch(name ->
                        name.length() > LONGEST_NAME || name.codePoints().anyMatch(Character::isISOControl))) {
            throw new IllegalArgumentException("write names of 1 to " + LONGEST_NAME + " letters, with commas between");
        }
        return names;
    }

    private static Duration minutes(String text) {
        int minutes;
        try {
            minutes = Integer.parseInt(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("write a whole number of minutes", e);
        }
        if (minutes < 1 || minutes > 24 * 60) {
            throw new IllegalArgumentException("write 1 to 1440 minutes");
        }
        return Duration.ofMinutes(minutes);
    }

    private static Map<Integer, Meaning> pedal(Lines lines) {
        Map<Integer, Meaning> pedal = new HashMap<>();
        for (Meaning meaning : Meaning.values()) {
            lines.taken(line(meaning), StationChoices::codes).orElse(List.of()).forEach(code -> {
                Meaning before = pedal.putIfAbsent(code, meaning);
                if (before != null) {
                    throw new BadInputException("In " + StationFile.NAME + " the key " + code + " is both "
                            + line(before) + " and " + line(meaning) + ". Take it out of one of them.");
                }
            });
        }
        return pedal;
    }

    private static List<Integer> codes(String text) {
        try {
            List<Integer> codes = Arrays.stream(text.split(",", -1))
                    .map(String::strip)
                    .filter(code -> !code.isEmpty())
                    .map(Integer::valueOf)
                    .toList();
            if (codes.stream().allMatch(code -> code > 0)) {
                return codes;
            }
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "write key codes with commas between, as the station's page of pedal keys does", e);
        }
        throw new IllegalArgumentException("no key that can be told apart has a code below 1");
    }
}
