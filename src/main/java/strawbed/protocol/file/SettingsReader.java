package strawbed.protocol.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlTable;
import strawbed.protocol.NearNames;
import strawbed.protocol.Protocol;
import strawbed.protocol.ProtocolFault;
import strawbed.protocol.Section;
import strawbed.protocol.Setting;

/** Reads the settings of one file. Used once. */
final class SettingsReader {
    /** More would not help: the file is no protocol. */
    private static final int MOST_UNREADABLE = 20;

    private final String text;
    private final SourceText source;
    private final List<FileFault> faults = new ArrayList<>();
    private final Set<Integer> unreadableLines = new HashSet<>();
    private final Map<String, String> values = new TreeMap<>();
    private final Map<Setting, Integer> lines = new EnumMap<>(Setting.class);
    private final Set<Setting> wrong = EnumSet.noneOf(Setting.class);

    SettingsReader(String text) {
        // Some editors put an invisible mark before the first letter.
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
        this.source = new SourceText(this.text);
    }

    ProtocolReading read() {
        Optional<TomlParseResult> parsed = parse();
        if (parsed.isPresent()) {
            parsed.get().errors().forEach(this::unreadable);
            sections(parsed.get());
        }
        if (unreadableLines.isEmpty() && parsed.isPresent()) {
            Protocol.faults(values).forEach(this::outOfOrder);
        }
        if (faults.isEmpty()) {
            return new ProtocolReading.Good(Protocol.of(values));
        }
        faults.sort(Comparator.comparingInt(FileFault::line));
        return new ProtocolReading.Broken(faults);
    }

    private Optional<TomlParseResult> parse() {
        try {
            return Optional.of(Toml.parse(text));
        } catch (StackOverflowError tooDeep) {
            // The parser calls itself for each bracket; it holds nothing that could be left half done.
            fault(0, "there are too many brackets in brackets. Start again from \"strawbed protocol write\".");
            return Optional.empty();
        }
    }

    private void unreadable(TomlParseError error) {
        Optional<FileFault> twice = SyntaxFaults.twice(error, source);
        if (twice.isPresent()) {
            faults.add(twice.get());
        } else if (unreadableLines.add(error.position().line()) && unreadableLines.size() <= MOST_UNREADABLE) {
            faults.add(SyntaxFaults.unreadable(error, source));
        } else if (unreadableLines.size() == MOST_UNREADABLE + 1) {
            fault(
                    error.position().line(),
                    "this line and others below cannot be read either. Start again from \"strawbed protocol write\".");
        }
    }

    private void sections(TomlTable root) {
        for (String name : root.keySet()) {
            Object value = root.get(List.of(name));
            int line = line(root, name);
            Optional<Section> section = Section.find(name);
            Optional<Setting> setting = Setting.find(name);
            if (value instanceof TomlTable table) {
                if (section.isEmpty()) {
                    doubtful(line, "there is no section [" + SourceText.shown(name) + "]." + meant(name, "[", "]"));
                }
                settings(table, section.orElse(null));
            } else if (section.isPresent()) {
                doubtful(
                        line,
                        name + " is the name of a section. Write [" + name
                                + "] on a line of its own, and its settings below.");
            } else if (setting.isPresent()) {
                misplaced(setting.get(), "before the first section", line);
                value(setting.get(), root, line);
            } else {
                unknown(name, line);
            }
        }
    }

    /** @param in null for a section that does not exist: what stands there is looked at, but not its place */
    private void settings(TomlTable table, @Nullable Section in) {
        for (String name : table.keySet()) {
            int line = line(table, name);
            Optional<Setting> setting = Setting.find(name);
            if (setting.isPresent()) {
                if (in != null && setting.get().section() != in) {
                    misplaced(setting.get(), "in [" + in.key() + "]", line);
                }
                value(setting.get(), table, line);
            } else if (in != null) {
                unknown(name, line);
            }
        }
    }

    private void misplaced(Setting setting, String where, int line) {
        doubtful(
                line,
                setting.key() + " stands " + where + ", but belongs in ["
                        + setting.section().key() + "]. Move it there.");
    }

    private void unknown(String name, int line) {
        doubtful(line, "there is no setting " + SourceText.shown(name) + "." + meant(name, "", ""));
    }

    private static String meant(String name, String before, String after) {
        List<String> known = before.isEmpty()
                ? Arrays.stream(Setting.values()).map(Setting::key).toList()
                : Arrays.stream(Section.values()).map(Section::key).toList();
        return NearNames.of(name, known).stream()
                .findFirst()
                .map(near -> " Did you mean " + before + near + after + "?")
                .orElse(" \"strawbed protocol show\" lists what there is.");
    }

    private void value(Setting setting, TomlTable table, int line) {
        // A list may go over several lines, and end too early because of one of them.
        if (unreadableLines.contains(line) || (TomlValue.isList(setting) && !unreadableLines.isEmpty())) {
            return;
        }
        lines.put(setting, line);
        FoundValue found = FoundValue.of(setting, table, source);
        String plain = found.plain();
        if (plain != null && setting.allowed().allows(plain)) {
            values.put(setting.key(), plain);
            return;
        }
        wrong.add(setting);
        fault(
                line,
                setting.key() + " is " + found.shown() + ", but must be "
                        + setting.allowed().words() + found.condition()
                        + ". Change it, or take it out for the usual value: " + CommentedText.usual(setting) + ".");
    }

    /** The line of what the file sets; of the two the later one, which is where the other can be seen already. */
    private void outOfOrder(ProtocolFault fault) {
        Setting lower = fault.lower();
        if (lower == null || wrong.contains(lower) || wrong.contains(fault.setting())) {
            return;
        }
        int line = Math.max(lines.getOrDefault(lower, 0), lines.getOrDefault(fault.setting(), 0));
        String usual = lines.containsKey(lower) && lines.containsKey(fault.setting())
                ? ""
                : " What the file leaves out has its usual value.";
        fault(line, fault.sentence() + ". Change one of them." + usual);
    }

    private int line(TomlTable table, String name) {
        var place = table.inputPositionOf(List.of(name));
        return place == null ? 0 : place.line();
    }

    /** What may only look wrong because of a line that could not be read. */
    private void doubtful(int line, String problem) {
        if (unreadableLines.isEmpty()) {
            fault(line, problem);
        }
    }

    private void fault(int line, String problem) {
        faults.add(new FileFault(line, problem));
    }
}
