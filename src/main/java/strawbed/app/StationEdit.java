package strawbed.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Sets one line of {@code station.properties} and leaves the others, and the comments, as people wrote them. */
final class StationEdit {
    private StationEdit() {}

    /**
     * Sets a line; where the file has none of that name, it is added at the end.
     *
     * @throws BadInputException if the file is broken or cannot be written
     */
    static void set(Path data, String name, String value) {
        // A broken file is mended by people, not written over.
        StationFile.in(data);
        Path file = data.resolve(StationFile.NAME);
        try {
            String before = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : "";
            OwnersFile.makeFolder(data.toAbsolutePath());
            OwnersFile.write(file, changed(before, name, value).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new BadInputException(file + " cannot be written: " + e.getMessage()
                    + ". Check that the folder can be written to and that the disk has room.");
        }
    }

    /** The text with that line; what java.util.Properties reads as one line may stand on several. */
    static String changed(String text, String name, String value) {
        Pattern ours = Pattern.compile("\\s*" + Pattern.quote(name) + "\\s*([=:\\s].*)?", Pattern.DOTALL);
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        String line = name + " = " + escaped(value) + end;
        List<String> changed = new ArrayList<>();
        boolean isSet = false;
        for (String logical : logicalLines(text)) {
            boolean isOurs = ours.matcher(logical).matches();
            if (!isOurs) {
                changed.add(logical);
            } else if (!isSet) {
                changed.add(line);
                isSet = true;
            }
        }
        String all = String.join("", changed);
        if (isSet) {
            return all;
        }
        return all + (all.isEmpty() || all.endsWith("\n") ? "" : end) + line;
    }

    /** With their ends; a comment never goes on in the next line. */
    private static List<String> logicalLines(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String natural : text.split("(?<=\n)", -1)) {
            line.append(natural);
            boolean isComment = line.toString().stripLeading().matches("(?s)[#!].*");
            boolean goesOn = !isComment && natural.stripTrailing().matches("(?s).*(?<!\\\\)(\\\\\\\\)*\\\\");
            if (!goesOn) {
                lines.add(line.toString());
                line.setLength(0);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
    }
}
