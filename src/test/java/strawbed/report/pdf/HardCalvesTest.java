package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.ReaderException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.report.CalfPage;
import strawbed.report.RecordSheet;

/** A thousand hard calves on every paper: as it was laid out, and on a sample as it was written. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HardCalvesTest {
    private static final Type TYPE = Type.open();
    private static final List<CalfPage> PAGES = HardCalves.pages();
    private static final int SAMPLE_EVERY = 20;
    private static final double POINTS = 72 / 25.4;
    /** Our own choice, so that a card goes over any line. */
    private static final int MOST_BYTES = 60_000;

    @AfterAll
    static void close_the_fonts() throws IOException {
        TYPE.close();
    }

    @Test
    void they_are_of_every_kind() {
        assertThat(PAGES).hasSize(HardCalves.COUNT);
        assertThat(PAGES).filteredOn(RecordSheet.class::isInstance).hasSizeGreaterThan(80);
        assertThat(PAGES).filteredOn(page -> page.head().beside().isPresent()).hasSizeGreaterThan(100);
        assertThat(PAGES)
                .filteredOn(page ->
                        page instanceof RecordSheet sheet && sheet.recorded().size() > 50)
                .hasSizeGreaterThan(5);
        assertThat(PAGES)
                .filteredOn(page -> page.foot().print().startsWith("Copy"))
                .hasSizeGreaterThan(100);
    }

    @ParameterizedTest
    @EnumSource
    void nothing_leaves_the_margins_overlaps_or_is_too_small(CardPaper paper) {
        for (int i = 0; i < PAGES.size(); i++) {
            CalfPage page = PAGES.get(i);
            List<Drawn> things = PdfCardWriter.lay(TYPE, page, paper, Cards.PRINTED);
            Geometry.check("calf " + i + " (" + page.head().number() + ") on " + paper, things, paper);
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_written_file_holds_the_same(CardPaper paper) throws IOException, ReaderException {
        for (int i = 0; i < PAGES.size(); i += SAMPLE_EVERY) {
            CalfPage page = PAGES.get(i);
            String name = "calf " + i + " on " + paper;
            byte[] file = new PdfCardWriter().write(page, paper, Cards.PRINTED);
            assertThat(file.length).as(name).isLessThan(MOST_BYTES);
            try (PDDocument document = Loader.loadPDF(file)) {
                List<TextPosition> letters = letters(document);
                assertThat(letters).as(name).hasSize(drawnLetters(page, paper));
                for (TextPosition letter : letters) {
                    check(name, letter, paper);
                }
                assertThat(CodeReader.read(document, 0))
                        .as(name)
                        .isEqualTo(page.head().code());
            }
        }
    }

    /** PDFBox gives blanks that were not drawn too, and leaves out none that were; so neither is counted. */
    private static int drawnLetters(CalfPage page, CardPaper paper) {
        return PdfCardWriter.lay(TYPE, page, paper, Cards.PRINTED).stream()
                .filter(Drawn.Words.class::isInstance)
                .map(thing -> ((Drawn.Words) thing).text().replace(" ", ""))
                .mapToInt(text -> text.codePointCount(0, text.length()))
                .sum();
    }

    private static void check(String name, TextPosition letter, CardPaper paper) throws IOException {
        String where =
                name + ": " + letter + " at " + letter.getXDirAdj() / POINTS + ", " + letter.getYDirAdj() / POINTS;
        assertThat(letter.getXDirAdj() / POINTS).as(where).isGreaterThanOrEqualTo(4.99);
        assertThat((letter.getXDirAdj() + letter.getWidthDirAdj()) / POINTS)
                .as(where)
                .isLessThanOrEqualTo(paper.width() - 4.99);
        double capital = letter.getFontSizeInPt() / POINTS / TYPE.bold().sizeOfCapital();
        assertThat(capital).as(where).isGreaterThanOrEqualTo(Geometry.LEAST - 0.02);
        // The base line: a capital stands on it, at least as high as the margin is deep.
        assertThat(letter.getYDirAdj() / POINTS - capital).as(where).isGreaterThanOrEqualTo(4.9);
        assertThat(letter.getYDirAdj() / POINTS).as(where).isLessThanOrEqualTo(paper.height() - 4.99);
    }

    private static List<TextPosition> letters(PDDocument document) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                if (!letter.getUnicode().isBlank()) {
                    letters.add(letter);
                }
            }
        }.getText(document);
        return letters;
    }
}
