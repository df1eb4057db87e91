package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.calf.CalfRecord;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/**
 * A whole birth by voice alone, with nothing but the words of README and crib sheet; by touch alone it is in
 * {@link StationWindowIT}. Calf and times are invented.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HandsFreeBirthIT {
    private static final String YES = "confirm entry";
    private static final List<String> SAID = List.of(
            "new calf three one two, heifer, born ten minutes ago",
            YES,
            "calf three one two, breathing well, navel dipped with iodine",
            YES,
            "same calf, easy assist",
            YES,
            "same calf, licked, dried with towel",
            YES,
            "calf three one two, brix twenty four point five, fed three and a half quarts by bottle",
            YES,
            "calf three one two, weight seventy pounds by tape",
            YES,
            "same calf, tag four one two seven",
            YES,
            "same calf, moved to hutch four",
            "cancel entry",
            "same calf, moved to hutch nine",
            YES,
            "same calf, left half a quart",
            YES,
            "undo last entry",
            "how is calf three one two",
            "what is due");

    @TempDir
    Path data;

    private static Set<String> words(String text) {
        return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)).collect(Collectors.toSet());
    }

    private String crib() throws IOException {
        Path file = data.resolve("crib.pdf");
        CommandRun run = CommandRun.of("crib", "--data", data.toString(), "-o", file.toString());
        assertThat(run.code()).as(run.err()).isZero();
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void every_word_of_it_stands_in_readme_or_on_the_crib_sheet() throws IOException {
        Set<String> known = words(Files.readString(Path.of("README.md")) + " " + crib());
        assertThat(words(String.join(" ", SAID))).isSubsetOf(known);
    }

    @Test
    void a_whole_birth_is_recorded_by_voice_alone() throws IOException {
        try (StationRig station = new StationRig(data)) {
            station.opens();
            Instant begin = station.clock.instant();
            for (String words : SAID) {
                station.says(words);
                station.waits(Duration.ofSeconds(2));
            }
            CalfRecord calf = station.stage().herd().byNumber("312").orElseThrow();
            List<RecordedEvent> counts = calf.history().stream()
                    .filter(entry -> !entry.withdrawn())
                    .map(CalfRecord.Entry::recorded)
                    .toList();
            assertThat(counts)
                    .filteredOn(fact -> !(fact.event() instanceof Event.CalfBorn))
                    .extracting(RecordedEvent::event)
                    .containsExactly(
                            new Event.CalfOpened("312", null),
                            new Event.SexNoted(Term.Sex.FEMALE),
                            new Event.BreathingNoted(Term.Breathing.WELL),
                            new Event.NavelDipped(Term.NavelAgent.IODINE, null),
                            new Event.CalvingEaseNoted(Term.CalvingEase.EASY_ASSIST, null),
                            new Event.LickingNoted(true),
                            new Event.CalfDried(Term.DryingMeans.TOWEL),
                            new Event.ColostrumTestedByBrix(new BigDecimal("24.5")),
                            new Event.ColostrumFed(
                                    new Volume(new BigDecimal("3.5"), VolumeUnit.QUART),
                                    Term.FeedingMethod.BOTTLE,
                                    null),
                            new Event.CalfWeighed(
                                    new Mass(new BigDecimal(70), MassUnit.POUND), Term.WeighingMethod.TAPE),
                            new Event.EarTagFitted("4127", Term.TagScheme.FARM),
                            new Event.CalfMoved("hutch 9"));
            assertThat(counts).extracting(fact -> fact.provenance().source()).containsOnly(Provenance.Source.VOICE);
            assertThat(Duration.between(calf.bornAbout().orElseThrow(), begin))
                    .as("ten minutes before it was said")
                    .isBetween(Duration.ofMinutes(9), Duration.ofMinutes(10));
            assertThat(station.known().told().text()).startsWith("Due next: calf 312");
        }
    }
}
