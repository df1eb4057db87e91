package strawbed.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Names of grammar files: relative, below the source's directory. */
final class FileNames {

    private static final Pattern SCHEME = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*:.*");

    private FileNames() {}

    /**
     * The name itself, when it stays inside the directory.
     *
     * @throws GrammarException when it does not
     */
    static String check(String file) {
        String problem = problem(file);
        if (!problem.isEmpty()) {
            throw new GrammarException(file, problem);
        }
        return file;
    }

    /** What is wrong with the name, or nothing. */
    static String problem(String file) {
        if (file.isBlank()) {
            return "a file needs a name.";
        }
        if (SCHEME.matcher(file).matches()) {
            return "\"" + file + "\" is a web address or a drive; only files beside this one can be used.";
        }
        if (file.startsWith("/") || file.indexOf('\\') >= 0 || file.indexOf('\0') >= 0) {
            return "\"" + file + "\" is not a name of a file beside this one, such as calves.abnf.";
        }
        if (List.of(file.split("/", -1)).contains("..")) {
            return "\"" + file + "\" leaves the directory of the grammar.";
        }
        return "";
    }

    /** The name as the source knows it of a file that another file refers to. */
    static String resolve(String from, String reference) {
        List<String> segments = new ArrayList<>();
        for (String segment : (from.substring(0, from.lastIndexOf('/') + 1) + reference).split("/", -1)) {
            if (!segment.isEmpty() && !segment.equals(".")) {
                segments.add(segment);
            }
        }
        return String.join("/", segments);
    }
}
