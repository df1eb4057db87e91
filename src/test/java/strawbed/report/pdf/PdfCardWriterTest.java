package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.ReaderException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.report.CalfPage;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PdfCardWriterTest {
    private static final int RANDOM_CARDS = 40;
    private final PdfCardWriter writer = new PdfCardWriter();

    /** 4 by 6 inch is 288 by 432 points of 1/72 inch; A6 is 105 by 148 mm in ISO 216. */
    @Test
    void the_page_is_as_large_as_the_paper() throws IOException {
        try (PDDocument label = read(Cards.typical(), CardPaper.FOUR_BY_SIX_INCH);
                PDDocument a6 = read(Cards.typical(), CardPaper.A6)) {
            assertThat(label.getNumberOfPages()).isEqualTo(1);
            assertThat(label.getPage(0).getMediaBox().getWidth()).isCloseTo(432, within(0.01f));
            assertThat(label.getPage(0).getMediaBox().getHeight()).isCloseTo(288, within(0.01f));
            assertThat(a6.getPage(0).getMediaBox().getWidth()).isCloseTo(419.53f, within(0.01f));
            assertThat(a6.getPage(0).getMediaBox().getHeight()).isCloseTo(297.64f, within(0.01f));
        }
    }

    @Test
    void the_words_can_be_read_back() throws IOException {
        assertThat(text(Cards.typical()))
                .contains("417", "HEIFER", "Born", "Tue 24 Nov 02:10", "Twin of 418", "unassisted, forwards")
                .contains("Weight", "41 kg", "24.5 % Brix", "3 qt (2.8 L)", "55 min after birth")
                .contains(
                        "by 16:10", "Look at the calf", "03:05 3 qt", "Print 1, Tue 24 Nov 12:10 · protocol 1f2e3d4c");
    }

    @Test
    void accents_are_printed_and_strange_letters_replaced() throws IOException {
        assertThat(text(Cards.named("Begoña"))).contains("Begoña");
        assertThat(text(Cards.named("Zoë ß é ł"))).contains("Zoë ß é ł");
        assertThat(text(Cards.named("\u1ebean"))).contains("Ean");
        assertThat(text(Cards.named("\ud83d\udc2e 12"))).contains("? 12");
        assertThat(text(Cards.named("\u05d1\u05e8"))).contains("??");
        assertThat(text(Cards.named("\u200b"))).contains("?");
    }

    @Test
    void both_fonts_are_embedded_in_part_and_there_are_no_pictures() throws IOException {
        try (PDDocument document = read(Cards.typical(), CardPaper.A6)) {
            PDResources resources = document.getPage(0).getResources();
            assertThat(resources.getXObjectNames()).isEmpty();
            assertThat(resources.getFontNames()).hasSize(2);
            for (COSName name : resources.getFontNames()) {
                PDFont font = resources.getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                // ISO 32000-1, 9.6.4: a subset's name begins with six capitals and a plus sign.
                assertThat(font.getName()).matches("[A-Z]{6}\\+AtkinsonHyperlegibleNext.*");
            }
        }
    }

    @Test
    void only_black_is_used() throws IOException {
        try (PDDocument document = read(Cards.crowded(), CardPaper.A6)) {
            PDPage page = document.getPage(0);
            String drawing = new String(page.getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
            // Without a colour operator everything is black: ISO 32000-1, 8.4.1 gives that as the start.
            assertThat(drawing).doesNotContainPattern("(?m)(^|\\s)(g|G|rg|RG|k|K|cs|CS|sc|SC|scn|SCN|gs)\\s*$");
        }
    }

    @Test
    void title_language_and_time_are_set() throws IOException {
        try (PDDocument document = read(Cards.typical(), CardPaper.A6)) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Calf card 417");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
            assertThat(document.getDocumentInformation()
                            .getCreationDate()
                            .toInstant()
                            .atOffset(ZoneOffset.UTC)
                            .toInstant())
                    .isEqualTo(Cards.PRINTED);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_same_card_gives_the_same_bytes(CardPaper paper) {
        byte[] first = writer.write(Cards.crowded(), paper, Cards.PRINTED);
        byte[] second = new PdfCardWriter().write(Cards.crowded(), paper, Cards.PRINTED);
        assertThat(second).isEqualTo(first);
        assertThat(writer.write(Cards.crowded(), paper, Cards.PRINTED.plusSeconds(60)))
                .isNotEqualTo(first);
    }

    @ParameterizedTest
    @EnumSource
    void the_square_code_reads_from_a_black_and_white_label(CardPaper paper) throws IOException, ReaderException {
        for (CalfPage card :
                new CalfPage[] {Cards.typical(), Cards.sparse(), Cards.crowded(), Cards.random(7), Cards.dead()}) {
            try (PDDocument document = read(card, paper)) {
                assertThat(CodeReader.read(document, 0))
                        .isEqualTo("CALF " + card.head().id().toString().toUpperCase(Locale.ROOT) + " RECORD "
                                + card.head().newestFact());
            }
        }
    }

    @Test
    void each_card_on_a_sheet_keeps_its_code() throws IOException, ReaderException {
        List<CalfPage> pages = List.of(Cards.typical(), Cards.random(7), Cards.dead());
        try (PDDocument document = Loader.loadPDF(
                writer.writeSheets(pages, CardPaper.FOUR_BY_SIX_INCH, SheetPaper.LETTER, Cards.PRINTED))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isCloseTo(612, within(0.01f));
            assertThat(CodeReader.readHalf(document, 0, true))
                    .isEqualTo(Cards.typical().head().code());
            assertThat(CodeReader.readHalf(document, 0, false))
                    .isEqualTo(Cards.random(7).head().code());
            assertThat(CodeReader.readHalf(document, 1, true))
                    .isEqualTo(Cards.dead().head().code());
        }
    }

    @Test
    void no_card_fails_for_its_words() throws IOException {
        for (long seed = 0; seed < RANDOM_CARDS; seed++) {
            try (PDDocument document = read(Cards.random(seed), CardPaper.A6)) {
                assertThat(document.getNumberOfPages()).as("seed " + seed).isEqualTo(1);
            }
        }
    }

    private String text(CalfPage card) throws IOException {
        try (PDDocument document = read(card, CardPaper.A6)) {
            return new PDFTextStripper().getText(document);
        }
    }

    private PDDocument read(CalfPage card, CardPaper paper) throws IOException {
        return Loader.loadPDF(writer.write(card, paper, Cards.PRINTED));
    }
}
