package strawbed.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is to be printed, as files of one folder: of each job the document ({@code 3.pdf}) and a note ({@code 3.job}).
 *
 * <p>The document is written first, so that a note has its document. A document without a note was being put in when
 * the program ended; nobody was told that it waits, and it is removed with the next one. Several programs may use one
 * folder; changes are made under a lock. Safe for any thread.
 */
public final class PrintQueue {
    /** How many jobs stay that no longer wait, so that they can be printed again. */
    public static final int KEPT = 20;

    private static final Pattern NAME = Pattern.compile("([1-9]\\d{0,8})\\.(job|pdf)");
    private static final long LOCK_MILLIS = 10_000;
    private static final String NOTE = ".job";
    private static final String DOCUMENT = ".pdf";

    private final Path folder;
    private final Clock clock;

    /**
     * What is in the queue.
     *
     * @param jobs the oldest first
     * @param damaged a sentence for each job whose note cannot be read
     */
    public record Contents(List<PrintJob> jobs, List<String> damaged) {
        public Contents {
            jobs = List.copyOf(jobs);
            damaged = List.copyOf(damaged);
        }

        /** Those that no printer took yet. */
        public List<PrintJob> waiting() {
            return jobs.stream().filter(PrintJob::isWaiting).toList();
        }
    }

    /** @param folder is made with the first job */
    public PrintQueue(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Puts a document in; it waits from then on, whatever happens to this program.
     *
     * @param what in words, such as "the card of calf 312"
     * @throws PrintException if it cannot be kept, as where the disk is full; then nothing waits
     */
    public PrintJob add(byte[] pdf, String what, PrintUse use, String printer) {
        return locked(() -> {
            removeUnnoted();
            PrintJob job =
                    new PrintJob(last() + 1, what, use, printer, clock.instant(), JobState.WAITING, 0, null, null);
            QueueFile.write(document(job.number()), pdf);
            try {
                write(job);
            } catch (IOException full) {
                Files.deleteIfExists(document(job.number()));
                throw full;
            }
            removeOldest();
            return job;
        });
    }

    /** Looks at the queue as it is now. */
    public Contents contents() {
        List<PrintJob> jobs = new ArrayList<>();
        List<String> damaged = new ArrayList<>();
        try {
            for (int number : numbers(NOTE)) {
                try {
                    present(number).ifPresent(jobs::add);
                } catch (IOException | IllegalArgumentException e) {
                    damaged.add(damage(number, e));
                }
            }
        } catch (IOException e) {
            throw failed(e);
        }
        return new Contents(jobs, damaged);
    }

    /** Where it is, whether or not it was made yet. */
    public Path folder() {
        return folder;
    }

    /** The document of a job. */
    public Path document(int number) {
        return folder.resolve(number + DOCUMENT);
    }

    /**
     * Gives a job up, unless it was handed over meanwhile. Empty if there is none with this number.
     *
     * @throws PrintException if its note cannot be read
     */
    public Optional<PrintJob> drop(int number) {
        return changed(number, job -> job.isWaiting() ? job.dropped() : job);
    }

    /** Lets a job wait anew, on this printer. Empty if there is none with this number. */
    public Optional<PrintJob> again(int number, String printer) {
        return changed(number, job -> job.again(printer, clock.instant()));
    }

    /** Removes a job whose note cannot be read, with its document; tells whether there was one. */
    public boolean removeDamaged(int number) {
        return locked(() -> {
            if (!Files.exists(note(number))) {
                return false;
            }
            try {
                read(number);
                return false;
            } catch (IOException | IllegalArgumentException damaged) {
                Files.deleteIfExists(note(number));
                Files.deleteIfExists(document(number));
                return true;
            }
        });
    }

    /** Sends what waits for such a printer to another one, at once; gives how many. */
    public int move(PrintUse use, String printer) {
        List<PrintJob> moved = contents().waiting().stream()
                .filter(job -> job.use() == use && !job.printer().equals(printer))
                .toList();
        moved.forEach(job -> changed(job.number(), now -> now.isWaiting() ? now.again(printer, job.askedAt()) : now));
        return moved.size();
    }

    /** Changes a job as it is now, whoever changed it meanwhile. */
    Optional<PrintJob> changed(int number, UnaryOperator<PrintJob> change) {
        return locked(() -> {
            if (!Files.exists(note(number))) {
                return Optional.empty();
            }
            PrintJob changed;
            try {
                changed = change.apply(read(number));
            } catch (IllegalArgumentException e) {
                throw new PrintException(damage(number, e), e);
            }
            write(changed);
            removeOldest();
            return Optional.of(changed);
        });
    }

    /** Makes the folder, which must be there to hold a lock. */
    Path madeFolder() throws IOException {
        QueueFile.makeFolder(folder);
        return folder;
    }

    private Path note(int number) {
        return folder.resolve(number + NOTE);
    }

    private PrintJob read(int number) throws IOException {
        return JobNote.of(number, Files.readString(note(number), StandardCharsets.UTF_8));
    }

    /** Empty if another program removed it just now. */
    private Optional<PrintJob> present(int number) throws IOException {
        try {
            return Optional.of(read(number));
        } catch (NoSuchFileException gone) {
            return Optional.empty();
        }
    }

    private void write(PrintJob job) throws IOException {
        QueueFile.write(note(job.number()), JobNote.text(job).getBytes(StandardCharsets.UTF_8));
    }

    private String damage(int number, Exception why) {
        return "Job " + number + " cannot be read: " + why.getMessage() + ". Its page is " + document(number)
                + ": print it by hand if it is wanted, then type \"strawbed printer drop " + number + "\".";
    }

    private int last() throws IOException {
        SortedSet<Integer> all = numbers(NOTE);
        return all.isEmpty() ? 0 : all.last();
    }

    private SortedSet<Integer> numbers(String ending) throws IOException {
        SortedSet<Integer> numbers = new TreeSet<>();
        if (!Files.isDirectory(folder)) {
            return numbers;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.forEach(file -> {
                Matcher name = NAME.matcher(file.getFileName().toString());
                if (name.matches() && file.toString().endsWith(ending)) {
                    numbers.add(Integer.parseInt(name.group(1)));
                }
            });
        }
        return numbers;
    }

    private void removeUnnoted() throws IOException {
        SortedSet<Integer> unnoted = numbers(DOCUMENT);
        unnoted.removeAll(numbers(NOTE));
        for (int number : unnoted) {
            Files.deleteIfExists(document(number));
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path part :
                    (Iterable<Path>) files.filter(file -> file.toString().endsWith(QueueFile.PART))::iterator) {
                Files.deleteIfExists(part);
            }
        }
    }

    /** The note first, as a document without one is removed later anyhow. */
    private void removeOldest() throws IOException {
        List<PrintJob> done = contents().jobs().stream()
                .filter(job -> !job.isWaiting())
                .sorted(Comparator.comparingInt(PrintJob::number))
                .toList();
        for (PrintJob job : done.subList(0, Math.max(0, done.size() - KEPT))) {
            Files.deleteIfExists(note(job.number()));
            Files.deleteIfExists(document(job.number()));
        }
    }

    private interface Work<T> {
        T done() throws IOException;
    }

    private <T> T locked(Work<T> work) {
        try {
            FolderLock lock = FolderLock.take(madeFolder().resolve("queue.lock"), LOCK_MILLIS)
                    .orElseThrow(() -> new PrintException("Another program holds the queue of pages in " + folder
                            + ". End it, or try again in a minute."));
            try {
                return work.done();
            } finally {
                lock.close();
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private PrintException failed(IOException e) {
        return new PrintException(
                "The queue of pages in " + folder + " cannot be used: " + e.getMessage()
                        + ". Check that the disk has room and that the folder can be written to.",
                e);
    }
}
