package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.preflight.ValidationResult;
import org.apache.pdfbox.preflight.parser.PreflightParser;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.herd.HerdPapers;
import strawbed.report.CribSheet;
import strawbed.report.HerdPaper;
import strawbed.report.TestPage;

/** Whether every kind of document keeps (PDF/A-1b, by PDFBox Preflight) and can be read out (tagged). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ArchivalTest {
    private static final int CARD_BYTES = 60_000;
    private static final CribSheet CRIB = new CribSheet(
            "What you can say",
            List.of("Calf first, then what."),
            List.of(
                    new CribSheet.Group("Birth", List.of("heifer", "bull")),
                    new CribSheet.Group("Feed", List.of("three quarts fed (by bottle)"))),
            "Made from grammar 1234",
            "Page {0} of {1}",
            "en-US");
    private static final TestPage TEST_PAGE = new TestPage(
            "Printer test",
            List.of("Lay a ruler on both bars.", "Switch off fit to page."),
            80,
            "Lines",
            List.of(new TestPage.Sample("0.3 mm", 0.3)),
            "Capitals",
            List.of(new TestPage.Sample("2.6 mm", 2.6)),
            "Calf 312",
            "en-US");

    @TempDir
    Path folder;

    /** A document and what its layout placed on each page. */
    private record Made(Supplier<byte[]> file, List<List<Drawn>> pages) {}

    private static final Map<String, Made> MADE = made();

    private static Map<String, Made> made() {
        try (Type type = Type.open()) {
            HerdPaper herd = HerdPapers.of(2, 30, 5);
            return Map.of(
                    "herd report",
                    new Made(
                            () -> new PdfHerdWriter().write(herd, SheetPaper.LETTER, HerdPapers.printedAt()),
                            HerdLayout.of(type, herd, SheetPaper.LETTER)),
                    "card",
                    new Made(
                            () -> new PdfCardWriter().write(Cards.typical(), CardPaper.A6, Cards.PRINTED),
                            List.of(CardLayout.of(type, Cards.typical(), CardPaper.A6, Cards.PRINTED))),
                    "crowded card",
                    new Made(
                            () -> new PdfCardWriter().write(Cards.crowded(), CardPaper.FOUR_BY_SIX_INCH, Cards.PRINTED),
                            List.of(CardLayout.of(type, Cards.crowded(), CardPaper.FOUR_BY_SIX_INCH, Cards.PRINTED))),
                    "handover",
                    new Made(
                            () -> new PdfHandoverWriter().write(Sheets.ofCalves(40), SheetPaper.LETTER, Sheets.PRINTED),
                            SheetLayout.of(type, Sheets.ofCalves(40), SheetPaper.LETTER)),
                    "crib",
                    new Made(
                            () -> new PdfCribWriter().write(CRIB, SheetPaper.A4),
                            CribLayout.of(type, CRIB, SheetPaper.A4)),
                    "test page",
                    new Made(
                            () -> new PdfTestPageWriter().write(TEST_PAGE, CardPaper.FOUR_BY_SIX_INCH),
                            List.of(TestPageLayout.of(
                                    type,
                                    TEST_PAGE,
                                    CardPaper.FOUR_BY_SIX_INCH.width(),
                                    CardPaper.FOUR_BY_SIX_INCH.height()))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> documents() {
        return MADE.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void it_is_pdf_a_1b(String document) throws IOException {
        Path file = Files.write(folder.resolve("made.pdf"), bytes(document));
        ValidationResult result = PreflightParser.validate(file.toFile());
        assertThat(result.getErrorsList())
                .extracting(error -> error.getErrorCode() + " " + error.getDetails())
                .isEmpty();
        assertThat(result.isValid()).isTrue();
    }

    @Test
    void the_check_itself_finds_a_document_without_a_colour_space() throws IOException {
        Path file = folder.resolve("without.pdf");
        try (PDDocument document = Loader.loadPDF(bytes("card"))) {
            document.getDocumentCatalog().getCOSObject().removeItem(COSName.OUTPUT_INTENTS);
            document.save(file.toFile());
        }
        assertThat(PreflightParser.validate(file.toFile()).isValid()).isFalse();
    }

    @ParameterizedTest
    @MethodSource("documents")
    void what_is_read_out_is_what_was_laid_out_in_its_order(String document) throws IOException {
        List<String> laid = made(document).pages().stream()
                .flatMap(List::stream)
                .filter(Drawn.Words.class::isInstance)
                .filter(drawn -> !drawn.role().equals(Role.DECORATION))
                .map(drawn -> ((Drawn.Words) drawn).text())
                .toList();
        try (PDDocument read = Loader.loadPDF(bytes(document))) {
            assertThat(read.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            List<PDStructureElement> elements = elements(read);
            assertThat(elements).allMatch(element -> element.getPage() != null);
            StringBuilder told = new StringBuilder();
            for (PDStructureElement element : elements) {
                told.append(text(element));
            }
            assertThat(plain(told.toString())).isEqualTo(plain(String.join("", laid)));
        }
    }

    @ParameterizedTest
    @MethodSource("documents")
    void every_piece_is_either_tagged_once_or_a_decoration(String document) throws IOException {
        List<List<Drawn>> pages = made(document).pages();
        try (PDDocument read = Loader.loadPDF(bytes(document))) {
            int tagged = 0;
            for (int i = 0; i < pages.size(); i++) {
                long decorations = pages.get(i).stream()
                        .filter(drawn -> drawn.role().equals(Role.DECORATION))
                        .count();
                PDPage page = read.getPage(i);
                assertThat(begun(page, "Artifact")).isEqualTo(decorations).isPositive();
                assertThat(begun(page, "")).isEqualTo(pages.get(i).size());
                tagged += pages.get(i).size() - (int) decorations;
            }
            int owned = elements(read).stream()
                    .mapToInt(element -> element.getKids().size())
                    .sum();
            assertThat(owned).isEqualTo(tagged);
            assertThat(read.getDocumentCatalog()
                            .getStructureTreeRoot()
                            .getParentTree()
                            .getNumbers())
                    .hasSize(pages.size());
        }
    }

    @Test
    void a_card_begins_with_its_number_and_tells_code_and_timeline_in_words() throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes("card"))) {
            List<PDStructureElement> elements = elements(read);
            assertThat(elements.get(0).getStructureType()).isEqualTo("H1");
            assertThat(text(elements.get(0))).isEqualTo("417");
            List<String> figures = elements.stream()
                    .filter(element -> element.getStructureType().equals("Figure"))
                    .map(PDStructureElement::getAlternateDescription)
                    .toList();
            assertThat(figures).hasSize(2);
            assertThat(figures.get(0)).isEqualTo(Cards.typical().head().code());
            assertThat(figures.get(1))
                    .startsWith("The first day, birth. FEED: 03:05 3 qt done")
                    .endsWith(".");
            assertThat(read.getDocumentCatalog().getLanguage()).isEqualTo("en-US");
        }
    }

    @Test
    void sheets_have_one_title_and_a_heading_for_each_section() throws IOException {
        try (PDDocument read = Loader.loadPDF(bytes("crib"))) {
            assertThat(elements(read))
                    .extracting(PDStructureElement::getStructureType)
                    .containsExactly("H1", "P", "H2", "P", "P", "H2", "P", "P");
        }
        try (PDDocument read = Loader.loadPDF(bytes("handover"))) {
            assertThat(elements(read))
                    .extracting(PDStructureElement::getStructureType)
                    .containsOnlyOnce("H1")
                    .contains("H2", "P");
        }
    }

    @Test
    void a_card_is_small() {
        assertThat(bytes("crowded card")).hasSizeLessThan(CARD_BYTES);
    }

    private static Made made(String document) {
        Made made = MADE.get(document);
        if (made == null) {
            throw new AssertionError(document);
        }
        return made;
    }

    private static byte[] bytes(String document) {
        return made(document).file().get();
    }

    private static List<PDStructureElement> elements(PDDocument read) {
        PDStructureElement whole = (PDStructureElement)
                read.getDocumentCatalog().getStructureTreeRoot().getKids().get(0);
        assertThat(whole.getStructureType()).isEqualTo("Document");
        return ((PDStructureNode) whole)
                .getKids().stream().map(PDStructureElement.class::cast).toList();
    }

    private static String text(PDStructureElement element) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
        extractor.processPage(element.getPage());
        StringBuilder text = new StringBuilder();
        for (Object kid : element.getKids()) {
            extractor.getMarkedContents().stream()
                    .filter(content -> content.getMCID() == (Integer) kid)
                    .map(PDMarkedContent::getContents)
                    .flatMap(List::stream)
                    .filter(TextPosition.class::isInstance)
                    .forEach(letter -> text.append(((TextPosition) letter).getUnicode()));
        }
        return text.toString();
    }

    /** How often marked content of this tag begins; of any tag if it is blank. */
    private static int begun(PDPage page, String tag) throws IOException {
        List<Object> tokens = new PDFStreamParser(page).parse();
        List<String> tags = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            if (tokens.get(i) instanceof Operator operator && operator.getName().startsWith("B") && i > 0) {
                if (operator.getName().equals("BMC")) {
                    tags.add(((COSName) tokens.get(i - 1)).getName());
                } else if (operator.getName().equals("BDC")) {
                    tags.add(((COSName) tokens.get(i - 2)).getName());
                }
            }
        }
        return (int)
                tags.stream().filter(one -> tag.isEmpty() || one.equals(tag)).count();
    }

    /** Blanks between glyphs are not always letters of their own. */
    private static String plain(String text) {
        return text.replaceAll("\\s", "");
    }
}
