package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;
import strawbed.journal.OpenStatement;

/** A disk damages the record; SQLite's own table of pages (dbstat) tells which rows each damage can have hit. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordRescueIT extends DamagedRecord {
    private byte[] whole = new byte[0];
    private int size;
    private List<Set<Integer>> facts = List.of();
    private List<Set<Integer>> links = List.of();
    private List<Set<Integer>> statements = List.of();

    @BeforeEach
    void save_a_record_of_many_pages() throws IOException, SQLException {
        saveManyFacts();
        whole = Files.readAllBytes(database());
        size = pageSize();
        facts = pagesOfRows("event");
        links = pagesOfRows("event_chain");
        statements = pagesOfRows("open_statement");
        assertThat(facts).hasSize(FACTS);
        assertThat(links).hasSize(FACTS);
        assertThat(statements).hasSize(STATEMENTS);
        assertThat(facts.stream().filter(pages -> pages.size() > 1)).hasSizeGreaterThan(20);
    }

    private RecordRescue.Plan plan(byte[] bytes) throws IOException {
        return RecordRescue.plan(damaged(bytes), false);
    }

    @Test
    void a_whole_record_is_rescued_whole_and_proven() throws IOException {
        RecordRescue.Plan plan = plan(whole);
        assertThat(plan.facts().taken()).isEqualTo(saved);
        assertThat(plan.facts().unproven()).isEmpty();
        assertThat(plan.facts().missing()).isEmpty();
        assertThat(plan.facts().leftOut()).isEmpty();
        assertThat(plan.statements().missing()).isEmpty();
        assertThat(plan.statements().leftOut()).isEmpty();
        assertThat(plan.statements().lostEnds()).isEmpty();
        assertThat(plan.found().unread()).isEmpty();
        assertThat(plan.statements().taken().stream().map(PastStatement::kept)).containsExactlyElementsOf(kept);
    }

    @Test
    void noise_on_any_one_page_costs_only_what_is_on_that_page() throws IOException {
        Random random = new Random(SEED);
        int pages = whole.length / size;
        assertThat(pages).isGreaterThan(60);
        int costly = 0;
        for (int page = 1; page <= pages; page++) {
            byte[] bytes = whole.clone();
            noise(bytes, page, size, random);
            RecordRescue.Plan plan = plan(bytes);
            String when = "noise on page " + page + " of " + pages;
            List<RecordedEvent> expected = new ArrayList<>();
            for (int i = 0; i < FACTS; i++) {
                if (!facts.get(i).contains(page)) {
                    expected.add(saved.get(i));
                }
            }
            assertThat(plan.facts().taken()).as(when).containsAll(expected);
            assertHonest(plan, FACTS, when);
            List<OpenStatement> expectedStatements = new ArrayList<>();
            for (int i = 0; i < STATEMENTS; i++) {
                if (!statements.get(i).contains(page)) {
                    expectedStatements.add(kept.get(i));
                }
            }
            assertThat(plan.statements().taken().stream().map(PastStatement::kept))
                    .as(when)
                    .containsExactlyElementsOf(expectedStatements);
            assertThat(Places.count(plan.statements().missing())
                            + plan.statements().leftOut().stream()
                                    .filter(row -> row.what().startsWith("The statement"))
                                    .count())
                    .as(when)
                    .isEqualTo(STATEMENTS - expectedStatements.size());
            costly += expected.size() < FACTS ? 1 : 0;
        }
        assertThat(costly).as("pages with facts on them").isGreaterThan(30);
    }

    @Test
    void flipped_bytes_never_make_a_wrong_fact_and_what_they_cost_is_told() throws IOException {
        int cost = 0;
        for (int seed = 1; seed <= 260; seed++) {
            Random random = new Random(seed);
            byte[] bytes = whole.clone();
            int flips = 1 + random.nextInt(seed % 4 == 0 ? 200 : 12);
            for (int i = 0; i < flips; i++) {
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            }
            RecordRescue.Plan plan = plan(bytes);
            assertHonest(plan, FACTS, flips + " flips of seed " + seed);
            cost += FACTS - plan.facts().taken().size();
            // A flip costs the row it hits, and at worst what is on one page.
            assertThat(plan.facts().taken().size()).as("seed " + seed).isGreaterThan(FACTS - 20 * flips);
        }
        assertThat(cost).as("facts lost over all cases").isPositive();
    }

    @Test
    void what_a_cut_off_file_still_has_whole_is_rescued() throws IOException {
        Random random = new Random(SEED);
        int rescued = 0;
        for (int cut = 0; cut < 120; cut++) {
            int length = cut < 60 ? (cut + 1) * whole.length / 61 : random.nextInt(size, whole.length);
            int full = length / size;
            List<RecordedEvent> expected = new ArrayList<>();
            long last = 0;
            for (int i = 0; i < FACTS; i++) {
                if (isWithin(facts.get(i), full)) {
                    expected.add(saved.get(i));
                }
                if (isWithin(facts.get(i), full) || isWithin(links.get(i), full)) {
                    last = i + 1L;
                }
            }
            byte[] bytes = Arrays.copyOf(whole, length);
            String when = "cut to " + length + " of " + whole.length + " bytes";
            if (last == 0) {
                continue;
            }
            RecordRescue.Plan plan = plan(bytes);
            assertThat(plan.facts().taken()).as(when).containsAll(expected);
            assertHonest(plan, last, when);
            rescued += expected.isEmpty() ? 0 : 1;
        }
        assertThat(rescued).as("cuts that left facts").isGreaterThan(100);
    }

    private static boolean isWithin(Set<Integer> pages, int full) {
        return pages.stream().allMatch(page -> page <= full);
    }

    @Test
    void many_pages_of_noise_together_cost_what_is_on_them() throws IOException {
        Random random = new Random(SEED);
        int pages = whole.length / size;
        for (int round = 0; round < 40; round++) {
            byte[] bytes = whole.clone();
            Set<Integer> hit = new TreeSet<>();
            for (int i = 0; i < 1 + round; i++) {
                int page = 1 + random.nextInt(pages);
                hit.add(page);
                noise(bytes, page, size, random);
            }
            RecordRescue.Plan plan = plan(bytes);
            String when = "noise on pages " + hit;
            List<RecordedEvent> expected = new ArrayList<>();
            for (int i = 0; i < FACTS; i++) {
                if (facts.get(i).stream().noneMatch(hit::contains)) {
                    expected.add(saved.get(i));
                }
            }
            assertThat(plan.facts().taken()).as(when).containsAll(expected);
            assertHonest(plan, expected.get(expected.size() - 1).sequence(), when);
        }
    }

    @Test
    void a_fact_whose_link_is_lost_is_taken_and_told_unproven() throws IOException, SQLException {
        byte[] bytes = whole.clone();
        pagesOf("event_chain").forEach(page -> noise(bytes, page, size, new Random(SEED)));
        RecordRescue.Plan plan = plan(bytes);
        assertThat(plan.facts().taken()).isEqualTo(saved);
        assertThat(plan.facts().unproven()).hasSize(FACTS);
    }

    @Test
    void a_page_that_lies_there_twice_gives_its_rows_once() throws IOException {
        int leaf = facts.get(100).iterator().next();
        byte[] bytes = Arrays.copyOf(whole, whole.length + size);
        System.arraycopy(whole, (leaf - 1) * size, bytes, whole.length, size);
        assertThat(plan(bytes).facts().taken()).isEqualTo(saved);
    }

    @Test
    void of_a_damaged_row_the_old_copy_is_taken_if_the_chain_proves_it() throws IOException {
        int number = 100;
        int leaf = facts.get(number).stream()
                .filter(page -> whole[(page - 1) * size] == PageRows.TABLE_LEAF)
                .findFirst()
                .orElseThrow();
        byte[] bytes = Arrays.copyOf(whole, whole.length + size);
        System.arraycopy(whole, (leaf - 1) * size, bytes, whole.length, size);
        // The word of its source stands in the row's own bytes.
        int at = indexOf(bytes, saved.get(number).id().toString(), (leaf - 1) * size);
        bytes[at + 40] ^= 1;
        assertThat(plan(bytes).facts().taken()).isEqualTo(saved);
        byte[] alone = Arrays.copyOf(bytes, whole.length);
        assertThat(plan(alone).facts().taken()).hasSize(FACTS - 1).doesNotContain(saved.get(number));
    }

    private static int indexOf(byte[] bytes, String text, int from) {
        byte[] wanted = text.getBytes(StandardCharsets.UTF_8);
        for (int i = from; i < bytes.length - wanted.length; i++) {
            if (Arrays.equals(bytes, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        throw new AssertionError("not there: " + text);
    }

    @Test
    void the_rows_of_a_page_that_lost_its_head_are_taken_where_the_chain_proves_them()
            throws IOException, SQLException {
        byte[] bytes = whole.clone();
        for (int page : pagesOf("event")) {
            Arrays.fill(bytes, (page - 1) * size, (page - 1) * size + 8, (byte) 0xee);
        }
        RecordRescue.Plan plan = plan(bytes);
        // Of rows that go on elsewhere the number of the next page was in those bytes too.
        assertThat(plan.facts().taken()).isSubsetOf(saved).hasSizeGreaterThan(FACTS * 3 / 4);
        assertThat(plan.facts().unproven()).isEmpty();
        assertHonest(plan, FACTS, "no page of facts has its head");
    }

    @Test
    void the_index_tells_the_ids_of_lost_facts() throws IOException {
        int leaf = facts.get(50).stream()
                .filter(page -> whole[(page - 1) * size] == PageRows.TABLE_LEAF)
                .findFirst()
                .orElseThrow();
        byte[] bytes = whole.clone();
        noise(bytes, leaf, size, new Random(SEED));
        Map<Long, String> ids = plan(bytes).facts().missingIds();
        assertThat(ids).containsEntry(51L, saved.get(50).id().toString());
        ids.forEach((number, id) ->
                assertThat(saved.get(Math.toIntExact(number) - 1).id()).hasToString(id));
    }
}
