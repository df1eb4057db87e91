package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.herd.HerdPapers;
import strawbed.report.HerdPaper;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PdfHerdWriterTest {
    private static final HerdPaper PAPER = HerdPapers.of(8, 40, 17);
    private static final Instant PRINTED = HerdPapers.printedAt();

    private final PdfHerdWriter writer = new PdfHerdWriter();

    @Test
    void the_words_can_be_read_back_in_the_order_of_reading() throws IOException {
        try (PDDocument document = read()) {
            assertThat(new PDFTextStripper().getText(document))
                    .containsSubsequence(
                            "Herd report",
                            "Births from 2026-03-01 to 2026-04-09",
                            "calves born",
                            "Stillborn",
                            "Colostrum",
                            "First fed within 4 h",
                            "Passive immunity",
                            "Calf by calf",
                            "hours after birth",
                            "Week by week",
                            "Side by side",
                            "22:00 to 06:00",
                            "How complete the record is",
                            "Statements of the period that nobody confirmed: 7.",
                            "Ask the herd's veterinarian.");
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_same_report_gives_the_same_bytes(SheetPaper paper) {
        byte[] first = writer.write(PAPER, paper, PRINTED);
        assertThat(new PdfHerdWriter().write(HerdPapers.of(8, 40, 17), paper, PRINTED))
                .isEqualTo(first);
        assertThat(writer.write(PAPER, paper, PRINTED.plusSeconds(60))).isNotEqualTo(first);
    }

    @Test
    void fonts_are_embedded_and_pictures_are_drawn_in_black_lines() throws IOException {
        try (PDDocument document = read()) {
            assertThat(document.getNumberOfPages()).isBetween(4, 8);
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                }
                assertThat(page.getResources().getXObjectNames())
                        .as("no pixels")
                        .isEmpty();
                // Without a colour operator everything is black: ISO 32000-1, 8.4.1 gives that as the start.
                assertThat(new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1))
                        .doesNotContainPattern("(?m)(^|\\s)(g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)\\s*$");
            }
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Herd report, Births from 2026-03-01 to 2026-04-09");
        }
    }

    private PDDocument read() throws IOException {
        return Loader.loadPDF(writer.write(PAPER, SheetPaper.LETTER, PRINTED));
    }
}
