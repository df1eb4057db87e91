package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Which fact is the newest, in the small file {@code record.db-head} beside the record. After the sudden end of a
 * program the newest facts may be in the log {@code record.db-wal} alone: without that file the record is whole in
 * itself and only shorter. This note then still names what was saved.
 *
 * <p>Always of one length and written in its place by one write, without waiting for the disk: the record itself is on
 * the disk before, so that the note may lag behind it after a power cut, and never runs ahead of it. What a record lost
 * before it was written to again is kept in {@code record.db-lost}, a line each, oldest first. Safe for one thread.
 */
final class HeadNote implements AutoCloseable {
    private static final Pattern LINE = Pattern.compile("00(\\d{18}) ([0-9a-f]{64}) ([0-9a-f]{8})\n");
    private static final int LENGTH = 20 + 1 + 64 + 1 + 8 + 1;

    /** A reader may meet the writer in the middle of its write, hardly twice in a row. */
    private static final int READS = 5;

    private final Path file;
    private final Path lost;
    private @Nullable FileChannel channel;

    private HeadNote(Path record) {
        this.file = record.resolveSibling(record.getFileName() + "-head");
        this.lost = record.resolveSibling(record.getFileName() + "-lost");
    }

    static HeadNote of(Path record) {
        return new HeadNote(record);
    }

    /** Whether one is there that says something; a power cut can leave one that says nothing yet. */
    boolean isThere() throws IOException {
        return saysSomething(bytes(file));
    }

    /**
     * What was noted, to compare a record with that is read afterwards: one that is read before may lack what was saved
     * meanwhile.
     */
    Noted read() {
        List<Finding> faults = new ArrayList<>();
        @Nullable Head newest = null;
        List<Head> gone = new ArrayList<>();
        try {
            byte[] bytes = bytes(file);
            for (int i = 0; i < READS && Head.of(bytes) == null && saysSomething(bytes); i++) {
                bytes = bytes(file);
            }
            newest = Head.of(bytes);
            if (newest == null && saysSomething(bytes)) {
                faults.add(unreadable(file, "it was changed or damaged"));
            }
            byte[] lines = bytes(lost);
            for (int from = 0; from < lines.length; from += LENGTH) {
                Head head = Head.of(Arrays.copyOfRange(lines, from, Math.min(lines.length, from + LENGTH)));
                if (head == null) {
                    faults.add(unreadable(lost, "it was changed or damaged"));
                    break;
                }
                if (!gone.contains(head)) {
                    gone.add(head);
                }
            }
        } catch (IOException e) {
            faults.add(unreadable(file, DataFolder.reasonOf(e)));
        }
        return new Noted(lost, newest, gone, faults);
    }

    /**
     * Notes the record's newest fact; nothing where it has none.
     *
     * @throws IOException if the disk refuses; the note that was there is then the same or unreadable
     */
    void write(Handle handle) throws IOException {
        Optional<Head> head = handle.createQuery(
                        "SELECT sequence, hash FROM event_chain ORDER BY sequence DESC LIMIT 1")
                .map((row, context) -> new Head(row.getLong("sequence"), row.getString("hash")))
                .findOne();
        if (head.isPresent()) {
            write(head.get());
        }
    }

    void write(Head head) throws IOException {
        if (channel == null) {
            channel = open(file, StandardOpenOption.WRITE);
        }
        channel.write(StandardCharsets.US_ASCII.encode(head.line()), 0);
    }

    /** Puts the note on the disk; at the opening, so that later writes only replace what has its place there. */
    void force() throws IOException {
        if (channel != null) {
            channel.force(true);
        }
    }

    /** Keeps what a record lost, on the disk, before the note names what is saved from now on. */
    void keep(Head gone) throws IOException {
        try (FileChannel lines = open(lost, StandardOpenOption.WRITE)) {
            ByteBuffer line = StandardCharsets.US_ASCII.encode(gone.line());
            // Behind the last whole line: a full disk can leave a part of one.
            lines.write(line, lines.size() - lines.size() % LENGTH);
            lines.force(true);
        }
        Files.deleteIfExists(file);
    }

    @Override
    public void close() throws IOException {
        if (channel != null) {
            channel.close();
        }
    }

    private static FileChannel open(Path path, StandardOpenOption how) throws IOException {
        return FileChannel.open(path, Set.of(StandardOpenOption.CREATE, how), DataFolder.ownersFile(path));
    }

    private static byte[] bytes(Path path) throws IOException {
        try {
            return Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            return new byte[0];
        }
    }

    private static boolean saysSomething(byte[] bytes) {
        for (byte each : bytes) {
            if (each != 0) {
                return true;
            }
        }
        return false;
    }

    private static Finding unreadable(Path path, String why) {
        return new Finding(
                null,
                "The note " + path + " cannot be read (" + why + "), so that it cannot tell whether the record's end"
                        + " was cut.",
                "Compare the record with a backup, then remove the note; the recorder writes a new one.");
    }

    /** What was noted. */
    record Noted(Path lost, @Nullable Head newest, List<Head> gone, List<Finding> faults) {
        Noted {
            gone = List.copyOf(gone);
            faults = List.copyOf(faults);
        }

        /** What a record with a chain lacks of it. */
        List<Finding> missingFrom(Handle handle) {
            List<Finding> findings = new ArrayList<>(faults);
            if (newest != null && !newest.isIn(handle)) {
                findings.add(newest.missing(handle));
            }
            gone.stream()
                    .filter(head -> !head.isIn(handle))
                    .map(head -> head.missingBefore(lost))
                    .forEach(findings::add);
            return findings;
        }
    }

    /**
     * A fact of the chain.
     *
     * @param place its sequence
     * @param hash of its link
     */
    record Head(long place, String hash) {
        String line() {
            String text = String.format(Locale.ROOT, "%020d %s ", place, hash);
            return text + String.format(Locale.ROOT, "%08x\n", sum(text));
        }

        static @Nullable Head of(byte[] bytes) {
            Matcher line = LINE.matcher(new String(bytes, StandardCharsets.US_ASCII));
            if (!line.matches()) {
                return null;
            }
            Head head = new Head(Long.parseLong(line.group(1)), line.group(2));
            return head.line().equals(line.group()) ? head : null;
        }

        private static long sum(String text) {
            CRC32 sum = new CRC32();
            sum.update(text.getBytes(StandardCharsets.US_ASCII));
            return sum.getValue();
        }

        boolean isIn(Handle handle) {
            return handle.createQuery("SELECT count(*) FROM event_chain WHERE sequence = ? AND hash = ?")
                            .bind(0, place)
                            .bind(1, hash)
                            .mapTo(Integer.class)
                            .one()
                    > 0;
        }

        private Finding missing(Handle handle) {
            long last = handle.createQuery("SELECT coalesce(max(sequence), 0) FROM event")
                    .mapTo(Long.class)
                    .one();
            return missing(
                    last < place
                            ? "those after number " + last + " are gone"
                            : "number " + place + " is another one here now");
        }

        /** For a record that has nothing left in which to look. */
        Finding missing(String how) {
            return new Finding(
                    place,
                    "Facts up to number " + place + " were saved, and " + how + ": the log file record.db-wal is"
                            + " probably missing, or the end of the record was cut.",
                    "If record.db-wal is somewhere else, such as in the bin, put it back beside record.db before"
                            + " anything more is recorded; else restore the record from a backup.");
        }

        private Finding missingBefore(Path lost) {
            return new Finding(
                    place,
                    "Facts up to number " + place + " were saved, and the newest of them were gone when the record was"
                            + " next written to: its log file record.db-wal was probably missing, or its end was cut.",
                    "Restore the record from a backup, or bring in what is missing; do not put an old record.db-wal"
                            + " back, as it no longer fits. To be told no more of it, remove " + lost + ".");
        }
    }
}
