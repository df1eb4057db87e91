package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The plain text beside a rescued record: what was lost, what was left out, and all that is left of it. */
final class RescueList {
    private final List<String> lines = new ArrayList<>();

    private RescueList() {}

    /** Everything that the list tells. */
    static List<String> lines(Path source, Instant now, RecordRescue.Plan plan) {
        FoundRows found = plan.found();
        FactSorting.Sorted facts = plan.facts();
        StatementSorting.Sorted statements = plan.statements();
        RescueList list = new RescueList();
        list.head(source, now, found, facts);
        list.missing(facts.missing(), facts.missingIds(), "Lost facts", "No row was found of number ");
        list.leftOut(facts.leftOut(), "Facts that were found and left out");
        list.numbers(
                facts.unproven(),
                "Facts in the new record that nothing proves",
                "No link of the chain is left for these numbers; what they say may be right. Compare them with paper.");
        list.numbers(
                facts.changed(),
                "Facts in the new record that were changed",
                "These do not fit the chain, or come from a damaged page; they were asked for with --with-changed.");
        list.missing(
                statements.missing(), statements.missingIds(), "Lost statements", "No row was found of statement ");
        list.leftOut(statements.leftOut(), "Statements, and ends of statements, that were found and left out");
        list.ends(statements.lostEnds());
        list.unread(found.unread());
        return list.lines;
    }

    /** Writes it; the file must not be there. */
    static void write(Path file, List<String> lines) {
        try {
            Files.createFile(file, DataFolder.ownersFile(file));
            Files.write(file, lines, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The list " + file + " was not written: " + DataFolder.reasonOf(e)
                            + ". Check the disk and your right to write there, then try again.",
                    e);
        }
    }

    private void head(Path source, Instant now, FoundRows found, FactSorting.Sorted facts) {
        lines.add("Rescued from " + source.toAbsolutePath().normalize() + " at " + now + ".");
        lines.addAll(found.told());
        lines.add(
                "Numbers are those of the damaged record. In the new one the facts are numbered anew in the same order, "
                        + "and chained anew; their ids, times and words are the old ones.");
        if (found.links().isEmpty() && !facts.taken().isEmpty()) {
            lines.add("No link of the chain was found: the record had none yet, or all are lost.");
        }
        lines.add("Sounds are not copied.");
    }

    private void title(String title) {
        lines.add("");
        lines.add(title);
        lines.add("-".repeat(title.length()));
    }

    private void missing(List<Places> missing, Map<Long, String> ids, String title, String what) {
        if (missing.isEmpty()) {
            return;
        }
        title(title + ": " + Places.count(missing));
        missing.forEach(run -> lines.add(what + run + "."));
        ids.forEach((number, id) -> {
            if (missing.stream().anyMatch(run -> run.holds(number))) {
                lines.add("The index still tells the id of number " + number + ": " + id);
            }
        });
    }

    private void leftOut(List<LeftOut> rows, String title) {
        if (rows.isEmpty()) {
            return;
        }
        title(title + ": " + rows.size());
        for (LeftOut row : rows) {
            lines.add(row.what() + ": " + row.why() + (row.why().endsWith(".") ? "" : "."));
            row.content().forEach(line -> lines.add("    " + onOneLine(line)));
        }
    }

    private void numbers(Collection<Long> numbers, String title, String what) {
        if (numbers.isEmpty()) {
            return;
        }
        title(title + ": " + numbers.size());
        lines.add(what);
        lines.add(Places.text(Places.of(numbers)));
    }

    private void ends(List<String> ids) {
        if (ids.isEmpty()) {
            return;
        }
        title("Statements whose end is lost: " + ids.size());
        lines.add("They had been answered, and wait again in the new record:");
        lines.addAll(ids);
    }

    private void unread(Map<Integer, List<String>> cells) {
        if (cells.isEmpty()) {
            return;
        }
        title("Places on pages that cannot be taken apart, as far as they are letters");
        cells.forEach((page, rows) -> rows.forEach(row -> lines.add("Page " + page + ": " + row)));
    }

    /** A damaged text can hold anything; it must not look like a line of ours. */
    private static String onOneLine(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints()
                .forEach(point -> line.appendCodePoint(Character.isISOControl(point) || point == 0x2028 ? ' ' : point));
        return line.toString();
    }
}
