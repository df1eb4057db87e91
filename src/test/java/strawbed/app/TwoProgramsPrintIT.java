package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.print.PrintQueue;
import strawbed.print.PrintUse;

/** A recorder and a command that queue pages at the same time. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 1, unit = TimeUnit.MINUTES)
class TwoProgramsPrintIT {
    private static final int PAGES = 40;

    @TempDir
    Path folder;

    /** One of the programs. */
    static final class Filler {
        private Filler() {}

        public static void main(String[] args) {
            PrintQueue queue = new PrintQueue(Path.of(args[0]), Clock.systemUTC());
            for (int i = 0; i < PAGES; i++) {
                String page = args[1] + " " + i;
                queue.add(page.getBytes(StandardCharsets.UTF_8), page, PrintUse.CARDS, "CARDS");
            }
        }
    }

    @Test
    void lose_no_page_of_each_other() throws IOException, InterruptedException {
        List<Process> programs = new ArrayList<>();
        for (String name : List.of("recorder", "command")) {
            programs.add(new ProcessBuilder(SmallDisk.java(Filler.class, folder.toString(), name))
                    .redirectErrorStream(true)
                    .start());
        }
        for (Process program : programs) {
            String printed = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(program.waitFor()).as(printed).isZero();
        }
        PrintQueue queue = new PrintQueue(folder, Clock.systemUTC());
        assertThat(queue.contents().damaged()).isEmpty();
        assertThat(queue.contents().jobs())
                .hasSize(2 * PAGES)
                .allSatisfy(job -> assertThat(queue.document(job.number())).hasContent(job.what()));
        assertThat(queue.contents().jobs().stream().map(job -> job.what()).distinct())
                .hasSize(2 * PAGES);
    }
}
