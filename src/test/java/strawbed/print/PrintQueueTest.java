package strawbed.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PrintQueueTest {
    private static final Instant NOW = Instant.parse("2026-03-03T05:30:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path data;

    private PrintQueue queue() {
        return new PrintQueue(data.resolve("print-queue"), CLOCK);
    }

    private PrintJob add(String page) {
        return queue().add(page.getBytes(StandardCharsets.UTF_8), "the card of calf 312", PrintUse.CARDS, "CARDS");
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(data.resolve("print-queue"))) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void what_is_put_in_is_there_for_the_next_program() throws IOException {
        add("page");
        PrintQueue next = queue();
        assertThat(next.contents().waiting())
                .containsExactly(new PrintJob(
                        1, "the card of calf 312", PrintUse.CARDS, "CARDS", NOW, JobState.WAITING, 0, null, null));
        assertThat(next.document(1)).hasContent("page");
        assertThat(files()).containsExactly("1.job", "1.pdf", "queue.lock");
    }

    @Test
    void an_empty_queue_makes_no_folder() {
        assertThat(queue().contents().jobs()).isEmpty();
        assertThat(data).isEmptyDirectory();
    }

    @Test
    void only_the_owner_may_read_it() throws IOException {
        assumeThat(data.getFileSystem().supportedFileAttributeViews())
                .as("skipped: this disk knows no rights")
                .contains("posix");
        add("page");
        assertThat(Files.getPosixFilePermissions(data.resolve("print-queue")))
                .isEqualTo(PosixFilePermissions.fromString("rwx------"));
        for (String name : files()) {
            assertThat(Files.getPosixFilePermissions(data.resolve("print-queue").resolve(name)))
                    .as(name)
                    .isEqualTo(PosixFilePermissions.fromString("rw-------"));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"plain", "two\nlines = \\ # !", "Łucja ß 牛", "' '", "trailing blank |"})
    void every_word_comes_back_as_it_was(String words) {
        PrintFault fault = new PrintFault(PrintFault.Kind.PAUSED, words, words);
        PrintJob job = new PrintJob(7, words, PrintUse.SHEETS, words, NOW, JobState.WAITING, 3, NOW, fault);
        assertThat(JobNote.of(7, JobNote.text(job))).isEqualTo(job);
        assertThat(JobNote.text(job)).isEqualTo(JobNote.text(job)).doesNotContain("#");
    }

    @Test
    void what_was_copied_and_not_noted_when_the_program_was_killed_disturbs_nothing() throws IOException {
        add("one");
        Files.writeString(data.resolve("print-queue/2.pdf"), "copied, not noted");
        Files.writeString(data.resolve("print-queue/3.pdf.part"), "half");
        assertThat(queue().contents().jobs()).hasSize(1);
        PrintJob next = add("two");
        assertThat(next.number()).isEqualTo(2);
        assertThat(queue().document(2)).hasContent("two");
        assertThat(files()).containsExactly("1.job", "1.pdf", "2.job", "2.pdf", "queue.lock");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|no line \"format\"",
                "format=2\\nnumber=1|its format is \"2\"",
                "format=1\\nnumber=4|number 4",
                "format=1\\nnumber=1\\nwhat=x\\nfor=CARDS\\nprinter=P\\nasked=today|\"today\" is no time",
                "format=1\\nnumber=1\\nwhat=x\\nfor=WALLS|WALLS",
                "what=\\u00zz|Malformed"
            })
    void a_damaged_note_is_told_with_its_page_and_stops_no_other(String text, String part) throws IOException {
        add("one");
        add("two");
        Files.writeString(data.resolve("print-queue/1.job"), text.replace("\\n", "\n"));
        PrintQueue.Contents contents = queue().contents();
        assertThat(contents.jobs()).extracting(PrintJob::number).containsExactly(2);
        assertThat(contents.damaged()).singleElement().asString().contains(part, "1.pdf", "drop 1");
        assertThatThrownBy(() -> queue().drop(1)).isInstanceOf(PrintException.class);
        assertThat(add("three").number()).isEqualTo(3);
        assertThat(queue().removeDamaged(2)).as("a sound one").isFalse();
        assertThat(queue().removeDamaged(1)).isTrue();
        assertThat(files()).containsExactly("2.job", "2.pdf", "3.job", "3.pdf", "queue.lock");
    }

    @Test
    void a_note_of_bytes_that_are_no_text_is_damaged() throws IOException {
        add("one");
        Files.write(data.resolve("print-queue/1.job"), new byte[] {(byte) 0xC3, (byte) 0x28, 0});
        assertThat(queue().contents().damaged()).hasSize(1);
    }

    @Test
    void a_note_of_an_earlier_version_has_its_fault_in_a_sentence_alone() {
        String note = JobNote.text(new PrintJob(
                7,
                "page",
                PrintUse.CARDS,
                "CARDS",
                NOW,
                JobState.WAITING,
                3,
                NOW,
                new PrintFault(PrintFault.Kind.PAUSED, "no paper", "It is paused.")));
        assertThat(note).contains("fault-kind=PAUSED");
        String earlier = note.lines().filter(line -> !line.startsWith("fault-")).collect(Collectors.joining("\n"));
        PrintFault other = PrintFault.of(PrintFault.Kind.OTHER, "It is paused.");
        assertThat(JobNote.of(7, earlier).fault()).isEqualTo(other);
        assertThat(JobNote.of(7, earlier + "\nfault-kind=ON_FIRE\n").fault()).isEqualTo(other);
    }

    @Test
    void what_was_handed_over_meanwhile_is_not_given_up() {
        add("one");
        assertThat(queue().changed(1, job -> job.handedOver(NOW))).isPresent();
        assertThat(queue().drop(1))
                .hasValueSatisfying(job -> assertThat(job.state()).isEqualTo(JobState.HANDED_OVER));
    }

    @Test
    void a_page_given_up_can_be_asked_for_again() {
        add("one");
        assertThat(queue().drop(1))
                .hasValueSatisfying(job -> assertThat(job.state()).isEqualTo(JobState.DROPPED));
        assertThat(queue().contents().waiting()).isEmpty();
        assertThat(queue().again(1, "OFFICE"))
                .hasValueSatisfying(job -> assertThat(job.printer()).isEqualTo("OFFICE"));
        assertThat(queue().contents().waiting()).hasSize(1);
        assertThat(queue().drop(9)).isEmpty();
        assertThat(queue().again(9, "OFFICE")).isEmpty();
    }

    @Test
    void the_newest_twenty_that_wait_no_more_are_kept_and_all_that_wait() throws IOException {
        add("waits for ever");
        for (int i = 0; i < PrintQueue.KEPT + 5; i++) {
            int number = add("page").number();
            queue().changed(number, job -> job.handedOver(NOW));
        }
        assertThat(queue().contents().jobs()).hasSize(PrintQueue.KEPT + 1);
        assertThat(queue().contents().jobs().get(0).number()).isEqualTo(1);
        assertThat(queue().contents().jobs().get(1).number()).isEqualTo(7);
        assertThat(files()).hasSize(2 * (PrintQueue.KEPT + 1) + 1);
    }

    @Test
    void what_waits_for_a_use_goes_to_its_new_printer() {
        add("card");
        queue().add(new byte[] {1}, "the handover sheet", PrintUse.SHEETS, "OLD");
        queue().drop(add("dropped").number());
        assertThat(queue().move(PrintUse.CARDS, "NEW")).isEqualTo(1);
        assertThat(queue().contents().jobs()).extracting(PrintJob::printer).containsExactly("NEW", "OLD", "CARDS");
    }

    @Test
    void many_at_once_get_a_number_each() throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<PrintJob>> all = new ArrayList<>();
            for (int i = 0; i < 24; i++) {
                String page = "page " + i;
                all.add(threads.submit(() -> add(page)));
            }
            Set<Integer> numbers = new TreeSet<>();
            for (Future<PrintJob> one : all) {
                numbers.add(one.get().number());
            }
            assertThat(numbers).hasSize(24);
        } finally {
            threads.shutdown();
        }
        assertThat(queue().contents().jobs()).hasSize(24);
    }

    @Test
    void a_folder_that_is_a_file_is_told() throws IOException {
        Files.writeString(data.resolve("print-queue"), "");
        assertThatThrownBy(() -> add("page"))
                .isInstanceOf(PrintException.class)
                .hasMessageContaining("print-queue")
                .hasMessageEndingWith(".");
    }
}
