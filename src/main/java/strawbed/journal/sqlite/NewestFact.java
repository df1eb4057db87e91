package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the note of the newest fact while a record is written to. No trouble with it ever stops the recording: what is
 * saved is saved, and an older note only notices less. Safe for one thread.
 */
final class NewestFact {
    private final Path record;
    private final HeadNote note;
    private final List<Finding> opening = new ArrayList<>();
    private @Nullable Finding trouble;

    NewestFact(Path record) {
        this.record = record;
        this.note = HeadNote.of(record);
    }

    /** Compares a record that was just opened with its notes, keeps what it lost, and notes what it has. */
    List<Finding> compareAndNote(Handle handle) {
        opening.addAll(DataFolder.keepToOwner(record));
        HeadNote.Noted noted = note.read();
        opening.addAll(noted.missingFrom(handle));
        HeadNote.Head newest = noted.newest();
        try {
            // Else the next fact would write over the only trace of what is gone.
            if (newest != null && !newest.isIn(handle)) {
                note.keep(newest);
            }
            note.write(handle);
            note.force();
        } catch (IOException e) {
            trouble = refused(e);
        }
        return findings();
    }

    /** Notes the newest fact after it was saved. */
    List<Finding> note(Handle handle) {
        try {
            note.write(handle);
            trouble = null;
        } catch (IOException | JdbiException e) {
            trouble = refused(e);
        }
        return findings();
    }

    /** What a person must be told. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(opening);
        if (trouble != null) {
            findings.add(trouble);
        }
        return List.copyOf(findings);
    }

    void close() {
        try {
            note.close();
        } catch (IOException e) {
            trouble = refused(e);
        }
    }

    private Finding refused(Exception e) {
        return new Finding(
                null,
                "The facts are saved, but the note beside " + record + " that tells if the record's end is ever lost"
                        + " was not written ("
                        + (e instanceof IOException io ? DataFolder.reasonOf(io) : e.getMessage())
                        + ").",
                "Make room on the disk, and check your right to write there.");
    }
}
