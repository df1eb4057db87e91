package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.calf.Herd;
import strawbed.handover.HandoverContents;
import strawbed.handover.Shift;
import strawbed.report.CalfCard;
import strawbed.report.CalfPage;
import strawbed.report.Fact;
import strawbed.report.HandoverSheet;
import strawbed.report.RecordSheet;
import strawbed.report.SheetSection;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Language;
import strawbed.text.Messages;

/** Cards and handover sheets in Spanish: whole, in bounds, and with no English word of the program. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpanishPagesTest {
    private static final Type TYPE = Type.open();
    private static final Messages SPANISH = new Messages(Language.SPANISH.locale());
    private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}]+");
    /** What a person said of a place stays as it was said; so do names. */
    private static final Set<String> SAID = Set.of("hutch", "pen", "calf");

    private static final Set<String> ENGLISH_ONLY = englishOnly();

    @AfterAll
    static void close_the_fonts() throws IOException {
        TYPE.close();
    }

    @ParameterizedTest
    @EnumSource
    void nothing_of_a_hard_calf_leaves_the_margins_overlaps_or_is_too_small(CardPaper paper) {
        List<CalfPage> pages = HardCalves.pages(SPANISH);
        assertThat(pages).hasSize(HardCalves.COUNT);
        for (int i = 0; i < pages.size(); i++) {
            CalfPage page = pages.get(i);
            List<Drawn> things = PdfCardWriter.lay(TYPE, page, paper, Cards.PRINTED);
            Geometry.check("calf " + i + " (" + page.head().number() + ") on " + paper, things, paper);
        }
    }

    @ParameterizedTest
    @EnumSource
    void no_english_word_is_left_on_a_card(CardPaper paper) {
        List<CalfPage> spanish = ofTheFarm(SPANISH);
        assertThat(spanish).hasSizeGreaterThan(300);
        assertThat(spanish).hasAtLeastOneElementOfType(RecordSheet.class);
        assertThat(spanish)
                .allSatisfy(page ->
                        assertThat(english(drawn(page, paper))).as(page.title()).isEmpty());
        assertThat(ofTheFarm(new Messages(Locale.US)))
                .allSatisfy(page -> assertThat(english(drawn(page, paper)))
                        .as("the same page in English")
                        .hasSizeGreaterThan(5));
    }

    /** Spanish takes more room. The share of cards on which a word is cut off or a line left out is our own limit. */
    @ParameterizedTest
    @EnumSource
    void few_cards_in_spanish_leave_something_out_that_english_ones_tell(CardPaper paper) {
        long spanish = leftOut(SPANISH, paper, "\u2026|y [0-9]+ más");
        long english = leftOut(new Messages(Locale.US), paper, "\u2026|and [0-9]+ more");
        assertThat(english).isPositive();
        assertThat(spanish - english)
                .as("of " + ofTheFarm(SPANISH).size() + " on " + paper)
                .isLessThanOrEqualTo(ofTheFarm(SPANISH).size() / 8);
    }

    @Test
    void a_file_says_that_it_is_in_spanish_and_holds_the_words() throws IOException {
        CalfPage page = ofTheFarm(SPANISH).stream()
                .filter(CalfCard.class::isInstance)
                .findFirst()
                .orElseThrow();
        byte[] file = new PdfCardWriter().write(page, CardPaper.FOUR_BY_SIX_INCH, Cards.PRINTED);
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("es-US");
            assertThat(new PDFTextStripper().getText(document))
                    .contains("TOMA", "OMBLIGO", "REVISAR", "Nació", "Madre", "1a toma", "protocolo");
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_handover_sheet_is_whole_and_spanish(SheetPaper paper) {
        HandoverSheet sheet = handover(SPANISH);
        assertThat(sheet.language()).isEqualTo("es-US");
        assertThat(sheet.sections())
                .extracting(SheetSection::title)
                .contains("Con atraso o no hecho", "En vigilancia", "Nacidos o muertos", "Calostro", "Cuidado");
        assertThat(sheet.about()).extracting(Fact::label).containsExactly("Registró");
        List<List<Drawn>> pages = SheetLayout.of(TYPE, sheet, paper);
        List<String> words = new ArrayList<>();
        for (List<Drawn> things : pages) {
            for (int i = 0; i < things.size(); i++) {
                Box box = things.get(i).box();
                assertThat(Math.min(box.x(), box.y())).isGreaterThanOrEqualTo(16 - Ink.ROUNDING);
                assertThat(box.right()).isLessThanOrEqualTo(paper.width() - 16 + Ink.ROUNDING);
                assertThat(box.bottom()).isLessThanOrEqualTo(paper.height() - 16 + Ink.ROUNDING);
                for (int j = i + 1; j < things.size(); j++) {
                    assertThat(Ink.overlap(box, things.get(j).box()))
                            .as(things.get(i) + " lies on " + things.get(j))
                            .isFalse();
                }
            }
            words.addAll(texts(things));
        }
        assertThat(words).hasSizeGreaterThan(100);
        assertThat(english(words)).isEmpty();
        assertThat(english(texts(SheetLayout.of(TYPE, handover(new Messages(Locale.US)), paper)
                        .get(0))))
                .hasSizeGreaterThan(20);
    }

    private static HandoverSheet handover(Messages messages) {
        Instant from = Instant.parse("2026-01-05T06:00:00Z");
        Herd herd = Herd.of(new SimulatedHerd(120, 30, from, 11).rest());
        Instant now = from.plus(Duration.ofHours(60));
        return HandoverContents.of(
                herd, List.of(), new Shift(now.minus(Duration.ofHours(12)), now), messages, SimulatedHerd.ZONE, "");
    }

    /** Without the farm's invented name. */
    private static List<CalfPage> ofTheFarm(Messages messages) {
        return HardCalves.ofTheHerd(messages).stream()
                .filter(page -> page.foot().farm().isBlank())
                .toList();
    }

    private static long leftOut(Messages messages, CardPaper paper, String sign) {
        Pattern pattern = Pattern.compile(sign);
        return ofTheFarm(messages).stream()
                .filter(page -> drawn(page, paper).stream()
                        .anyMatch(text -> pattern.matcher(text).find()))
                .count();
    }

    private static List<String> drawn(CalfPage page, CardPaper paper) {
        return texts(PdfCardWriter.lay(TYPE, page, paper, Cards.PRINTED));
    }

    private static List<String> texts(List<Drawn> things) {
        return things.stream()
                .filter(Drawn.Words.class::isInstance)
                .map(thing -> ((Drawn.Words) thing).text())
                .toList();
    }

    private static Set<String> english(Collection<String> texts) {
        return words(texts.stream()).stream()
                .filter(ENGLISH_ONLY::contains)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The words of the English texts that no Spanish text has. */
    private static Set<String> englishOnly() {
        Set<String> words = ofBundle(Locale.ROOT);
        words.removeAll(ofBundle(Language.SPANISH.locale()));
        words.removeAll(SAID);
        assertThat(words).hasSizeGreaterThan(500).contains("heifer", "born", "navel", "recorded");
        return words;
    }

    private static Set<String> ofBundle(Locale locale) {
        ResourceBundle bundle = ResourceBundle.getBundle(
                "strawbed.text.messages",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return words(bundle.keySet().stream().map(bundle::getString));
    }

    private static Set<String> words(Stream<String> texts) {
        return texts.flatMap(text -> Arrays.stream(NO_LETTER.split(text, -1)))
                .filter(word -> word.length() > 2)
                .map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
