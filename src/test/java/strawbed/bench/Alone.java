package strawbed.bench;

import java.util.List;
import java.util.stream.IntStream;

/** The part of the report about an hour in which nobody speaks to the recorder. */
final class Alone {
    private static final int MINUTES = 60;

    private final ForeignSpeech speech;
    private final NoiseAlone noise;
    private final Report report;
    private final int minutes;

    /** @param every an hour is heard where it is 1, a third of one where it is 3 */
    Alone(ForeignSpeech speech, NoiseAlone noise, Report report, int every) {
        this.speech = speech;
        this.noise = noise;
        this.report = report;
        this.minutes = Math.max(1, MINUTES / every);
    }

    void measured() throws InterruptedException {
        report.line("## Noise alone");
        report.line("");
        report.line("| minutes of | n | taken as understood | goal | asked about |");
        report.line("|---|---:|---:|---|---:|");
        int understood = 0;
        int asked = 0;
        // Each kind by itself, as this takes long and a row shows how far it is.
        for (int kind = 0; kind < Math.min(minutes, NoiseAlone.kinds()); kind++) {
            ForeignSpeech.Count count = speech.noise(noise, minutesOf(kind));
            report.line(count.row(NoiseAlone.name(kind), "0"));
            understood += count.understood();
            asked += count.asked();
        }
        report.line(new ForeignSpeech.Count(minutes, understood, asked).row("all of it", "0"));
        report.line("");
        speech.understood().forEach(one -> report.line("- taken: " + one));
        speech.askedAbout().forEach(one -> report.line("- asked about: " + one));
        report.line("");
    }

    private List<Integer> minutesOf(int kind) {
        return IntStream.range(0, minutes)
                .filter(minute -> minute % NoiseAlone.kinds() == kind)
                .boxed()
                .toList();
    }
}
