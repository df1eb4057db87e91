package strawbed.journal.sqlite;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * What the data folder remembers of its backups, in {@code backups.jsonl}: one JSON object a line, the newest last. Not
 * in the record, which another program may be writing.
 */
final class BackupNotes {
    private final Path file;

    private BackupNotes(Path file) {
        this.file = file;
    }

    static BackupNotes of(Path record) {
        return new BackupNotes(record.resolveSibling("backups.jsonl"));
    }

    void add(Backup backup) {
        Map<String, @Nullable Object> line = new LinkedHashMap<>();
        line.put("made_at", backup.madeAt().toString());
        line.put("file", backup.file());
        line.put("facts", backup.facts());
        line.put("last", backup.last());
        line.put("head", backup.head());
        try (FileChannel notes = FileChannel.open(
                file,
                Set.of(StandardOpenOption.CREATE, StandardOpenOption.APPEND, StandardOpenOption.SYNC),
                DataFolder.ownersFile(file))) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(JSON.std.asString(line) + "\n");
            while (bytes.hasRemaining()) {
                notes.write(bytes);
            }
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "What is in " + backup.file() + " is whole, but " + file + " did not take a note of it: "
                            + DataFolder.reasonOf(e) + ". Check the disk and your right to write there.",
                    e);
        }
    }

    /** The newest backup; empty if there was none. */
    Optional<Backup> newest() {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            return lines.isEmpty() ? Optional.empty() : Optional.of(read(lines.get(lines.size() - 1)));
        } catch (IOException | DateTimeException | IllegalArgumentException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The list of backups " + file + " cannot be read to its end: " + e.getMessage()
                            + ". Remove its last line, then make a new backup.",
                    e);
        }
    }

    private static Backup read(String line) throws IOException {
        Map<String, Object> fields = JSON.std.mapFrom(line);
        @Nullable Object head = fields.get("head");
        return new Backup(
                Instant.parse(text(fields, "made_at")),
                text(fields, "file"),
                Long.parseLong(text(fields, "facts")),
                Long.parseLong(text(fields, "last")),
                head == null ? null : head.toString());
    }

    private static String text(Map<String, Object> fields, String name) {
        @Nullable Object value = fields.get(name);
        if (value == null) {
            throw new IllegalArgumentException("it has no " + name);
        }
        return value.toString();
    }
}
