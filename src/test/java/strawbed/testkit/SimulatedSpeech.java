package strawbed.testkit;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import strawbed.event.Event;
import strawbed.event.Provenance;

/** How a simulated statement came into the record: with words about as many as a person says, and a sound's name. */
final class SimulatedSpeech {
    private static final DateTimeFormatter SOUND =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssSSS", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final List<String> DIGITS =
            List.of("oh", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine");

    private SimulatedSpeech() {}

    static Provenance of(SimulatedHerd.Told told) {
        Event first = told.facts().get(0).event();
        if (first instanceof Event.ProtocolAdopted) {
            return Provenance.of(Provenance.Source.COMMAND);
        }
        if (first instanceof Event.EventWithdrawn) {
            return Provenance.of(Provenance.Source.BUTTON);
        }
        List<String> words = new ArrayList<>();
        if (told.facts().get(0).calf() != null) {
            words.add("calf");
            String.valueOf(Math.abs(told.order()) % SimulatedHerd.NUMBERS)
                    .chars()
                    .forEach(digit -> words.add(DIGITS.get(digit - '0')));
        }
        for (SimulatedHerd.Fact fact : told.facts()) {
            for (String word : fact.event().type().split("(?=[A-Z])", -1)) {
                words.add(word.toLowerCase(Locale.ROOT));
            }
        }
        return new Provenance(
                Provenance.Source.VOICE,
                words,
                told.order() % 9 == 0 ? "unsure" : "understood",
                "5c1f0b7e9d2a",
                "model-en-us",
                SOUND.format(told.recordedAt()) + "-" + told.order() + ".wav",
                null);
    }
}
