package strawbed.app;

import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import strawbed.audio.Sound;
import strawbed.dialog.Prompt;
import strawbed.hearing.Heard;
import strawbed.hearing.Phrasebook;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.SpokenSentence;

/** A person who talks to a recorder without a microphone: words and sound go in, prompts come out. */
final class ScriptedNight {
    private static final UtteranceInterpreter INTERPRETER = new UtteranceInterpreter(
            Phrasebook.read(Grammars.source(), PreparedSentences.text())
                    .with(List.of())
                    .grammar(),
            Listener.THRESHOLDS);

    private final Recorder recorder;
    private final Clock clock;
    private final Random random = new Random(20261125);

    ScriptedNight(Recorder recorder, Clock clock) {
        this.recorder = recorder;
        this.clock = clock;
    }

    List<Prompt> hears(String words) {
        return hears(words, false);
    }

    /** The sound is noise of a second, so that no disk can make it smaller. */
    List<Prompt> hears(String words, boolean goesOn) {
        SpeechTime speech = new SpeechTime(clock.instant(), SpokenSentence.ZONE);
        Listening listening = new Listening(new TreeSet<>(recorder.herd().openNumbers()), recorder.knowsSameCalf());
        Interpretation meaning = INTERPRETER.interpret(List.of(Grammars.reading(words, 0)), speech, listening);
        short[] noise = new short[Sound.RATE];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (short) random.nextInt();
        }
        return recorder.heard(new Heard(Sound.of(noise, 0), meaning, speech, Evidence.of(List.of()), goesOn));
    }
}
