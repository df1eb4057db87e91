package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.protocol.Protocol;
import strawbed.protocol.Protocols;
import strawbed.protocol.file.ProtocolFile;
import strawbed.testkit.MemoryJournal;
import strawbed.testkit.SpokenSentence;

/** The protocol's way from its file into the record. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FarmProtocolTest {
    private static final Protocol LATER_DIP = Protocol.of(Map.of("first_dip_minutes", "45"));

    @TempDir
    Path folder;

    private MemoryJournal journal;
    private Settings settings;
    private Path file;

    @BeforeEach
    void farm() {
        journal = new MemoryJournal(SpokenSentence.SPOKEN_AT);
        settings = new Settings(
                folder.resolve("data"),
                Optional.empty(),
                Clock.fixed(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE),
                SpokenSentence.ZONE);
        file = FarmProtocol.file(settings);
    }

    private List<String> starts() {
        return FarmProtocol.adopt(journal, settings);
    }

    private void writes(String text) throws IOException {
        Files.createDirectories(settings.data());
        Files.writeString(file, text);
    }

    private Protocol inForce() {
        return Protocols.of(journal.all()).latest();
    }

    @Test
    void the_first_start_writes_the_usual_file_and_adopts_it() {
        assertThat(starts()).isEmpty();
        assertThat(file).hasContent(ProtocolFile.text(Protocol.usual()));
        assertThat(journal.all()).singleElement().satisfies(recorded -> {
            assertThat(recorded.event())
                    .isEqualTo(new Event.ProtocolAdopted(Protocol.usual().settings()));
            assertThat(recorded.calf()).isNull();
            assertThat(recorded.occurredAt()).isEqualTo(SpokenSentence.SPOKEN_AT);
            assertThat(recorded.provenance()).isEqualTo(Provenance.of(Provenance.Source.COMMAND));
        });
    }

    @Test
    void a_farm_that_wrote_its_file_first_has_its_own_protocol_from_the_start() throws IOException {
        writes("[navel]\nfirst_dip_minutes = 45\n");
        assertThat(starts()).isEmpty();
        assertThat(journal.all()).hasSize(1);
        assertThat(inForce()).isEqualTo(LATER_DIP);
        assertThat(file).hasContent("[navel]\nfirst_dip_minutes = 45\n");
    }

    @Test
    void the_same_file_adopts_nothing_more_however_it_is_written() throws IOException {
        starts();
        starts();
        writes("[navel]\nfirst_dip_minutes = 30.0\n");
        assertThat(starts()).isEmpty();
        assertThat(journal.all()).hasSize(1);
    }

    @Test
    void a_changed_file_is_adopted_once() throws IOException {
        starts();
        writes(ProtocolFile.text(LATER_DIP));
        assertThat(starts()).isEmpty();
        assertThat(starts()).isEmpty();
        assertThat(journal.all()).hasSize(2);
        assertThat(inForce()).isEqualTo(LATER_DIP);
    }

    @Test
    void a_broken_file_keeps_the_last_good_protocol_and_tells_every_fault() throws IOException {
        writes(ProtocolFile.text(LATER_DIP));
        starts();
        String broken = "[navel]\nfirst_dip_minutes = 500\nrepeat_dip = \"perhaps\"\n";
        writes(broken);
        assertThat(starts())
                .satisfiesExactly(
                        head -> assertThat(head)
                                .isEqualTo(
                                        file + " has 2 faults. Protocol " + LATER_DIP.version() + " stays in force."),
                        first -> assertThat(first).startsWith("  line 2: first_dip_minutes is 500"),
                        second -> assertThat(second).startsWith("  line 3: repeat_dip is \"perhaps\""));
        assertThat(journal.all()).hasSize(1);
        assertThat(inForce()).isEqualTo(LATER_DIP);
        assertThat(file).hasContent(broken);
    }

    /** Else what is adopted after the file was mended would count for the calves before it. */
    @Test
    void a_file_that_was_broken_from_the_start_means_the_usual_protocol() throws IOException {
        writes("[navel]\nfirst_dip_minutes = 500\n");
        assertThat(starts())
                .first()
                .asString()
                .contains("has 1 fault. Protocol " + Protocol.usual().version() + ", the usual one, is in force.");
        assertThat(journal.all()).hasSize(1);
        writes(ProtocolFile.text(LATER_DIP));
        starts();
        Protocols protocols = Protocols.of(journal.all());
        assertThat(protocols.at(SpokenSentence.SPOKEN_AT.minusSeconds(60))).isEqualTo(Protocol.usual());
        assertThat(protocols.latest()).isEqualTo(LATER_DIP);
    }

    @Test
    void a_file_that_is_gone_is_written_again_as_the_record_knows_it() throws IOException {
        writes("[navel]\nfirst_dip_minutes = 45\n");
        starts();
        Files.delete(file);
        assertThat(starts()).singleElement().asString().contains("was gone", file.toString());
        assertThat(file).hasContent(ProtocolFile.text(LATER_DIP));
        assertThat(journal.all()).hasSize(1);
    }

    @Test
    void a_file_that_cannot_be_written_is_told_and_the_recorder_goes_on() throws IOException {
        Files.writeString(settings.data(), "a file where the folder should be");
        assertThat(starts())
                .singleElement()
                .asString()
                .contains("data", "Protocol " + Protocol.usual().version() + ", the usual one, is in force.");
        assertThat(inForce()).isEqualTo(Protocol.usual());
    }

    @Test
    void a_folder_in_the_files_place_is_told_and_left_alone() throws IOException {
        Files.createDirectories(file);
        assertThat(starts()).element(1).asString().contains("is a folder, but must be a file");
        assertThat(file).isDirectory();
        assertThat(journal.all()).hasSize(1);
    }

    @Test
    void a_record_that_takes_nothing_is_told_and_the_recorder_goes_on() throws IOException {
        starts();
        writes(ProtocolFile.text(LATER_DIP));
        journal.failNext("The disk is full. Make room.");
        assertThat(starts())
                .containsExactly("Protocol " + LATER_DIP.version()
                        + " could not be put into the record, so that protocol "
                        + Protocol.usual().version() + " stays in force: The disk is full. Make room.");
        assertThat(starts()).isEmpty();
        assertThat(inForce()).isEqualTo(LATER_DIP);
        assertThat(journal.all()).extracting(RecordedEvent::event).hasOnlyElementsOfType(Event.ProtocolAdopted.class);
    }
}
