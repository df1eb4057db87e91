package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.print.PrintUse;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationEditTest {
    @TempDir
    Path data;

    @Test
    void other_lines_and_comments_stay_as_people_wrote_them() {
        String before = "# ours = printer.cards\r\n\r\nbackups.kept=30\r\n  printer.cards : OLD\r\n! end";
        assertThat(StationEdit.changed(before, "printer.cards", "NEW"))
                .isEqualTo("# ours = printer.cards\r\n\r\nbackups.kept=30\r\nprinter.cards = NEW\r\n! end");
        assertThat(StationEdit.changed("backups.kept=30", "printer.cards", "NEW"))
                .isEqualTo("backups.kept=30\nprinter.cards = NEW\n");
        assertThat(StationEdit.changed("", "printer.cards", "NEW")).isEqualTo("printer.cards = NEW\n");
    }

    @Test
    void a_line_on_several_lines_is_one_and_a_comment_is_none() {
        assertThat(StationEdit.changed("printer.cards = A\\\n  B\nbackups.kept = 3\n", "printer.cards", "NEW"))
                .isEqualTo("printer.cards = NEW\nbackups.kept = 3\n");
        assertThat(StationEdit.changed("x = 1\\\nprinter.cards = A\n", "printer.cards", "NEW"))
                .isEqualTo("x = 1\\\nprinter.cards = A\nprinter.cards = NEW\n");
        assertThat(StationEdit.changed("# C:\\\nprinter.cards = A\n", "printer.cards", "NEW"))
                .isEqualTo("# C:\\\nprinter.cards = NEW\n");
        assertThat(StationEdit.changed("printer.cards\nprinter.cards=B\nprinter.cards-old=1\n", "printer.cards", "N"))
                .isEqualTo("printer.cards = N\nprinter.cards-old=1\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"CARDS", "\\\\server\\label printer", "Ł = # ! : x", "C:\\"})
    void every_name_is_read_back(String name) throws IOException {
        Properties read = new Properties();
        read.load(new StringReader(StationEdit.changed("a = 1\n", "printer.sheets", name)));
        assertThat(read).containsEntry("printer.sheets", name).containsEntry("a", "1");
    }

    @Test
    void the_printer_is_read_from_the_file() throws IOException {
        StationEdit.set(data, StationFile.printerLine(PrintUse.CARDS), "CARDS");
        StationEdit.set(data, StationFile.printerLine(PrintUse.SHEETS), "OFFICE");
        StationEdit.set(data, StationFile.printerLine(PrintUse.CARDS), "LABELS");
        assertThat(StationFile.in(data).printer(PrintUse.CARDS)).contains("LABELS");
        assertThat(StationFile.in(data).printer(PrintUse.SHEETS)).contains("OFFICE");
        assertThat(Files.readAllLines(data.resolve("station.properties"))).hasSize(2);
    }

    @Test
    void a_broken_file_is_not_written_over() throws IOException {
        Path file = Files.writeString(data.resolve("station.properties"), "backups.kept = many\n");
        assertThatThrownBy(() -> StationEdit.set(data, "printer.cards", "CARDS"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("backups.kept");
        assertThat(file).hasContent("backups.kept = many\n");
    }
}
