package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

/** A record of many pages to be damaged, and what SQLite itself says of which row is on which page. */
abstract class DamagedRecord extends RecordInFolder {
    static final int FACTS = 320;
    static final int STATEMENTS = 40;

    private static final Pattern NUMBER = Pattern.compile("^Number (-?\\d+),");

    List<RecordedEvent> saved = List.of();
    List<OpenStatement> kept = List.of();

    /** Facts of every kind; each ninth with so many words that they fill further pages. */
    static List<NewEvent> manyFacts(int count) {
        Random random = new Random(SEED);
        List<NewEvent> facts = new ArrayList<>();
        for (NewEvent fact : randomFacts(count)) {
            int length = facts.size() % 9 == 4 ? 500 + random.nextInt(3000) : random.nextInt(20);
            List<String> words = random.ints(length, 0, 5000)
                    .mapToObj(number -> "word" + number)
                    .toList();
            facts.add(new NewEvent(
                    fact.calf(),
                    fact.event(),
                    fact.occurredAt(),
                    new Provenance(
                            Provenance.Source.VOICE,
                            words,
                            "understood",
                            "g1",
                            "m1",
                            facts.size() + ".wav",
                            facts.size() % 3 == 0 ? "Ines" : null)));
        }
        return facts;
    }

    void saveManyFacts() {
        List<RecordedEvent> all = new ArrayList<>();
        List<OpenStatement> statements = new ArrayList<>();
        try (SqliteEventJournal journal = open()) {
            List<NewEvent> facts = manyFacts(FACTS);
            for (int i = 0; i < FACTS; i += 20) {
                all.addAll(journal.append(facts.subList(i, i + 20)));
            }
            for (int i = 0; i < STATEMENTS; i++) {
                statements.add(journal.keep(new NewOpenStatement(
                        NOW.plusSeconds(i),
                        Duration.ofMillis(1200 + i),
                        "unsure",
                        Collections.nCopies(i == 7 ? 2000 : 30, "word"),
                        i % 3 == 0 ? null : "a reading",
                        i + ".wav")));
            }
            for (int i = 0; i < STATEMENTS; i += 4) {
                journal.settle(statements.get(i).id(), "dropped");
            }
        }
        saved = List.copyOf(all);
        kept = List.copyOf(statements);
    }

    /** The pages on which each row of a table lies, its further pages too; by place in the order of the rows. */
    List<Set<Integer>> pagesOfRows(String table) throws SQLException {
        List<Set<Integer>> rows = new ArrayList<>();
        List<Map.Entry<String, Integer>> overflow = new ArrayList<>();
        Map<String, Set<Integer>> byPath = new HashMap<>();
        try (Connection raw = raw();
                Statement statement = raw.createStatement();
                ResultSet pages =
                        statement.executeQuery("SELECT path, pageno, pagetype, ncell FROM dbstat WHERE name = '" + table
                                + "' ORDER BY path")) {
            while (pages.next()) {
                String path = pages.getString("path");
                if (pages.getString("pagetype").equals("leaf")) {
                    for (int cell = 0; cell < pages.getInt("ncell"); cell++) {
                        Set<Integer> row = new HashSet<>(Set.of(pages.getInt("pageno")));
                        byPath.put("%s%03x".formatted(path, cell), row);
                        rows.add(row);
                    }
                } else if (pages.getString("pagetype").equals("overflow")) {
                    // Such as /01c/003+000000: the page of the third cell of the leaf /01c/.
                    overflow.add(Map.entry(path.substring(0, path.indexOf('+')), pages.getInt("pageno")));
                }
            }
        }
        overflow.forEach(
                page -> byPath.getOrDefault(page.getKey(), new HashSet<>()).add(page.getValue()));
        assertThat(byPath.keySet())
                .containsAll(overflow.stream().map(Map.Entry::getKey).toList());
        overflow.clear();
        return rows;
    }

    /** All pages of a table's tree. */
    Set<Integer> pagesOf(String table) throws SQLException {
        Set<Integer> all = new TreeSet<>();
        try (Connection raw = raw();
                Statement statement = raw.createStatement();
                ResultSet pages = statement.executeQuery("SELECT pageno FROM dbstat WHERE name = '" + table + "'")) {
            while (pages.next()) {
                all.add(pages.getInt(1));
            }
        }
        return all;
    }

    int pageSize() throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA page_size")) {
            return row.getInt(1);
        }
    }

    /** A file with these bytes, as a damaged record elsewhere. */
    Path damaged(byte[] bytes) throws IOException {
        Path file = temporary.resolve("damaged.db");
        Files.deleteIfExists(file.resolveSibling("damaged.db-wal"));
        return Files.write(file, bytes);
    }

    static void noise(byte[] bytes, long page, int size, Random random) {
        byte[] noise = new byte[size];
        random.nextBytes(noise);
        System.arraycopy(noise, 0, bytes, (int) ((page - 1) * size), size);
    }

    /** No wrong fact, no fact twice, and each that is not there is told of, up to this number. */
    void assertHonest(RecordRescue.Plan plan, long upTo, String when) {
        List<RecordedEvent> wrong = plan.facts().taken().stream()
                .filter(fact -> !saved.contains(fact))
                .toList();
        assertThat(wrong)
                .as(when + "; unproven: " + Places.text(Places.of(plan.facts().unproven())))
                .isEmpty();
        assertThat(plan.facts().taken()).as(when).doesNotHaveDuplicates();
        Set<Long> told = numbersLeftOut(plan);
        Set<Long> taken =
                plan.facts().taken().stream().map(RecordedEvent::sequence).collect(Collectors.toSet());
        for (long number = 1; number <= upTo; number++) {
            long each = number;
            boolean isMissing = plan.facts().missing().stream().anyMatch(run -> run.holds(each));
            assertThat(taken.contains(number) || told.contains(number) || isMissing)
                    .as(when + ": number " + number + " is rescued or told of")
                    .isTrue();
            assertThat(taken.contains(number) && isMissing)
                    .as(when + ": number " + number + " is not both")
                    .isFalse();
        }
    }

    static Set<Long> numbersLeftOut(RecordRescue.Plan plan) {
        Set<Long> numbers = new TreeSet<>();
        for (LeftOut row : plan.facts().leftOut()) {
            Matcher number = NUMBER.matcher(row.what());
            assertThat(number.find()).as(row.what()).isTrue();
            numbers.add(Long.parseLong(number.group(1)));
        }
        return numbers;
    }
}
