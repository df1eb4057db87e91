package strawbed.journal;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;

/**
 * The record: it only grows. Nothing in it is ever changed or removed.
 *
 * <p>Safe for any thread; calls wait for each other. Every method throws {@link JournalException} when the record
 * cannot do what it was asked, and {@link IllegalStateException} after {@link #close}.
 */
public interface EventJournal extends RecordParts, AutoCloseable {
    /**
     * Saves all of these facts, or none of them, and returns when they are safe on the disk.
     *
     * @return the facts as they will be read back, in the order given
     */
    List<RecordedEvent> append(List<NewEvent> events);

    /**
     * Saves facts that another record has, all that are missing here or none, and returns when they are safe on the
     * disk. Each keeps its id, its instants, its zone and how it came into the other record; its sequence is the next
     * one here, so that a whole record comes out the same in an empty one. Facts that are here already are skipped.
     *
     * @param events in the order of the other record
     * @return the facts that were added, as they will be read back
     * @throws JournalException for {@link JournalException.Reason#CONFLICT} if a fact has the id of a different one
     */
    List<RecordedEvent> importAll(List<RecordedEvent> events);

    /** What {@link #importAll} would come to. Nothing is written. */
    ImportPlan plan(List<RecordedEvent> imported);

    /** All facts in the order in which they were saved; of a big record more than a small computer can hold. */
    List<RecordedEvent> all();

    /** The fact with this id, or empty when the record has none. */
    Optional<RecordedEvent> find(EventId id);

    /** Keeps a statement that nobody has confirmed or dropped yet. */
    OpenStatement keep(NewOpenStatement statement);

    /**
     * Notes how a kept statement came to its end. It stays in the record but is no longer open.
     *
     * @param how in a word or two, such as confirmed or dropped
     * @throws IllegalArgumentException if no open statement has this id
     */
    void settle(UUID id, String how);

    /** The statements that were kept and not settled, in the order in which they were kept. */
    List<OpenStatement> openStatements();

    /** The same as of an earlier time: kept by then, and not settled by then. */
    List<OpenStatement> openStatementsAt(Instant time);

    /** Those of these sounds that a fact or a statement names, also a statement that was settled; by their file names. */
    Set<String> named(Collection<String> sounds);

    /** Lets go of the record; a second call does nothing. */
    @Override
    void close();
}
