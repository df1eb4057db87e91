package strawbed.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 1, unit = TimeUnit.MINUTES)
class PorterTest {
    private static final Duration SHORT = Duration.ofMillis(50);
    private static final Duration LONG = Duration.ofSeconds(30);
    private static final String REFUSAL = "The printer CARDS is out of paper. Fill it.";

    @TempDir
    Path folder;

    private final HandSet clock = new HandSet();
    private final FakePrinters printers = new FakePrinters();

    /** A clock that stands still until it is set. */
    private static final class HandSet extends Clock {
        private Instant now = Instant.parse("2026-03-03T05:30:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        void pass(Duration time) {
            now = now.plus(time);
        }
    }

    private PrintQueue queue() {
        return new PrintQueue(folder, clock);
    }

    private Porter porter(Duration patience) {
        return new Porter(queue(), printers, clock, patience);
    }

    private PrintJob add(String page) {
        return queue().add(page.getBytes(StandardCharsets.UTF_8), "a card", PrintUse.CARDS, "CARDS");
    }

    private static String sentence(PrintJob job) {
        return Objects.requireNonNull(job.fault()).sentence();
    }

    private PrintJob job(int number) {
        return queue().contents().jobs().stream()
                .filter(job -> job.number() == number)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_page_is_handed_over_once_and_noted() {
        PrintJob job = add("page");
        Porter porter = porter(LONG);
        assertThat(porter.carry(job).isHandedOver()).isTrue();
        assertThat(porter.carryAll()).isEmpty();
        assertThat(porter(LONG).carryAll()).isEmpty();
        assertThat(printers.taken()).containsExactly("CARDS Strawbed 1 page");
        assertThat(job(1).state()).isEqualTo(JobState.HANDED_OVER);
    }

    @Test
    void what_was_refused_waits_with_the_reason_and_goes_when_the_printer_is_mended() {
        printers.refuse(REFUSAL);
        PrintJob job = add("page");
        Porter.Tried tried = porter(LONG).carry(job);
        assertThat(tried.isHandedOver()).isFalse();
        assertThat(sentence(job(1))).isEqualTo(REFUSAL);
        assertThat(job(1).state()).isEqualTo(JobState.WAITING);
        printers.refuse(null);
        assertThat(porter(LONG).carryAll()).singleElement().satisfies(one -> {
            assertThat(sentence(one.before())).isEqualTo(REFUSAL);
            assertThat(one.after().fault()).isNull();
            assertThat(one.isHandedOver()).isTrue();
        });
    }

    @Test
    void the_wait_between_tries_grows_up_to_five_minutes() {
        printers.refuse(REFUSAL);
        add("page");
        Porter porter = porter(LONG);
        List<Long> waits = new ArrayList<>();
        Instant last = clock.instant();
        while (waits.size() < 8) {
            if (!porter.carryDue().isEmpty()) {
                waits.add(Duration.between(last, clock.instant()).toSeconds());
                last = clock.instant();
            }
            clock.pass(Duration.ofSeconds(5));
        }
        assertThat(waits).containsExactly(0L, 15L, 30L, 60L, 120L, 240L, 300L, 300L);
    }

    @Test
    void a_clock_set_back_holds_no_page() {
        printers.refuse(REFUSAL);
        add("page");
        Porter porter = porter(LONG);
        porter.carryDue();
        clock.pass(Duration.ofDays(-3));
        assertThat(porter.carryDue()).hasSize(1);
    }

    @Test
    void a_printer_that_does_not_answer_holds_nobody_and_gets_the_page_once() throws InterruptedException {
        printers.fallSilent();
        PrintJob first = add("one");
        add("two");
        Porter porter = porter(SHORT);
        assertThat(sentence(porter.carry(first).after())).contains("CARDS does not answer");
        assertThat(porter.carryAll()).hasSize(2).noneMatch(Porter.Tried::isHandedOver);
        printers.wakeUp();
        while (job(1).state() != JobState.HANDED_OVER || job(2).state() != JobState.HANDED_OVER) {
            porter.carryAll();
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertThat(printers.taken()).containsExactly("CARDS Strawbed 1 one", "CARDS Strawbed 2 two");
    }

    @Test
    void while_one_hangs_another_program_does_not_begin_it_anew() {
        printers.fallSilent();
        PrintJob job = add("page");
        Porter hangs = porter(SHORT);
        hangs.carry(job);
        assertThat(sentence(porter(LONG).carry(job).after())).contains("Another Strawbed");
        printers.wakeUp();
        hangs.close();
    }

    @Test
    void a_print_service_that_does_not_answer_is_told() {
        printers.fallSilent();
        assertThatThrownBy(() -> porter(SHORT).printers())
                .isInstanceOf(PrintException.class)
                .hasMessageContaining("does not answer");
        printers.wakeUp();
        assertThat(porter(LONG).printers()).extracting(Printers.Known::name).contains("CARDS");
    }

    @Test
    void a_page_whose_file_is_gone_waits_and_says_so() throws IOException {
        PrintJob job = add("page");
        Files.delete(queue().document(1));
        assertThat(sentence(porter(LONG).carry(job).after())).contains("is gone", "drop 1");
        assertThat(printers.taken()).isEmpty();
    }

    @Test
    void a_page_given_up_meanwhile_is_not_handed_over() {
        PrintJob job = add("page");
        queue().drop(1);
        assertThat(porter(LONG).carry(job).isHandedOver()).isFalse();
        assertThat(printers.taken()).isEmpty();
    }

    @Test
    void what_cannot_be_noted_as_handed_over_is_not_handed_over_again() throws IOException {
        PrintJob job = add("page");
        Porter porter = porter(LONG);
        // A folder that is not empty cannot be replaced by a file, nor removed, whoever runs the tests.
        Path inTheWay = Files.createDirectories(folder.resolve("1.job.part").resolve("full"));
        assertThat(porter.carry(job).isHandedOver()).isTrue();
        assertThat(job(1).state()).isEqualTo(JobState.WAITING);
        assertThat(porter.carryAll()).hasSize(1);
        assertThat(printers.taken()).hasSize(1);
        Files.delete(inTheWay);
        porter.carryAll();
        assertThat(job(1).state()).isEqualTo(JobState.HANDED_OVER);
        assertThat(printers.taken()).hasSize(1);
    }

    @Test
    void a_kill_after_handing_over_and_before_the_note_gives_the_page_twice_rather_than_never() throws IOException {
        PrintJob job = add("page");
        Path note = folder.resolve("1.job");
        Path before = Files.copy(note, folder.resolve("kept"), StandardCopyOption.REPLACE_EXISTING);
        porter(LONG).carry(job);
        Files.copy(before, note, StandardCopyOption.REPLACE_EXISTING);
        porter(LONG).carryAll();
        assertThat(printers.taken()).hasSize(2);
    }
}
