package strawbed.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** The part of the report about speech that is no statement. */
final class Talk {
    private static final int CHATTERING_VOICES = 3;

    private final ForeignSpeech speech;
    private final List<Path> people;
    private final Report report;
    private final int every;

    Talk(ForeignSpeech speech, List<Path> people, Report report, int every) {
        this.speech = speech;
        this.people = people;
        this.report = report;
        this.every = every;
    }

    void measured() throws InterruptedException {
        report.line("## What is no statement");
        report.line("");
        report.line("| what | n | taken as understood | goal | asked about |");
        report.line("|---|---:|---:|---|---:|");
        if (people.isEmpty()) {
            report.line("| people who order coffee: left out, no recordings are in ../shared/speech | | | | |");
        } else {
            speech.people(people).forEach((what, count) -> row(what, count, "0"));
        }
        row(
                "talk in the barn of our own writing, " + CHATTERING_VOICES + " voices each",
                speech.talk(some(Babble.lines("/chatter-sentences.txt")), CHATTERING_VOICES),
                "1 of 300");
        row("phrases made to sound like ours", speech.talk(some(Babble.lines("/sound-alikes.txt")), 1), "10 of 200");
        report.line("");
        speech.understood().forEach(one -> report.line("- " + one.replace("|", "\\|")));
        report.line("");
    }

    private List<String> some(List<String> lines) {
        return IntStream.range(0, lines.size())
                .filter(i -> i % every == 0)
                .mapToObj(lines::get)
                .toList();
    }

    private void row(String what, ForeignSpeech.Count count, String goal) {
        report.line(count.row(what, goal));
    }
}
