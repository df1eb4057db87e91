package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;

/** The whole way: the program's command, Java, lpr, a print server, and the page that comes out of it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class PrintThroughCupsIT {
    private static final Path PAGES = Path.of(System.getProperty("user.home"), "PDF");
    private static final float DOTS = 150;
    private static final int SHADE = 128;

    @TempDir
    @SuppressWarnings("NullAway.Init") // The test runner makes it.
    static Path folder;

    private Path data = Path.of("none");
    private boolean hadFolder;
    private Optional<PrivateCups> cups = Optional.empty();
    private Optional<CommandSession> session = Optional.empty();
    private final TreeSet<Path> before = new TreeSet<>();

    @BeforeAll
    void start() throws IOException, InterruptedException {
        Optional<String> missing = PrivateCups.missing();
        assumeThat(missing).as(missing.orElse("")).isEmpty();
        hadFolder = Files.exists(PAGES);
        before.addAll(pages());
        Path server = Files.createDirectory(folder.resolve("cups"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        cups = Optional.of(PrivateCups.start(server));
        session = Optional.of(CommandSession.start(List.of(), cups().address()));
    }

    @AfterAll
    void end() throws IOException {
        if (session.isPresent()) {
            session.get().close();
        }
        cups.ifPresent(PrivateCups::close);
        if (cups.isPresent()) {
            for (Path ours : newPages()) {
                Files.delete(ours);
            }
            if (!hadFolder) {
                Files.deleteIfExists(PAGES);
            }
        }
    }

    @BeforeEach
    void a_calf_and_a_printer() throws IOException, InterruptedException {
        data = Files.createTempDirectory(folder, "data");
        Clock clock = Clock.systemUTC();
        CalfId calf = new CalfId(new UUID(0x7000L, 1));
        Instant birth = clock.instant().minusSeconds(3600);
        try (EventJournal journal =
                SqliteEventJournal.open(data, clock, ZoneOffset.UTC, new TimeOrderedIds(clock, new Random(1)))) {
            journal.append(Stream.of(new Event.CalfOpened("312", "417"), new Event.CalfBorn(new When.At(birth)))
                    .map(event -> new NewEvent(calf, event, birth, Provenance.of(Provenance.Source.VOICE)))
                    .toList());
        }
        cups().add("CARDS");
    }

    private PrivateCups cups() {
        return cups.orElseThrow();
    }

    private static List<Path> pages() throws IOException {
        if (!Files.isDirectory(PAGES)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(PAGES)) {
            return all.filter(file -> file.toString().endsWith(".pdf")).sorted().toList();
        }
    }

    private List<Path> newPages() throws IOException {
        return pages().stream().filter(page -> !before.contains(page)).toList();
    }

    /** Waits for the next page that comes out. */
    private Path page() throws IOException, InterruptedException {
        while (newPages().isEmpty() || !isWhole(newPages().get(0))) {
            TimeUnit.MILLISECONDS.sleep(50);
        }
        return Files.move(newPages().get(0), folder.resolve(UUID.randomUUID() + ".pdf"));
    }

    private static boolean isWhole(Path page) throws IOException {
        byte[] bytes = Files.readAllBytes(page);
        return new String(bytes, Math.max(0, bytes.length - 10), Math.min(10, bytes.length), "ISO-8859-1")
                .contains("%%EOF");
    }

    private SmallDisk.Outcome strawbed(String... words) throws IOException {
        return in(session.orElseThrow(), words);
    }

    private SmallDisk.Outcome in(CommandSession process, String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--data", data.toString()));
        return process.run(all);
    }

    private void tells(SmallDisk.Outcome outcome, int code, String... parts) {
        assertThat(outcome.code()).as(outcome.printed()).isEqualTo(code);
        assertThat(outcome.printed()).contains(parts).doesNotContain("Exception");
    }

    @Test
    void a_card_comes_out_as_large_and_as_black_as_it_was_made() throws IOException, InterruptedException {
        tells(
                strawbed("printer", "use", "CARDS"),
                0,
                "cards go to the printer CARDS",
                "sheets go to the printer CARDS");
        tells(
                strawbed("card", "312", "--print"),
                0,
                "card-calf-312.pdf",
                "Handed over to the printer CARDS: job 1, the card of calf 312.");
        sameInk(data.resolve("cards/card-calf-312.pdf"), page());
        tells(strawbed("printer"), 0, "CARDS (for cards and sheets): ready", "handed over to CARDS");
        tells(strawbed("printer", "again", "1"), 0, "Handed over");
        sameInk(data.resolve("cards/card-calf-312.pdf"), page());
    }

    @Test
    void the_test_pages_come_out_at_their_size() throws IOException, InterruptedException {
        strawbed("printer", "use", "CARDS");
        tells(strawbed("printer", "test"), 0, "a test page for cards", "a test page for sheets", "fit to page");
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            try (PDDocument page = Loader.loadPDF(page().toFile())) {
                widths.add((double) page.getPage(0).getMediaBox().getWidth());
            }
        }
        assertThat(widths.stream().sorted().toList())
                .satisfiesExactly(
                        card -> assertThat(card).isCloseTo(432, within(1.0)),
                        sheet -> assertThat(sheet).isCloseTo(612, within(1.0)));
    }

    @Test
    void for_a_paused_printer_a_page_waits_and_goes_when_it_is_resumed() throws IOException, InterruptedException {
        strawbed("printer", "use", "CARDS", "--for", "cards");
        cups().order("/usr/sbin/cupsdisable", "-r", "no paper", "CARDS");
        tells(
                strawbed("card", "312", "--print"),
                0,
                "Waits for the printer CARDS: job 1, the card of calf 312. The printer CARDS is paused (no paper).",
                "Nothing is lost");
        tells(strawbed("printer", "retry"), 1, "is paused");
        cups().order("/usr/sbin/cupsenable", "CARDS");
        cups().order("/usr/sbin/cupsreject", "CARDS");
        tells(strawbed("printer", "retry"), 1, "takes no jobs");
        cups().order("/usr/sbin/cupsaccept", "CARDS");
        tells(strawbed("printer", "retry"), 0, "Handed over to the printer CARDS: job 1");
        sameInk(data.resolve("cards/card-calf-312.pdf"), page());
    }

    @Test
    void for_a_printer_that_is_gone_a_page_waits_and_goes_to_the_next_one() throws IOException, InterruptedException {
        strawbed("printer", "use", "CARDS");
        cups().add("LABELS");
        cups().remove("CARDS");
        tells(
                strawbed("card", "312", "--print"),
                0,
                "The printer CARDS is gone; there are: LABELS.",
                "Nothing is lost");
        tells(strawbed("printer", "use", "CARDS"), 2, "There is no printer \"CARDS\"", "There are: LABELS");
        tells(strawbed("printer", "use", "LABELS"), 0, "so do the pages that wait: 1");
        cups().remove("LABELS");
        try (CommandSession nowhere = CommandSession.start(List.of(), "localhost:1")) {
            tells(in(nowhere, "printer", "retry"), 1, "This computer knows no printer now", "Nothing is lost");
            tells(in(nowhere, "printer"), 0, "none. Set one up", "LABELS (for cards and sheets)");
        }
        cups().add("LABELS");
        tells(strawbed("printer", "retry"), 0, "Handed over to the printer LABELS");
        sameInk(data.resolve("cards/card-calf-312.pdf"), page());
        cups().remove("LABELS");
    }

    @Test
    void without_a_chosen_printer_the_card_is_written_and_the_command_tells_what_to_do()
            throws IOException, InterruptedException {
        tells(
                strawbed("card", "312", "--print"),
                2,
                "card-calf-312.pdf",
                "No printer is chosen for cards",
                "printer use");
        assertThat(data.resolve("cards/card-calf-312.pdf")).exists();
        assertThat(data.resolve("print-queue")).doesNotExist();
        tells(strawbed("printer", "drop", "3"), 2, "There is no page 3");
        tells(strawbed("printer", "use", "CARDS", "--for", "walls"), 2, "not for \"walls\"");
    }

    @Test
    void without_lpr_a_page_waits_and_the_package_is_named() throws IOException, InterruptedException {
        List<String> hide =
                List.of("unshare", "-m", "sh", "-c", "mount --bind /dev/null /usr/bin/lpr && exec \"$@\"", "sh");
        List<String> probe = new ArrayList<>(hide);
        probe.add("true");
        assumeThat(PrivateCups.run(probe, cups().address()).code())
                .as("skipped: this machine allows no mount name space in which lpr could be hidden")
                .isZero();
        strawbed("printer", "use", "CARDS");
        try (CommandSession without = CommandSession.start(hide, cups().address())) {
            tells(in(without, "card", "312", "--print"), 0, "lpr does not start", "cups-bsd", "Nothing is lost");
        }
    }

    /** Text comes out as shapes, so the ink is compared: each dot of one has a dot of the other beside it. */
    private static void sameInk(Path made, Path printed) throws IOException {
        try (PDDocument one = Loader.loadPDF(made.toFile());
                PDDocument other = Loader.loadPDF(printed.toFile())) {
            assertThat(other.getNumberOfPages()).isEqualTo(one.getNumberOfPages());
            assertThat(other.getPage(0).getMediaBox().getWidth())
                    .isCloseTo(one.getPage(0).getMediaBox().getWidth(), within(1f));
            assertThat(other.getPage(0).getMediaBox().getHeight())
                    .isCloseTo(one.getPage(0).getMediaBox().getHeight(), within(1f));
            BufferedImage wanted = new PDFRenderer(one).renderImageWithDPI(0, DOTS, ImageType.GRAY);
            BufferedImage got = new PDFRenderer(other).renderImageWithDPI(0, DOTS, ImageType.GRAY);
            assertThat(lonely(wanted, got)).as("ink that did not come out").isLessThan(0.001);
            assertThat(lonely(got, wanted)).as("ink that nobody asked for").isLessThan(0.001);
        }
    }

    /** The share of one picture's dark dots that have none within a dot in the other. */
    private static double lonely(BufferedImage picture, BufferedImage other) {
        int dark = 0;
        int lonely = 0;
        for (int y = 1; y < Math.min(picture.getHeight(), other.getHeight()) - 1; y++) {
            for (int x = 1; x < Math.min(picture.getWidth(), other.getWidth()) - 1; x++) {
                if (isDark(picture, x, y)) {
                    dark++;
                    lonely += hasNeighbour(other, x, y) ? 0 : 1;
                }
            }
        }
        assertThat(dark).as("dots of ink").isGreaterThan(1000);
        return (double) lonely / dark;
    }

    private static boolean hasNeighbour(BufferedImage picture, int x, int y) {
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                if (isDark(picture, x + dx, y + dy)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isDark(BufferedImage picture, int x, int y) {
        return (picture.getRGB(x, y) & 0xFF) < SHADE;
    }
}
