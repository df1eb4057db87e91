package strawbed.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import strawbed.app.CommandRun;
import strawbed.testkit.SpokenSentence;

/**
 * What hearing costs in time.
 *
 * @param coldStart a fresh process from its start to its end, on a file of one word
 * @param demo the replay of the invented night, with its cards
 * @param night how long that night's sound is
 */
record Costs(Duration coldStart, Duration demo, Duration night) {
    static Costs measured(Material material) throws IOException, InterruptedException {
        Path out = Files.createTempDirectory("strawbed-bench");
        try {
            long started = System.nanoTime();
            CommandRun run = CommandRun.of("demo", "--out", out.toString());
            Duration demo = Duration.ofNanos(System.nanoTime() - started);
            if (run.code() != 0) {
                throw new IllegalStateException("demo ended with code " + run.code() + ": " + run.err());
            }
            return new Costs(coldStart(material), demo, Material.length(Path.of("demo-data", "night.wav")));
        } finally {
            delete(out);
        }
    }

    private static Duration coldStart(Material material) throws IOException, InterruptedException {
        Path word = material.word("twelve");
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dstrawbed.model=" + System.getProperty("strawbed.model"),
                "-cp",
                System.getProperty("java.class.path"),
                "strawbed.app.Main",
                "hear",
                "--calves",
                String.join(",", SpokenSentence.OPEN_CALVES),
                word.toString());
        long started = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        int code = process.waitFor();
        Duration time = Duration.ofNanos(System.nanoTime() - started);
        if (code != 0) {
            throw new IllegalStateException("a fresh process ended with code " + code);
        }
        return time;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
