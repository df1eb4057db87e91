package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CribCommandIT {
    @TempDir
    Path data;

    private CommandRun crib(String... more) {
        return CommandRun.of(Stream.concat(Stream.of("crib", "--data", data.toString()), Stream.of(more))
                .toArray(String[]::new));
    }

    private void farmGrammar(String file, String before, String after) throws IOException {
        Path own = Files.createDirectories(data.resolve("grammar"));
        try (Stream<Path> files = Files.list(Path.of("grammar"))) {
            files.forEach(one -> copy(one, own.resolve(one.getFileName().toString())));
        }
        String text = Files.readString(own.resolve(file));
        assertThat(text).contains(before);
        Files.writeString(own.resolve(file), text.replace(before, after));
    }

    private static void copy(Path from, Path to) {
        try {
            Files.copy(from, to);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void to_be_printed_it_needs_a_chosen_printer_and_is_written_all_the_same() {
        CommandRun run = crib("--print");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("No printer is chosen for sheets", "strawbed printer use NAME --for sheets");
        assertThat(data.resolve("crib-sheet-letter.pdf")).exists();
        assertThat(data.resolve("print-queue")).doesNotExist();
    }

    @Test
    void the_programs_grammar_fits_one_page_of_either_paper() throws IOException {
        for (String paper : List.of("letter", "a4")) {
            CommandRun run = crib("--paper", paper);
            Path file = data.resolve("crib-sheet-" + paper + ".pdf");
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out().strip()).isEqualTo(file.toString());
            assertThat(text(file)).contains("What you can say", "Steer the recorder", "wake up recorder");
        }
    }

    @Test
    void the_same_grammar_gives_the_same_bytes() throws IOException {
        Path first = data.resolve("first.pdf");
        Path second = data.resolve("second.pdf");
        assertThat(crib("-o", first.toString()).code()).isZero();
        assertThat(crib("-o", second.toString()).code()).isZero();
        assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
    }

    @Test
    void a_product_that_the_farm_adds_is_printed() throws IOException {
        farmGrammar("navel.abnf", "$agent = iodine {iodine}", "$agent = iodine {iodine} | red dip {iodine}");
        assertThat(crib().code()).isZero();
        assertThat(text(data.resolve("crib-sheet-letter.pdf"))).contains("red dip");
    }

    @Test
    void a_grammar_that_its_examples_contradict_gives_a_sentence_and_no_sheet() throws IOException {
        farmGrammar("controls.abnf", "/4/ confirm entry {", "/4/ confirm that {");
        CommandRun run = crib();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("controls.abnf, line ", "confirm entry").doesNotContain("Exception", "\tat ");
        assertThat(data.resolve("crib-sheet-letter.pdf")).doesNotExist();
    }

    @Test
    void a_broken_grammar_and_an_unknown_paper_give_a_sentence() throws IOException {
        assertThat(crib("--paper", "a3").code()).isEqualTo(2);
        assertThat(crib("--paper", "a3").err()).contains("a3", "letter", "a4");
        farmGrammar("navel.abnf", "$agent = iodine", "$agent = (iodine");
        CommandRun run = crib();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("navel.abnf, line ").doesNotContain("\tat ");
    }
}
