package strawbed.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.event.RecordedEvent;

/** What is measured of the due list, warm and on one core. {@link DueSpeed} runs it and writes the figures down. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:ActiveProcessorCount=1", "-Xmx4g"})
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class DueBenchmark {
    private static final long SEED = 2026;

    @Param({"100", "1000", "2000", "10000", "100000"})
    int calves;

    private List<RecordedEvent> events = List.of();
    private List<RecordedEvent> statement = List.of();
    private Herd herd = Herd.of(List.of());

    /** Makes the record. */
    @Setup
    public void record() {
        events = BusyNight.of(calves, SEED);
        statement = BusyNight.statement(events);
        herd = Herd.of(events);
    }

    /** The open items of all calves. */
    @Benchmark
    public List<DueItem> dueList() {
        return DueList.open(herd, BusyNight.NOW);
    }

    /** The herd from the whole record, as at the start of the program. */
    @Benchmark
    public Herd herdOfRecord() {
        return Herd.of(events);
    }

    /** The herd with one statement of three facts, as after each "yes". */
    @Benchmark
    public Herd herdPlusStatement() {
        return herd.plus(statement);
    }
}
