package strawbed.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.audio.Sound;
import strawbed.hearing.FarmGrammar;
import strawbed.speech.SpeechModel;
import strawbed.speech.vosk.VoskModel;
import strawbed.statement.Thresholds;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;

/**
 * The accuracy bench: {@code mvn -B -Pbench process-test-classes} prints how well the program hears and writes it to
 * reports/hearing.md. {@code -Dbench.every=5} takes each fifth sound only; {@code -Dbench.parts=noise,talk} some of the
 * parts table, noise, rough, talk, alone, worth, labels (the last where {@code -Dbench.grammar} and {@code -Dbench.labels} are
 * given); {@code -Dbench.set=true} sets the thresholds by the tuning voices first.
 */
public final class Bench {
    private static final Path SHARED = Path.of("..", "shared", "speech");
    private static final Path REPORT = Path.of("reports", "hearing.md");

    private final PrintStream screen = System.out;
    private final int every = Integer.parseInt(System.getProperty("bench.every", "1"));
    private final List<String> parts =
            List.of(System.getProperty("bench.parts", "table,noise,rough,talk,alone,worth,labels")
                    .split(","));
    private final Material material = new Material(Path.of("target", "bench"));
    private final Report report = new Report(screen);

    private Bench() {}

    /** Runs it all and ends the process at once, as the program does: the speech library fails in a slow ending. */
    public static void main(String[] args) throws IOException, InterruptedException {
        new Bench().run();
        System.exit(0);
    }

    private void run() throws IOException, InterruptedException {
        // First, so that bad labels are told before hours of hearing.
        Optional<Labels> labels = parts.contains("labels")
                ? Labels.given(System.getProperty("bench.grammar", ""), System.getProperty("bench.labels", ""))
                : Optional.empty();
        report.head(every);
        labels.ifPresent(given -> given.report(report));
        if (parts.contains("table")) {
            table();
        }
        if (parts.stream().anyMatch(List.of("noise", "rough", "talk", "alone", "worth")::contains)) {
            try (SpeechModel model = VoskModel.load(Path.of(System.getProperty("strawbed.model")))) {
                ears(model);
            }
        }
        Files.createDirectories(REPORT.getParent());
        Files.writeString(REPORT, report.text());
        screen.println("Written to " + REPORT + ".");
    }

    private void table() throws IOException, InterruptedException {
        List<VoiceRun> voices = new ArrayList<>();
        Map<String, String> leftOut = new LinkedHashMap<>();
        for (Speaker speaker : Speaker.all()) {
            try {
                List<Spoken> spoken = material.table(speaker, every);
                voices.add(VoiceRun.of(speaker, spoken));
                screen.println(speaker.name() + ": heard");
            } catch (IOException e) {
                leftOut.put(speaker.name(), String.valueOf(e.getMessage()));
                screen.println(speaker.name() + ": left out");
            }
        }
        Optional<People> people = Files.isDirectory(SHARED) ? Optional.of(people()) : Optional.empty();
        report.add(new HearingTable().written(voices, leftOut, people, Costs.measured(material)));
    }

    private void ears(SpeechModel model) throws IOException, InterruptedException {
        FarmGrammar farm = Grammars.ofTheTable();
        UtteranceInterpreter interpreter = new UtteranceInterpreter(farm.grammar(), Thresholds.set());
        Crew crew = new Crew(
                () -> new Ear(model, farm, interpreter, Thresholds.set().readings()));
        Sayings sayings = new Sayings(farm.grammar(), interpreter);
        List<Speaker> unseen = spoken(false);
        List<Speaker> tuning = spoken(true);
        Babble babble = new Babble(chatter(tuning));
        if (parts.contains("worth")) {
            new Worth(new NoiseGrid(material, babble, tuning), crew, sayings, report, every).measured();
        }
        NoiseGrid grid = new NoiseGrid(material, babble, unseen);
        if (parts.contains("noise")) {
            new InNoise(grid, crew, sayings, report, every).measured();
        }
        if (parts.contains("rough")) {
            Sound readBack = material.said("Calf 207: bull, navel dipped. Confirm?", Speaker.INSIDE, 1);
            new Rough(grid, crew, sayings, report, every, readBack).measured();
        }
        if (parts.contains("talk")) {
            List<Path> others = Files.isDirectory(SHARED) ? wavFiles("human-other") : List.of();
            new Talk(new ForeignSpeech(grid, crew), others, report, every).measured();
        }
        if (parts.contains("alone")) {
            new Alone(new ForeignSpeech(grid, crew), new NoiseAlone(babble), report, every).measured();
        }
    }

    /** The voices that are installed. */
    private List<Speaker> spoken(boolean tuning) {
        List<Speaker> here = new ArrayList<>();
        for (Speaker speaker : Speaker.all()) {
            try {
                if (speaker.tuning() == tuning) {
                    material.said("calf twelve", speaker, 1);
                    here.add(speaker);
                }
            } catch (IOException e) {
                report.line("Left out: the voice " + speaker.name() + " is not here (" + e.getMessage() + ").");
            }
        }
        return here;
    }

    private List<Sound> chatter(List<Speaker> speakers) throws IOException {
        List<String> lines = Babble.lines("/chatter-sentences.txt");
        List<Sound> spoken = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            spoken.add(material.said(lines.get(i), speakers.get(i % speakers.size()), 1));
        }
        return spoken;
    }

    private People people() throws IOException {
        return People.heard(
                material,
                wavFiles("human-digits"),
                SHARED.resolve("human-digits-sequence.wav"),
                wavFiles("human-other"));
    }

    private static List<Path> wavFiles(String folder) throws IOException {
        try (Stream<Path> files = Files.list(SHARED.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".wav"))
                    .sorted()
                    .toList();
        }
    }
}
