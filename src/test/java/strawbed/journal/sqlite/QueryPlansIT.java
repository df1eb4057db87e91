package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.SqlLogger;
import org.jdbi.v3.core.statement.SqlStatements;
import org.jdbi.v3.core.statement.StatementContext;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.event.CalfId;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.RecordParts.Naming;

/**
 * No question about a few calves reads the whole record: SQLite tells of each query how it would answer it. An index that
 * is not used would be noticed only on a farm with years of facts.
 */
class QueryPlansIT {
    private static final Instant NOW = Instant.parse("2026-03-03T05:30:00Z");
    private static final EventTable TABLE = new EventTable(ZoneId.of("America/Chicago"), () -> new UUID(0, 0));
    private static final EventParts PARTS = new EventParts(TABLE);
    private static final StatementTable STATEMENTS = new StatementTable(() -> new UUID(0, 0));

    @TempDir
    Path folder;

    static Stream<Arguments> questions() {
        List<CalfId> calf = List.of(new CalfId(new UUID(1, 2)));
        return Stream.of(
                question("calves recorded", handle -> PARTS.calvesRecorded(handle, NOW, NOW)),
                question("facts since a day", handle -> PARTS.since(handle, NOW)),
                question("calves by number", naming(Naming.NUMBER)),
                question("calves by dam", naming(Naming.DAM)),
                question("calves by twin", naming(Naming.TWIN)),
                question("calves by batch", naming(Naming.BATCH)),
                question("facts of calves", handle -> PARTS.ofCalves(handle, calf)),
                question("facts of the barn", handle -> PARTS.ofBarn(handle, NOW)),
                question("protocols", PARTS::protocols),
                question("air", handle -> PARTS.air(handle, NOW, NOW)),
                question("stored colostrum", handle -> PARTS.stored(handle, List.of("7"))),
                question("named sounds", handle -> STATEMENTS.named(handle, List.of("a.wav"))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("questions")
    void a_question_reads_no_more_than_it_must(String what, Consumer<Handle> question) throws Exception {
        Clock clock = Clock.fixed(NOW, ZoneId.of("America/Chicago"));
        try (Connection connection = RecordFile.in(folder).connect(clock, new TimeOrderedIds(clock, new Random(7)));
                Handle handle = Jdbi.open(connection)) {
            List<String> asked = new ArrayList<>();
            handle.getConfig(SqlStatements.class).setSqlLogger(new SqlLogger() {
                @Override
                public void logAfterExecution(StatementContext context) {
                    asked.add(context.getParsedSql().getSql());
                }
            });
            question.accept(handle);
            assertThat(asked).as(what).isNotEmpty();
            for (String sql : asked) {
                assertThat(plan(connection, sql))
                        .as("%s: %s", what, sql)
                        .anyMatch(step -> step.matches(".* USING (COVERING )?INDEX event_.*"))
                        .allMatch(QueryPlansIT::isFrugal);
            }
        }
    }

    private static List<String> plan(Connection connection, String sql) throws SQLException {
        try (PreparedStatement explain = connection.prepareStatement("EXPLAIN QUERY PLAN " + sql)) {
            for (int i = 1; i <= explain.getParameterMetaData().getParameterCount(); i++) {
                explain.setString(i, "");
            }
            List<String> steps = new ArrayList<>();
            try (ResultSet plan = explain.executeQuery()) {
                while (plan.next()) {
                    steps.add(plan.getString("detail"));
                }
            }
            return steps;
        }
    }

    /** What was asked for and what was found may be gone through, and the facts of the barn, which are few. */
    private static boolean isFrugal(String step) {
        return !step.startsWith("SCAN ")
                || step.matches("SCAN (wanted|looked|json_each|withdrawn|CONSTANT)\\b.*")
                || step.matches("SCAN event USING .*INDEX event_of_barn.*");
    }

    private static Consumer<Handle> naming(Naming how) {
        return handle -> PARTS.calvesNaming(handle, how, Map.of("17", NOW));
    }

    private static Arguments question(String what, Consumer<Handle> question) {
        return Arguments.of(what, question);
    }
}
