package strawbed.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.herd.HerdPapers;
import strawbed.report.HerdPaper;

/** The report's page in a browser, Chromium without a window; the Debian package is chromium. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdPageIT {
    private static final HerdPaper PAPER = HerdPapers.of(8, 40, 17);
    private static final String PAGE = new HtmlHerdWriter().write(PAPER);
    private static final int PATIENCE_SECONDS = 120;

    /** Measures the page as it is shown and writes down what it found. */
    private static final String MEASURE = """
            <script>
            window.addEventListener('load', async () => {
              await document.fonts.ready;
              const found = {};
              found.fonts = [...document.fonts].filter(font => font.status === 'loaded').length;
              found.overflow = document.documentElement.scrollWidth - window.innerWidth;
              found.resources = performance.getEntriesByType('resource').filter(r => !r.name.startsWith('data:')).length;
              found.headings = document.querySelectorAll('h2').length;
              found.pictures = document.querySelectorAll('figure svg[role=img][aria-label]').length;
              found.ranges = document.querySelectorAll('.range svg').length;
              found.parts = document.querySelectorAll('tbody tr').length;
              found.outside = 0;
              found.overlaps = 0;
              for (const svg of document.querySelectorAll('figure svg')) {
                const frame = svg.getBoundingClientRect();
                const boxes = [...svg.querySelectorAll('text')].map(text => text.getBoundingClientRect());
                for (const box of boxes) {
                  // A browser's box of a line of text is higher than its letters.
                  const spare = 0.3 * box.height;
                  if (box.left < frame.left - 1 || box.right > frame.right + 1
                      || box.top < frame.top - spare || box.bottom > frame.bottom + spare) found.outside++;
                }
                for (let i = 0; i < boxes.length; i++) for (let j = i + 1; j < boxes.length; j++) {
                  const across = Math.min(boxes[i].right, boxes[j].right) - Math.max(boxes[i].left, boxes[j].left);
                  const down = Math.min(boxes[i].bottom, boxes[j].bottom) - Math.max(boxes[i].top, boxes[j].top);
                  if (across > 0.5 && down > 0.35 * boxes[i].height) found.overlaps++;
                }
              }
              const told = document.createElement('pre');
              told.textContent = Object.entries(found).map(([key, value]) => key + '=' + value).join(';');
              told.id = 'found';
              document.body.replaceChildren(told);
            });
            </script>
            """;

    @TempDir
    private Path folder;

    @BeforeAll
    static void there_is_a_browser() {
        assumeTrue(
                Files.isExecutable(Path.of("/usr/bin/chromium")),
                "The report's page was not opened in a browser: there is no chromium here. Install the Debian package.");
    }

    @ParameterizedTest
    @CsvSource({"1280", "800", "500"})
    void the_page_shows_everything_in_its_own_type_without_asking_for_anything_else(int width) throws Exception {
        Map<String, Integer> found = shown(width);
        assertThat(found).containsEntry("fonts", 2).containsEntry("resources", 0);
        assertThat(found.get("overflow")).isLessThanOrEqualTo(0);
        assertThat(found).containsEntry("headings", PAPER.chapters().size());
        assertThat(found)
                .containsEntry("pictures", 12)
                .containsEntry("outside", 0)
                .containsEntry("overlaps", 0);
        assertThat(found.get("ranges")).isEqualTo(24);
        assertThat(found).containsEntry("parts", 3 + 7 + 3);
    }

    @Test
    void the_page_names_no_address_and_holds_no_script() {
        assertThat(PAGE.replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("http", "<script", "<link", "@import");
        assertThat(PAGE).isEqualTo(new HtmlHerdWriter().write(PAPER));
    }

    @Test
    void words_of_the_farm_are_no_markup() {
        HerdPaper odd = new HerdPaper(
                "<b>Herd</b>",
                "\"Oaks\" & <script>alert(1)</script>",
                PAPER.period(),
                PAPER.printedAt(),
                PAPER.page(),
                PAPER.chapters(),
                PAPER.language());
        assertThat(new HtmlHerdWriter().write(odd))
                .contains("&lt;b&gt;Herd&lt;/b&gt;", "&quot;Oaks&quot; &amp; &lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script");
    }

    private Map<String, Integer> shown(int width) throws IOException, InterruptedException {
        Path page = folder.resolve("herd.html");
        Files.writeString(page, PAGE.replace("</body>", MEASURE + "</body>"));
        Path dom = folder.resolve("dom.html");
        Process browser = new ProcessBuilder(
                        "/usr/bin/chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--user-data-dir=" + folder.resolve("profile"),
                        "--window-size=" + width + ",2000",
                        "--virtual-time-budget=20000",
                        "--dump-dom",
                        page.toUri().toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(dom.toFile())
                .start();
        if (!browser.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            browser.destroyForcibly();
            throw new AssertionError("the browser did not end");
        }
        Matcher told = Pattern.compile("<pre id=\"found\">([^<]*)</pre>").matcher(Files.readString(dom));
        assertThat(told.find())
                .as(Files.readString(dom).lines().limit(3).toList().toString())
                .isTrue();
        Map<String, Integer> found = new TreeMap<>();
        for (String each : told.group(1).split(";", -1)) {
            String[] parts = each.split("=", 2);
            found.put(parts[0], (int) Math.round(Double.parseDouble(parts[1])));
        }
        return found;
    }
}
