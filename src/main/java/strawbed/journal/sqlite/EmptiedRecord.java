package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * Tells a record that was never begun from one whose file was emptied or taken away. SQLite takes both for new, and
 * then even removes the log with the newest facts.
 */
final class EmptiedRecord {
    private EmptiedRecord() {}

    /**
     * Whether there is a record's file with something in it; false where none was begun yet.
     *
     * @throws JournalException if there was a record, and its file is empty now, or is gone and left its log
     */
    static boolean isThere(Path record) {
        try {
            boolean isFile = Files.exists(record);
            if (isFile && (!Files.isRegularFile(record) || Files.size(record) > 0)) {
                return true;
            }
            List<String> traces = traces(record, isFile);
            if (traces.isEmpty()) {
                return false;
            }
            String what = isFile ? " is empty, but there was a record: " : " is gone, but there was a record: ";
            throw new JournalException(
                    Reason.CORRUPT,
                    "The record was not opened: " + record + what + String.join(", ", traces)
                            + (traces.size() == 1 ? " is" : " are")
                            + " still beside it. If you have the file elsewhere,"
                            + " put it back; else put a backup in its place with \"strawbed restore FILE --replace\","
                            + " or choose another data folder.",
                    null);
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The record was not opened: nobody can tell what is beside " + record + " ("
                            + DataFolder.reasonOf(e) + "). Check the disk and your right to read there.",
                    e);
        }
    }

    /** A file that is gone takes nothing with it but the log; a new record beside the rest is told by its note. */
    private static List<String> traces(Path record, boolean isFile) throws IOException {
        List<String> traces = new ArrayList<>();
        Path log = record.resolveSibling(record.getFileName() + "-wal");
        if (Files.exists(log) && Files.size(log) > 0) {
            traces.add("its log " + log.getFileName());
        }
        if (!isFile) {
            return traces;
        }
        if (HeadNote.of(record).isThere()) {
            traces.add("the note of its newest fact");
        }
        if (Files.exists(record.resolveSibling("backups.jsonl"))) {
            traces.add("the list of its backups");
        }
        if (hasSounds(record.resolveSibling("sounds"))) {
            traces.add("the sounds of what was said");
        }
        return traces;
    }

    private static boolean hasSounds(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> sounds = Files.list(folder)) {
            return sounds.findAny().isPresent();
        }
    }
}
