package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.print.PrintUse;
import strawbed.text.Messages;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TestPagesTest {
    private static final Messages MESSAGES = new Messages(Locale.US);

    /** In points of 1/72 inch; A4 and A6 are 210 by 297 and 148 by 105 mm in ISO 216. */
    @ParameterizedTest
    @CsvSource({
        "4x6, CARDS, 432, 288",
        "A6, CARDS, 419.53, 297.64",
        "letter, SHEETS, 612, 792",
        "a4, SHEETS, 595.28, 841.89"
    })
    void a_test_page_is_made_for_each_paper(String paper, PrintUse use, float width, float height) throws IOException {
        assertThat(TestPages.use(paper)).isEqualTo(use);
        try (PDDocument page = Loader.loadPDF(TestPages.of(use, paper, MESSAGES))) {
            PDRectangle box = page.getPage(0).getMediaBox();
            assertThat(box.getWidth()).isCloseTo(width, within(0.05f));
            assertThat(box.getHeight()).isCloseTo(height, within(0.05f));
        }
    }

    @Test
    void the_usual_paper_is_4_by_6_inch_or_letter() {
        assertThat(TestPages.of(PrintUse.CARDS, null, MESSAGES))
                .isEqualTo(TestPages.of(PrintUse.CARDS, "4x6", MESSAGES));
        assertThat(TestPages.of(PrintUse.SHEETS, null, MESSAGES))
                .isEqualTo(TestPages.of(PrintUse.SHEETS, "letter", MESSAGES));
    }

    @Test
    void another_paper_is_refused_with_those_there_are() {
        assertThatThrownBy(() -> TestPages.use("napkin"))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("4x6, a6, letter or a4");
    }
}
