package strawbed.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The lines are what lpstat -p -a of CUPS 2.4.2 printed (tried on 2026-11-25). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CupsQueuesTest {
    @Test
    void paused_queues_and_those_that_take_no_jobs_are_told_from_others() {
        CupsQueues queues = CupsQueues.in(List.of(
                "printer CARDS disabled since Wed Nov 25 20:48:56 2026 -",
                "\tno paper",
                "printer OTHER is idle.  enabled since Wed Nov 25 20:48:56 2026",
                "\tRejecting Jobs",
                "printer OFFICE disabled since Wed Nov 25 20:48:56 2026 -",
                "\treason unknown",
                "CARDS accepting requests since Wed Nov 25 20:48:56 2026",
                "OTHER not accepting requests since Wed Nov 25 20:48:56 2026 -",
                "\tRejecting Jobs",
                "OFFICE accepting requests since Wed Nov 25 20:48:56 2026"));
        assertThat(queues.paused())
                .containsOnlyKeys("CARDS", "OFFICE")
                .containsEntry("CARDS", "no paper")
                .containsEntry("OFFICE", "");
        assertThat(queues.closed()).containsExactly("OTHER");
    }

    @Test
    void no_queues_and_other_words_are_nothing_against_any() {
        assertThat(CupsQueues.in(List.of()).paused()).isEmpty();
        assertThat(CupsQueues.in(List.of("lpstat: No destinations added.")).paused())
                .isEmpty();
        assertThat(CupsQueues.in(List.of("lpstat: Bad file descriptor")).closed())
                .isEmpty();
    }
}
