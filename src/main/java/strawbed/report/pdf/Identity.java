package strawbed.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;

/** What tells one printed sheet from another: made of its words and the time, so that the same sheet has the same. */
final class Identity {
    private Identity() {}

    static byte[] of(List<List<Drawn>> pages, Instant printedAt) {
        return of("", pages, printedAt);
    }

    /** @param more what tells one from another besides, such as whom they are about */
    static byte[] of(String more, List<List<Drawn>> pages, Instant printedAt) {
        String words = more
                + pages.stream()
                        .flatMap(List::stream)
                        .filter(Drawn.Words.class::isInstance)
                        .map(drawn -> ((Drawn.Words) drawn).text())
                        .collect(Collectors.joining("\n"));
        UUID ofWords = UUID.nameUUIDFromBytes(words.getBytes(StandardCharsets.UTF_8));
        return ByteBuffer.allocate(3 * Long.BYTES)
                .putLong(ofWords.getMostSignificantBits())
                .putLong(ofWords.getLeastSignificantBits())
                .putLong(printedAt.toEpochMilli())
                .array();
    }
}
