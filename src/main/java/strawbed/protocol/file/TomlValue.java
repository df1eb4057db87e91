package strawbed.protocol.file;

import java.util.List;
import strawbed.protocol.Allowed;
import strawbed.protocol.Setting;

/** How the value of a setting is written in TOML: numbers as numbers, words in quotation marks, lists as arrays. */
final class TomlValue {
    private TomlValue() {}

    /** On one line: {@code 2.5}, {@code "yes"}, {@code [30, 60]}. */
    static String of(Setting setting, String value) {
        return isList(setting) ? "[" + String.join(", ", elements(setting, value)) + "]" : element(setting, value);
    }

    static boolean isList(Setting setting) {
        return setting.allowed() instanceof Allowed.Ascending || setting.allowed() instanceof Allowed.Words;
    }

    /** The parts of a list. */
    static List<String> elements(Setting setting, String value) {
        return Allowed.parts(value).stream().map(part -> element(setting, part)).toList();
    }

    private static String element(Setting setting, String value) {
        boolean isNumber =
                setting.allowed() instanceof Allowed.Amount || setting.allowed() instanceof Allowed.Ascending;
        return isNumber ? value : "\"" + value + "\"";
    }
}
