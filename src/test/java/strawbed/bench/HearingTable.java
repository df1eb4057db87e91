package strawbed.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The report, in Markdown. */
final class HearingTable {
    private final StringBuilder text = new StringBuilder();

    private void line(String format, Object... values) {
        text.append(values.length == 0 ? format : String.format(Locale.ROOT, format, values))
                .append('\n');
    }

    String written(List<VoiceRun> voices, Map<String, String> leftOut, Optional<People> people, Costs costs) {
        line("## The table of spoken sentences");
        line("");
        line("Each sentence of `spoken-sentences.csv` is spoken to a file, 0.3 s of quiet around it, and given to");
        line("`strawbed hear --json` with the table's 40 calves.");
        table(voices, leftOut);
        people(people);
        costs(voices, costs);
        confusions(voices);
        return text.toString();
    }

    private void table(List<VoiceRun> voices, Map<String, String> leftOut) {
        line("");
        line("| voice | n | " + Report.heads() + " |");
        line("|---|---:|" + "---:|".repeat(Outcome.values().length));
        voices.forEach(voice -> row(voice.speaker().name(), List.of(voice)));
        row(
                "**tuning voices**",
                voices.stream().filter(voice -> voice.speaker().tuning()).toList());
        row(
                "**test voices**",
                voices.stream().filter(voice -> !voice.speaker().tuning()).toList());
        line("| goal for voices that were not tuned on | | at least 95% | | | | at most 2% |");
        line("");
        leftOut.forEach((voice, reason) -> line("Left out: the voice " + voice + " is not here (" + reason + ")."));
    }

    private void row(String name, List<VoiceRun> voices) {
        if (voices.isEmpty()) {
            return;
        }
        Tally tally = Tally.of(
                voices.stream().flatMap(voice -> voice.outcomes().stream()).toList());
        List<String> cells = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            cells.add(tally.written(outcome));
        }
        line("| " + name + " | " + tally.total() + " | " + String.join(" | ", cells) + " |");
    }

    private void people(Optional<People> heard) {
        line("");
        line("### Real people");
        line("");
        if (heard.isEmpty()) {
            line("Left out: there are no recordings of real people in ../shared/speech.");
            return;
        }
        People people = heard.get();
        line("| what | n | figure | goal |");
        line("|---|---:|---|---|");
        line(
                "| single digits right, ten-digit grammar (Free Spoken Digit Dataset) | %d | %s | at least 92%% |",
                people.digits(), Tally.written(people.digitsRight(), people.digits()));
        line(
                "| rows of five digits, \"zero\" and \"oh\" (Vosk API examples) | %d | %s | exact |",
                People.ROWS.size(),
                people.sequence().equals(People.ROWS) ? "exact" : "heard: " + String.join("; ", people.sequence()));
        line(
                "| orders of coffee taken as understood (Speech-to-Intent Benchmark) | %d | %d | 0 |",
                people.others(), people.othersUnderstood());
        line("| orders of coffee asked about | %d | %d | - |", people.others(), people.othersAsked());
    }

    private void costs(List<VoiceRun> voices, Costs costs) {
        Duration sound = voices.stream().map(VoiceRun::sound).reduce(Duration.ZERO, Duration::plus);
        Duration time = voices.stream().map(voice -> voice.heard().time()).reduce(Duration.ZERO, Duration::plus);
        line("");
        line("### Cost");
        line("");
        line(
                "On %d processors, Java %s, beside whatever else ran.",
                Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"));
        line("");
        line("| what | figure | goal |");
        line("|---|---|---|");
        line(
                "| hearing the table: time for each second of sound | %.2f s (%.0f s for %.0f s) | - |",
                seconds(time) / seconds(sound), seconds(time), seconds(sound));
        line(
                "| cold start: a fresh process with the 40 calves, from its start to its end on one word | %.1f s | under 3 s |",
                seconds(costs.coldStart()));
        line(
                "| demo: its time against its sound | %.0f%% (%.1f s for %.1f s) | under 25%% |",
                100 * seconds(costs.demo()) / seconds(costs.night()), seconds(costs.demo()), seconds(costs.night()));
    }

    private static double seconds(Duration duration) {
        return duration.toMillis() / 1000.0;
    }

    private void confusions(List<VoiceRun> voices) {
        List<Confusion> all =
                voices.stream().flatMap(voice -> voice.confusions().stream()).toList();
        line("");
        line("### What was confused");
        part("#### Wrong as understood", all, outcome -> outcome == Outcome.WRONG);
        part("#### Asked", all, outcome -> outcome == Outcome.ASKED_WRONG || outcome == Outcome.ASKED_RIGHT);
        part("#### Not understood", all, outcome -> outcome == Outcome.NOT_UNDERSTOOD);
    }

    private void part(String head, List<Confusion> all, Predicate<Outcome> kind) {
        Map<String, List<Confusion>> bySaid = all.stream()
                .filter(confusion -> kind.test(confusion.outcome()))
                .collect(Collectors.groupingBy(Confusion::said, LinkedHashMap::new, Collectors.toList()));
        line("");
        line(head);
        line("");
        if (bySaid.isEmpty()) {
            line("None.");
            return;
        }
        line("| sentence | said | heard instead | voice |");
        line("|---|---|---|---|");
        bySaid.values().stream()
                .sorted(Comparator.comparing((List<Confusion> some) -> -some.size()))
                .flatMap(List::stream)
                .forEach(one -> line("| " + one.said() + " | " + one.saidPart() + " | "
                        + one.heardPart().replace("|", "\\|") + " | " + one.voice() + right(one) + " |"));
    }

    private static String right(Confusion confusion) {
        return confusion.outcome() == Outcome.ASKED_RIGHT ? " (asked the right thing)" : "";
    }
}
