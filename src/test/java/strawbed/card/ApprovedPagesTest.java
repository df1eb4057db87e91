package strawbed.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.calf.Told;
import strawbed.report.CalfPage;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfCardWriter;
import strawbed.report.pdf.SheetPaper;
import strawbed.text.Messages;

/**
 * Pages that a person looked at and found good. {@code -Dapproved.renew=true} writes them anew instead of comparing; look
 * at each one before it is committed.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ApprovedPagesTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "approved-pages");
    private static final int DPI = 100;
    /** Letters are drawn a little different by each version of Java. */
    private static final int SAME_GREY = 64;

    private static final double MOST_DIFFERENT = 0.005;
    private static final PdfCardWriter WRITER = new PdfCardWriter();
    private static final Map<String, byte[]> PAGES = new TreeMap<>(Map.of(
            "easy-birth", pdf(Calves.easyBirth(), "03:30", CardPaper.FOUR_BY_SIX_INCH),
            "easy-birth-upright", pdf(Calves.easyBirth(), "03:30", CardPaper.FOUR_BY_SIX_INCH_UPRIGHT),
            "found-with-signs", pdf(Calves.foundWithSigns(), "07:00", CardPaper.A6),
            "found-with-signs-upright", pdf(Calves.foundWithSigns(), "07:00", CardPaper.A6_UPRIGHT),
            "heifer-twin-of-a-bull", pdf(Calves.mixedTwins(), "24:30", CardPaper.FOUR_BY_SIX_INCH),
            "nothing-known-upright", pdf(Calves.nothingKnown(), "03:05", CardPaper.A6_UPRIGHT),
            "dead", pdf(Calves.dead(), "06:00", CardPaper.FOUR_BY_SIX_INCH),
            "dead-upright", pdf(Calves.dead(), "06:00", CardPaper.A6_UPRIGHT),
            "two-on-a-sheet",
                    WRITER.writeSheets(
                            List.of(page(Calves.easyBirth(), "03:30"), page(Calves.withoutNumber(), "03:05")),
                            CardPaper.A6,
                            SheetPaper.A4,
                            Told.time("03:30"))));

    static Stream<String> names() {
        return PAGES.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void a_page_looks_as_it_was_approved(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".png");
        BufferedImage now = picture(Objects.requireNonNull(PAGES.get(name)));
        if (Boolean.getBoolean("approved.renew")) {
            Files.createDirectories(FOLDER);
            ImageIO.write(now, "png", file.toFile());
            Assumptions.abort(name + " was written anew; look at it");
        }
        assertThat(different(now, ImageIO.read(file.toFile()))).isLessThanOrEqualTo(MOST_DIFFERENT);
    }

    @Test
    void another_calf_another_task_or_another_place_of_a_card_is_noticed() throws IOException {
        BufferedImage easy = picture(pdf(Calves.easyBirth(), "03:30", CardPaper.FOUR_BY_SIX_INCH));
        assertThat(different(easy, picture(pdf(Calves.easyBirth(), "03:30", CardPaper.FOUR_BY_SIX_INCH))))
                .isZero();
        assertThat(different(easy, picture(pdf(Calves.easyBirth(), "15:30", CardPaper.FOUR_BY_SIX_INCH))))
                .isGreaterThan(MOST_DIFFERENT);
        assertThat(different(easy, picture(pdf(Calves.dead(), "06:00", CardPaper.FOUR_BY_SIX_INCH))))
                .isGreaterThan(MOST_DIFFERENT);
        assertThat(different(easy, picture(pdf(Calves.easyBirth(), "03:30", CardPaper.A6))))
                .as("another size")
                .isEqualTo(1);
    }

    /** The share of points that differ by more than a little; all of them where the sizes differ. */
    private static double different(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return 1;
        }
        Raster first = one.getRaster();
        Raster second = other.getRaster();
        long different = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (Math.abs(first.getSample(x, y, 0) - second.getSample(x, y, 0)) > SAME_GREY) {
                    different++;
                }
            }
        }
        return different / (double) (one.getWidth() * one.getHeight());
    }

    private static BufferedImage picture(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    private static byte[] pdf(Told told, String now, CardPaper paper) {
        return WRITER.write(page(told, now), paper, Told.time(now));
    }

    private static CalfPage page(Told told, String now) {
        Instant at = Told.time(now);
        return CardContents.of(
                told.record(), told.herd(), at, new Messages(Locale.US), ZoneOffset.UTC, "", Print.next(told.record()));
    }
}
