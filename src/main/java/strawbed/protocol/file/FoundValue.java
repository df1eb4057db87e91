package strawbed.protocol.file;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import strawbed.protocol.Allowed;
import strawbed.protocol.Setting;

/**
 * What stands after a setting's name.
 *
 * @param plain the value as a protocol knows it; null where it is of another kind than the setting's
 * @param shown the value for a sentence, cut short
 * @param condition what else must be, after the words of what is allowed; mostly nothing
 */
record FoundValue(@Nullable String plain, String shown, String condition) {
    /** Nobody measures beyond it, and a number could otherwise have any length. */
    private static final int MOST_DECIMALS = 6;

    private static final String TOO_FINE = ", with at most " + MOST_DECIMALS + " decimals";
    private static final String A_LIST = ", as a list in square brackets";

    static FoundValue of(Setting setting, TomlTable table, SourceText source) {
        List<String> path = List.of(setting.key());
        Object value = table.get(path);
        TomlPosition place = table.inputPositionOf(path);
        if (value == null || place == null) {
            throw new AssertionError("no " + setting + " in the table that names it");
        }
        if (setting.allowed() instanceof Allowed.Amount) {
            return number(value, source.numberAfterName(place));
        }
        if (TomlValue.isList(setting)) {
            return value instanceof TomlArray array
                    ? list(setting, array, source)
                    : new FoundValue(null, shown(value), A_LIST);
        }
        return value instanceof String text
                ? new FoundValue(text, shown(value), "")
                : new FoundValue(null, shown(value), ", in quotation marks");
    }

    /** @param written the digits of a number with a point, which TOML itself keeps as a binary one */
    private static FoundValue number(Object value, Optional<BigDecimal> written) {
        if (value instanceof Long whole) {
            return new FoundValue(whole.toString(), whole.toString(), "");
        }
        if (!(value instanceof Double)) {
            return new FoundValue(null, shown(value), value instanceof String ? ", without quotation marks" : "");
        }
        String shown = written.map(BigDecimal::toString).orElseGet(value::toString);
        Optional<BigDecimal> number = written.map(BigDecimal::stripTrailingZeros);
        return number.isPresent() && number.get().scale() <= MOST_DECIMALS
                ? new FoundValue(number.get().toPlainString(), shown, "")
                : new FoundValue(null, shown, TOO_FINE);
    }

    private static FoundValue list(Setting setting, TomlArray array, SourceText source) {
        boolean ofNumbers = setting.allowed() instanceof Allowed.Ascending;
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            FoundValue element = ofNumbers
                    ? number(array.get(i), source.numberInList(array.inputPositionOf(i)))
                    : word(array.get(i));
            if (element.plain() == null) {
                return new FoundValue(null, shown(array), element.condition());
            }
            parts.add(element.plain());
        }
        return new FoundValue(String.join(", ", parts), shown(array), "");
    }

    /** A word of a list has no comma: two words in one pair of quotation marks are none. */
    private static FoundValue word(Object value) {
        return value instanceof String text && !text.contains(",")
                ? new FoundValue(text, shown(value), "")
                : new FoundValue(null, shown(value), ", each in quotation marks");
    }

    private static String shown(Object value) {
        if (value instanceof TomlTable) {
            return "a section";
        }
        if (value instanceof TomlArray array) {
            return SourceText.shown(
                    array.toList().stream().map(FoundValue::shown).toList().toString());
        }
        return SourceText.shown(value instanceof String ? "\"" + value + "\"" : value.toString());
    }
}
