package strawbed.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.print.PrinterException;
import java.awt.print.PrinterIOException;
import java.awt.print.PrinterJob;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.print.StreamPrintServiceFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.report.TestPage;
import strawbed.report.pdf.CardPaper;
import strawbed.report.pdf.PdfTestPageWriter;
import strawbed.report.pdf.SheetPaper;

/** The pages that reach a printer, by the PostScript that the Java runtime makes of them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TrueSizeTest {
    private static final TestPage WORDS = new TestPage(
            "Test", List.of("How to"), 80, "Lines", List.of(), "Capitals", List.of(), "Calf 312 fed", "en-US");

    private static String postScript(byte[] pdf) throws IOException, PrinterException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        StreamPrintServiceFactory factory =
                StreamPrintServiceFactory.lookupStreamPrintServiceFactories(null, "application/postscript")[0];
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(factory.getPrintService(bytes));
            job.setPageable(TrueSize.pages(document));
            job.print();
        }
        return bytes.toString(StandardCharsets.ISO_8859_1);
    }

    /** In points; PostScript Language Reference, setpagedevice: PageSize. */
    private static List<double[]> sizes(String postScript) {
        Matcher found = Pattern.compile("PageSize \\[([\\d.]+) ([\\d.]+)\\]").matcher(postScript);
        List<double[]> sizes = new ArrayList<>();
        while (found.find()) {
            sizes.add(new double[] {Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))});
        }
        return sizes;
    }

    /** 72 points are 25.4 mm; 4 by 6 and 8.5 by 11 inch; A6 and A4 of ISO 216. */
    static Stream<Map.Entry<byte[], double[]>> every_paper_of_ours() {
        PdfTestPageWriter writer = new PdfTestPageWriter();
        return Stream.of(
                Map.entry(writer.write(WORDS, CardPaper.FOUR_BY_SIX_INCH), new double[] {432, 288}),
                Map.entry(writer.write(WORDS, CardPaper.A6), new double[] {419.53, 297.64}),
                Map.entry(writer.write(WORDS, SheetPaper.LETTER), new double[] {612, 792}),
                Map.entry(writer.write(WORDS, SheetPaper.A4), new double[] {595.28, 841.89}));
    }

    @ParameterizedTest
    @MethodSource
    void every_paper_of_ours(Map.Entry<byte[], double[]> paper) throws IOException, PrinterException {
        assertThat(sizes(postScript(paper.getKey())))
                .isNotEmpty()
                .allSatisfy(size -> assertThat(size).containsExactly(paper.getValue(), within(0.1)));
    }

    @Test
    void each_page_has_its_own_size() throws IOException, PrinterException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage(new PDRectangle(432, 288)));
            document.addPage(new PDPage(PDRectangle.A4));
            document.save(bytes);
        }
        assertThat(sizes(postScript(bytes.toByteArray())))
                .extracting(size -> String.format(Locale.ROOT, "%.0f", size[0]))
                .containsSubsequence("432", "595");
    }

    /** A bar 80 mm long is 226.77 points: drawn as a box from one x to another. */
    @Test
    void nothing_is_fitted_or_moved() throws IOException, PrinterException {
        String drawn = postScript(new PdfTestPageWriter().write(WORDS, CardPaper.FOUR_BY_SIX_INCH));
        assertThat(boxes(drawn)).anySatisfy(box -> {
            assertThat(box[0]).as("left edge, 8 mm").isCloseTo(8 / 25.4 * 72, within(0.05));
            assertThat(box[1] - box[0]).as("length").isCloseTo(80 / 25.4 * 72, within(0.05));
        });
    }

    /** Least and greatest x of each path that is filled, in points. */
    private static List<double[]> boxes(String postScript) {
        List<double[]> boxes = new ArrayList<>();
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        Pattern point = Pattern.compile("^([-\\d.]+) ([-\\d.]+) [ML]$");
        for (String line : postScript.lines().map(String::strip).toList()) {
            Matcher matched = point.matcher(line);
            if (matched.matches()) {
                double x = Double.parseDouble(matched.group(1));
                least = Math.min(least, x);
                most = Math.max(most, x);
            } else if (line.contains("N")) {
                least = Double.MAX_VALUE;
                most = -Double.MAX_VALUE;
            } else if (line.matches(".*(GF|WF|EF|fill).*") && most > least) {
                boxes.add(new double[] {least, most});
            }
        }
        return boxes;
    }

    @Test
    void only_black_is_drawn_and_no_picture() throws IOException, PrinterException {
        String drawn = postScript(new PdfTestPageWriter().write(WORDS, CardPaper.FOUR_BY_SIX_INCH));
        String pages = drawn.substring(drawn.indexOf("%%EndProlog"));
        assertThat(pages.lines().filter(line -> line.endsWith(" SG") || line.endsWith("setgray")))
                .isNotEmpty()
                .contains("0.0 SG")
                .as("black, and the white that the page begins with")
                .allMatch(line -> line.matches("[01](\\.0*)?\\s+(SG|setgray)"));
        assertThat(pages).doesNotContain("setrgbcolor", "colorimage", " image");
    }

    @Test
    void a_missing_lpr_names_the_package_that_has_it() {
        IOException cause = new IOException("Cannot run program \"/usr/bin/lpr\": error=2, No such file or directory");
        assertThat(SystemPrinters.refused("CARDS", new PrinterIOException(cause)))
                .hasMessageContaining("lpr")
                .hasMessageContaining("cups-bsd");
        assertThat(SystemPrinters.refused("CARDS", new PrinterException("jam")))
                .hasMessageContaining("CARDS did not take the page: jam")
                .hasMessageNotContaining("cups-bsd");
        assertThat(SystemPrinters.refused("CARDS", new PrinterIOException(cause))
                        .fault()
                        .kind())
                .isEqualTo(PrintFault.Kind.NO_PROGRAM);
        assertThat(SystemPrinters.refused("CARDS", new PrinterException("jam"))
                        .fault()
                        .detail())
                .isEqualTo("jam");
    }
}
