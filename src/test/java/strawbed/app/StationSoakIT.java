package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.bench.BarnSound;
import strawbed.station.Sign;
import strawbed.testkit.ProcessMemory;
import strawbed.voice.FreeTtsVoice;

/** An open microphone among people who talk to each other; the bench of the station does the same for eight hours. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationSoakIT {
    private static final long MIB = 1 << 20;

    @TempDir
    Path data;

    @Test
    void talk_and_noise_save_no_fact_and_the_station_goes_on_listening_in_the_same_memory() {
        StringWriter err = new StringWriter();
        BarnSound barn = new BarnSound(3);
        long after;
        long end;
        try (ReplayedStation station =
                new ReplayedStation(data, SoakPart.BEGIN, SoakPart.NUMBERS, new PrintWriter(err, true))) {
            station.hears(barn.minute(0));
            after = ProcessMemory.heapAfterCollection();
            station.hears(barn.minute(1));
            station.hears(barn.minute(3));
            end = ProcessMemory.heapAfterCollection();
            assertThat(station.saved()).isZero();
            assertThat(station.open()).as("chatter was heard at all").isPositive();
            assertThat(station.sign()).isEqualTo(Sign.LISTENING);
        }
        assertThat(StationRecord.saidOrPressed(data, Clock.systemUTC()))
                .as("in the record itself")
                .isZero();
        assertThat((end - after) / MIB)
                .as("MiB more than after the first minute")
                .isLessThanOrEqualTo(30);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void what_is_said_to_it_is_asked_about_and_counted_as_saved_when_it_is_confirmed() {
        StringWriter err = new StringWriter();
        FreeTtsVoice person = new FreeTtsVoice();
        Sound hush = BarnSound.hush().slice(0, 3 * Sound.RATE);
        try (ReplayedStation station =
                new ReplayedStation(data, SoakPart.BEGIN, SoakPart.NUMBERS, new PrintWriter(err, true))) {
            station.hears(hush);
            station.hears(person.speak("calf three oh one, heifer"));
            station.hears(hush);
            assertThat(station.questions()).isEqualTo(1);
            assertThat(station.saved()).isZero();
            station.hears(person.speak("confirm entry"));
            station.hears(hush);
            assertThat(station.saved()).isEqualTo(1);
        }
        assertThat(StationRecord.saidOrPressed(data, Clock.systemUTC())).isEqualTo(1);
    }
}
