package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The recorder's sudden end; the long run of this is the command for faults in DEVELOPERS.md. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class KilledRecorderIT {
    private static final long SEED = 20261125;
    private static final int KILLS = 15;

    @TempDir
    Path folder;

    @Test
    void what_was_promised_before_a_kill_is_kept() throws IOException, InterruptedException {
        KilledNights.Tally tally = new KilledNights(folder, SEED).run(KILLS);
        assertThat(tally.isGood()).as(tally.toString()).isTrue();
        assertThat(tally.kills).isEqualTo(KILLS);
        assertThat(tally.factsPromised).as(tally.toString()).isPositive();
        assertThat(tally.soundsPromised).as(tally.toString()).isPositive();
    }
}
