package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * Takes what is intact in a damaged record into a new one. Each page of the file and of its write-ahead log is read by
 * itself, without SQLite and without the tree of pages, so that a damaged page hides only what is on it. Immutable, safe
 * for any thread.
 *
 * <p>A fact is <i>proven</i> where its hash fits the chain, <i>unproven</i> where it can be read and no link is left, and
 * <i>changed</i> otherwise. Proven and unproven ones are taken.
 */
public final class RecordRescue {
    private final Path directory;
    private final Clock clock;
    private final ZoneId zone;
    private final Supplier<UUID> ids;

    /**
     * @param directory the data folder of the new record; must be empty, or is made
     * @param clock dates the list
     * @param zone the farm's zone
     * @param ids names the new record's station
     */
    public RecordRescue(Path directory, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        this.directory = directory;
        this.clock = clock;
        this.zone = zone;
        this.ids = ids;
    }

    /**
     * Rescues a record.
     *
     * @param damaged the file of a record, of which, as of its log, nothing is changed
     * @param withChanged whether changed facts are taken too, as far as they can be read
     * @throws JournalException if there is no such file or nothing of a record in it ({@link Reason#NOT_A_RECORD}), if
     *     the folder of the new record is not empty ({@link Reason#EXISTS}), if another program writes to the file, or if
     *     the disk refuses; then there is no new record
     */
    public Rescued from(Path damaged, boolean withChanged) {
        refuseTaken();
        Plan plan = plan(damaged, withChanged);
        DataFolder.make(directory);
        try {
            write(plan.facts().taken(), plan.statements().taken());
            Path list = directory.resolve("rescue.txt");
            RescueList.write(list, RescueList.lines(damaged, clock.instant(), plan));
            return told(list, plan);
        } catch (RuntimeException e) {
            throw removeAll(e);
        }
    }

    /** What is to be done with what was found. */
    record Plan(FoundRows found, FactSorting.Sorted facts, StatementSorting.Sorted statements) {}

    /** Works out what a rescue comes to; writes nothing. */
    static Plan plan(Path damaged, boolean withChanged) {
        FoundRows found = found(damaged);
        IndexVotes indexes = new IndexVotes(found);
        ChainProof proof = new ChainProof(found.links(), found.stations());
        return new Plan(
                found,
                new FactSorting(proof, withChanged).sort(found.rows(RowKind.EVENT), indexes),
                new StatementSorting(withChanged).sort(found, indexes));
    }

    private void refuseTaken() {
        if (!Files.exists(directory)) {
            return;
        }
        try (Stream<Path> files = Files.isDirectory(directory) ? Files.list(directory) : Stream.of(directory)) {
            if (files.findAny().isPresent()) {
                throw new JournalException(
                        Reason.EXISTS,
                        "Nothing was rescued: " + directory + " is not empty, and a rescue never replaces anything."
                                + " Give a new folder.",
                        null);
            }
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "Nothing was rescued: the folder " + directory + " cannot be read (" + DataFolder.reasonOf(e)
                            + "). Give a new folder.",
                    e);
        }
    }

    private static FoundRows found(Path damaged) {
        try (PageFile file = PageFile.open(damaged)) {
            FoundRows found = FoundRows.in(file);
            file.refuseIfChanged();
            if (found.isEmpty()) {
                throw new JournalException(
                        Reason.NOT_A_RECORD,
                        "Nothing was rescued: in " + damaged + " there is no row of a record"
                                + (found.isSqlite() ? "" : ", and it is no file of SQLite")
                                + ". Give the file of the damaged record; it is named record.db.",
                        null);
            }
            return found;
        }
    }

    private void write(List<RecordedEvent> facts, List<PastStatement> statements) {
        try (SqliteEventJournal journal = SqliteEventJournal.open(directory, clock, zone, ids)) {
            journal.importAll(facts);
            journal.importStatements(statements);
            RecordHealth health = journal.verify();
            if (!health.isSound()) {
                throw new JournalException(
                        Reason.FAILED,
                        "The new record in " + directory + " is not sound and was removed: "
                                + health.findings().get(0).what() + " Check the disk, then try again.",
                        null);
            }
        }
    }

    private Rescued told(Path list, Plan plan) {
        FactSorting.Sorted facts = plan.facts();
        StatementSorting.Sorted statements = plan.statements();
        long lost = Places.count(statements.missing())
                + statements.leftOut().size()
                + statements.lostEnds().size();
        return new Rescued(
                directory.resolve("record.db"),
                list,
                plan.found().told(),
                facts.taken().size(),
                Places.of(facts.unproven()),
                Places.of(facts.changed()),
                facts.missing(),
                facts.leftOut().size(),
                statements.taken().size(),
                (int) statements.taken().stream()
                        .filter(statement -> statement.end() == null)
                        .count(),
                lost);
    }

    /** The folder was empty, so that all in it is ours; half a record would stand in the way of the next try. */
    private RuntimeException removeAll(RuntimeException reason) {
        try (Stream<Path> files = Files.list(directory)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
        return reason;
    }
}
