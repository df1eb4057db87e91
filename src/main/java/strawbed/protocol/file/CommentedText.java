package strawbed.protocol.file;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import strawbed.protocol.Allowed;
import strawbed.protocol.Protocol;
import strawbed.protocol.Section;
import strawbed.protocol.Setting;

/** Writes a protocol as a file that explains itself. */
final class CommentedText {
    /** The longest line. */
    private static final int WIDTH = 110;

    private static final List<String> HEAD = List.of(
            "The farm's protocol: what this farm does for its newborn calves, and when.",
            "",
            "This file belongs to the farm and its herd veterinarian: agree on a change before you make it. Every"
                    + " setting tells what it does, where its usual value comes from, and what may stand there. The"
                    + " unit is the end of its name. A setting that is taken out has its usual value.",
            "",
            "Strawbed checks this file whenever it starts to record. With a fault in it the protocol from before"
                    + " stays in force. Check it yourself after a change:",
            "    strawbed protocol check",
            "",
            "Strawbed informs. It makes no diagnosis and names no dose, whatever stands here: the veterinarian and"
                    + " the label do. A change counts from the next start of the recorder on; a calf that was born"
                    + " before is judged by the protocol of its time.");

    private final StringBuilder out = new StringBuilder();
    private final Protocol protocol;

    CommentedText(Protocol protocol) {
        this.protocol = protocol;
    }

    String text() {
        HEAD.forEach(this::comment);
        for (Section section : Section.values()) {
            out.append("\n\n");
            comment(section.title());
            out.append('[').append(section.key()).append("]\n");
            section.settings().forEach(this::setting);
        }
        return out.toString();
    }

    private void setting(Setting setting) {
        out.append('\n');
        comment(setting.reason());
        comment("Source: " + setting.source() + ".");
        comment(capital(setting.allowed().words()) + ". Usual: " + usual(setting) + ".");
        String line = setting.key() + " = " + TomlValue.of(setting, protocol.value(setting));
        if (line.length() <= WIDTH) {
            out.append(line).append('\n');
        } else {
            out.append(setting.key()).append(" = [\n");
            wrapped("    ", commas(TomlValue.elements(setting, protocol.value(setting))));
            out.append("]\n");
        }
    }

    /** The usual value as it is written; a list of all that there is, in a word. */
    static String usual(Setting setting) {
        String usual = setting.allowed().usual();
        boolean isAll = setting.allowed() instanceof Allowed.Words words
                && Allowed.parts(usual).size() == words.choices().size();
        return isAll ? "all of them" : TomlValue.of(setting, usual);
    }

    private void comment(String text) {
        if (text.isEmpty()) {
            out.append("#\n");
        } else if (text.startsWith(" ")) {
            out.append("# ").append(text).append('\n');
        } else {
            wrapped("# ", List.of(text.split(" ", -1)));
        }
    }

    /** Words are never broken, so that one in quotation marks may have blanks. */
    private void wrapped(String before, List<String> words) {
        int length = 0;
        for (String word : words) {
            if (length > 0 && length + 1 + word.length() > WIDTH) {
                out.append('\n');
                length = 0;
            }
            String lead = length == 0 ? before : " ";
            out.append(lead).append(word);
            length += lead.length() + word.length();
        }
        out.append('\n');
    }

    private static List<String> commas(List<String> elements) {
        int last = elements.size() - 1;
        return IntStream.rangeClosed(0, last)
                .mapToObj(i -> elements.get(i) + (i < last ? "," : ""))
                .toList();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
