package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.report.HandoverSheet;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PdfHandoverWriterTest {
    private static final int RANDOM_SHEETS = 20;

    private final PdfHandoverWriter writer = new PdfHandoverWriter();

    /** Letter is 8.5 by 11 inch of 72 points; A4 is 210 by 297 mm in ISO 216. */
    @Test
    void the_page_is_as_large_as_the_paper() throws IOException {
        try (PDDocument letter = read(Sheets.typical(), SheetPaper.LETTER);
                PDDocument a4 = read(Sheets.typical(), SheetPaper.A4)) {
            assertThat(letter.getPage(0).getMediaBox().getWidth()).isCloseTo(612, within(0.01f));
            assertThat(letter.getPage(0).getMediaBox().getHeight()).isCloseTo(792, within(0.01f));
            assertThat(a4.getPage(0).getMediaBox().getWidth()).isCloseTo(595.28f, within(0.01f));
            assertThat(a4.getPage(0).getMediaBox().getHeight()).isCloseTo(841.89f, within(0.01f));
        }
    }

    @Test
    void the_words_can_be_read_back_in_the_order_of_reading() throws IOException {
        try (PDDocument document = read(Sheets.typical(), SheetPaper.LETTER)) {
            assertThat(new PDFTextStripper().getText(document))
                    .containsSubsequence(
                            "Handover",
                            "Mon 23 Nov 17:30 to Tue 24 Nov 05:30",
                            "Recorded by",
                            "Begoña Muñoz, Łucja Żółć-Gęślą",
                            "Late or missed",
                            "LATE by 35 min",
                            "Due by 17:30",
                            "08:55–14:55",
                            "2nd colostrum",
                            "batch 9",
                            "Cow with calf",
                            "Handed over by");
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_same_sheet_gives_the_same_bytes(SheetPaper paper) {
        byte[] first = writer.write(Sheets.ofCalves(40), paper, Sheets.PRINTED);
        assertThat(new PdfHandoverWriter().write(Sheets.ofCalves(40), paper, Sheets.PRINTED))
                .isEqualTo(first);
        assertThat(writer.write(Sheets.ofCalves(40), paper, Sheets.PRINTED.plusSeconds(60)))
                .isNotEqualTo(first);
    }

    @Test
    void another_sheet_of_the_same_minute_is_another_document() throws IOException {
        try (PDDocument one = read(Sheets.typical(), SheetPaper.A4);
                PDDocument other = read(Sheets.empty(), SheetPaper.A4)) {
            assertThat(one.getDocument().getDocumentID().get(0))
                    .isNotEqualTo(other.getDocument().getDocumentID().get(0));
        }
    }

    @Test
    void both_fonts_are_embedded_once_and_cut_to_what_is_used() throws IOException {
        byte[] one = writer.write(Sheets.ofCalves(40), SheetPaper.LETTER, Sheets.PRINTED);
        try (PDDocument document = Loader.loadPDF(one)) {
            for (PDPage page : document.getPages()) {
                List<COSName> names = fonts(page);
                assertThat(names).hasSize(2);
                for (COSName name : names) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    // ISO 32000-1, 9.6.4: a subset's name begins with six capitals and a plus sign.
                    assertThat(font.getName()).matches("[A-Z]{6}\\+AtkinsonHyperlegibleNext.*");
                }
            }
        }
        assertThat(new String(one, StandardCharsets.ISO_8859_1).split("/FontFile2", -1))
                .hasSize(3);
    }

    @Test
    void only_black_is_used() throws IOException {
        try (PDDocument document = read(Sheets.typical(), SheetPaper.LETTER)) {
            String drawing = new String(document.getPage(0).getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
            // Without a colour operator everything is black: ISO 32000-1, 8.4.1 gives that as the start.
            assertThat(drawing).doesNotContainPattern("(?m)(^|\\s)(g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)\\s*$");
        }
    }

    @Test
    void title_language_and_time_are_set() throws IOException {
        try (PDDocument document = read(Sheets.typical(), SheetPaper.A4)) {
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Handover, Mon 23 Nov 17:30 to Tue 24 Nov 05:30");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(Sheets.PRINTED);
        }
    }

    @Test
    void no_sheet_fails_for_its_words() throws IOException {
        for (long seed = 0; seed < RANDOM_SHEETS; seed++) {
            try (PDDocument document = read(Sheets.random(seed), SheetPaper.LETTER)) {
                assertThat(new PDFTextStripper().getText(document))
                        .as("seed " + seed)
                        .contains("page 1 of " + document.getNumberOfPages());
            }
        }
    }

    private PDDocument read(HandoverSheet sheet, SheetPaper paper) throws IOException {
        return Loader.loadPDF(writer.write(sheet, paper, Sheets.PRINTED));
    }

    private static List<COSName> fonts(PDPage page) {
        List<COSName> names = new ArrayList<>();
        page.getResources().getFontNames().forEach(names::add);
        return names;
    }
}
