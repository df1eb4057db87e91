package strawbed.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** The table as one voice spoke it and as it was heard. */
public record VoiceRun(Speaker speaker, List<Spoken> spoken, HearRun heard) {
    public VoiceRun {
        spoken = List.copyOf(spoken);
    }

    /** Listens to all that the voice spoke. */
    public static VoiceRun of(Speaker speaker, List<Spoken> spoken) {
        return new VoiceRun(
                speaker,
                spoken,
                HearRun.forCalves(spoken.stream().map(Spoken::file).toList()));
    }

    /** How each sentence came out, in the table's order. */
    public List<Outcome> outcomes() {
        return spoken.stream()
                .map(sentence -> sentence.outcome(heard.of(sentence.file())))
                .toList();
    }

    /** What was not wholly right. */
    public List<Confusion> confusions() {
        return spoken.stream()
                .map(sentence -> Confusion.of(speaker.name(), sentence, heard.of(sentence.file())))
                .filter(confusion -> confusion.outcome() != Outcome.RIGHT)
                .toList();
    }

    Duration sound() {
        return spoken.stream()
                .map(Spoken::file)
                .map(Path::toAbsolutePath)
                .map(Material::length)
                .reduce(Duration.ZERO, Duration::plus);
    }
}
