package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The vectors were computed by another program from the encoding's description: Python's hashlib and struct. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChainHashTest {
    private static final String STATION = "019bb5c0-0000-7000-8000-000000000001";
    private static final String FIRST = "7d34dad15f9eccda63fea71e9e7b597a507fe10e491b0db5f8584d184f274a34";

    @Test
    void the_first_row_of_a_station_has_the_hash_of_the_vector() {
        EventRow row = fedByVoice(null);
        assertThat(ChainHash.of(STATION, null, row)).isEqualTo(FIRST);
    }

    @Test
    void a_row_with_an_operator_has_the_hash_of_the_vector() {
        EventRow row = fedByVoice("Inés");
        assertThat(ChainHash.of(STATION, null, row))
                .isEqualTo("1ecf0f4a7831b8be50bd70ea88de6e94cf9b55bfe7b7f6901995fd400e8e72ea");
    }

    @Test
    void the_next_row_is_chained_to_it() {
        EventRow row = new EventRow(
                "019bb5c0-0000-7000-8000-00000000002c",
                "2026-11-24T08:06:00Z",
                "2026-11-24T08:06:00Z",
                "America/Chicago",
                null,
                "FeedRefused",
                1,
                "{}",
                "button",
                null,
                "",
                null,
                null,
                null,
                null);
        assertThat(ChainHash.of(STATION, FIRST, row))
                .isEqualTo("33fd731a7ef14728be01cfac5d5ac3507b2cd4b28d731bf39f7877b643343bda");
    }

    @Test
    void nothing_is_not_empty_and_no_letter_can_change_its_field() {
        List<EventRow> rows = List.of(
                row("ab", "c", null, 1),
                row("a", "bc", null, 1),
                row("abc", "", null, 1),
                row("", "abc", null, 1),
                row("", "abc", "", 1),
                row("", "abc", "\u0000", 1),
                row("", "abc", null, 11));
        Set<String> hashes = new HashSet<>();
        rows.forEach(row -> hashes.add(ChainHash.of(STATION, null, row)));
        rows.forEach(row -> hashes.add(ChainHash.of(STATION, "", row)));
        assertThat(hashes).hasSize(2 * rows.size());
    }

    private record Link(String station, @Nullable String previous, String hash) {}

    /** So that the records of two stations can be one: a link says which row is before it, not where either lies. */
    @Test
    void the_chains_of_two_stations_hold_in_whatever_order_their_rows_lie() {
        List<Link> union = new ArrayList<>();
        Map<Link, EventRow> rows = new HashMap<>();
        for (String station : List.of(STATION, "019bb5c0-0000-7000-8000-000000000002")) {
            String previous = null;
            for (int i = 0; i < 20; i++) {
                EventRow row = row(station, "words", null, 1 + i);
                Link link = new Link(station, previous, ChainHash.of(station, previous, row));
                previous = link.hash();
                union.add(link);
                rows.put(link, row);
            }
        }
        Collections.shuffle(union, new Random(1));
        Set<String> ends = union.stream().map(Link::hash).collect(Collectors.toSet());
        for (Link link : union) {
            assertThat(ChainHash.of(link.station(), link.previous(), Objects.requireNonNull(rows.get(link))))
                    .isEqualTo(link.hash());
            ends.remove(String.valueOf(link.previous()));
        }
        assertThat(ends).as("the newest of each station").hasSize(2);
    }

    private static EventRow fedByVoice(@Nullable String operator) {
        return new EventRow(
                "019bb5c0-0000-7000-8000-00000000002b",
                "2026-11-24T08:05:00.123456789Z",
                "2026-11-24T08:04:00Z",
                "America/Chicago",
                "019bb5c0-0000-7000-8000-00000000002a",
                "ColostrumFed",
                1,
                "{\"volume\":3.5,\"unit\":\"quart\"}",
                "voice",
                "[\"calf\",\"130\",\"é 牛\"]",
                "understood",
                "g1",
                "m1",
                null,
                operator);
    }

    private static EventRow row(String zone, String json, @Nullable String sound, int version) {
        return new EventRow("i", "r", "o", zone, null, "t", version, json, "s", null, null, null, null, sound, null);
    }
}
