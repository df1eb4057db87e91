package strawbed.journal.sqlite;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * The hash that chains a fact to the one that its station saved before it.
 *
 * <p>SHA-256 (FIPS 180-4), in lower-case hexadecimal, over these fields in this order: the text {@code strawbed event
 * 1}, station, previous, id, recorded_at, occurred_at, zone, calf, type, version in decimal, json, source, words,
 * verdict, grammar, model, sound. A row with an operator begins with {@code strawbed event 2} instead and has the
 * operator at its end, so that rows from before there were operators keep their hash. A field that is NULL is the byte 0; any other is the byte 1, the number of its bytes
 * as four bytes with the highest first, and its text in UTF-8. So no two rows have the same bytes, and NULL is not the
 * empty text. Previous is the hash of the station's fact before as text, NULL for the first.
 *
 * <p>The place in the record is left out: another record may hold the same fact at another place. The order of a
 * station's facts is in the chain itself. The encoding never changes; another one begins with another first field.
 *
 * <p>A chain shows what was changed, not by whom, and whoever can write the file can also make a whole new chain. What
 * a backup noted of it then no longer fits ({@link BackupNotes}).
 */
final class ChainHash {
    private static final String WITHOUT_OPERATOR = "strawbed event 1";
    private static final String WITH_OPERATOR = "strawbed event 2";

    private static final HexFormat HEX = HexFormat.of();

    private ChainHash() {}

    static String of(String station, @Nullable String previous, EventRow row) {
        MessageDigest digest = sha256();
        for (@Nullable
        String field : Arrays.<@Nullable String>asList(
                row.operator() == null ? WITHOUT_OPERATOR : WITH_OPERATOR,
                station,
                previous,
                row.id(),
                row.recordedAt(),
                row.occurredAt(),
                row.zone(),
                row.calf(),
                row.type(),
                Integer.toString(row.version()),
                row.json(),
                row.source(),
                row.words(),
                row.verdict(),
                row.grammar(),
                row.model(),
                row.sound())) {
            add(digest, field);
        }
        if (row.operator() != null) {
            add(digest, row.operator());
        }
        return HEX.formatHex(digest.digest());
    }

    private static void add(MessageDigest digest, @Nullable String field) {
        if (field == null) {
            digest.update((byte) 0);
            return;
        }
        byte[] bytes = field.getBytes(StandardCharsets.UTF_8);
        digest.update((byte) 1);
        digest.update(ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).flip());
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new LinkageError("every Java platform must have SHA-256", e);
        }
    }
}
