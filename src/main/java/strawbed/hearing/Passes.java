package strawbed.hearing;

import java.util.ArrayList;
import java.util.List;
import strawbed.audio.Sound;
import strawbed.speech.Hypothesis;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Utterance;
import strawbed.statement.Interpretation;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;

/**
 * Hears one sound several times, as it is and played a little faster and slower, and takes the meaning found most
 * often. Agreement is a better reading and an honest doubt: what only one pass finds is asked about.
 */
final class Passes {
    private static final double[] SPEEDS = {1.07, 0.93};

    private Passes() {}

    static Part hear(
            Sound sound, SpeechRecognizer recognizer, Interpreter interpreter, Listening listening, Times times) {
        Utterance asItIs = recognizer.recognize(sound);
        SpeechTime speech = times.of(sound, asItIs);
        List<Interpretation> meanings = new ArrayList<>();
        meanings.add(interpreter.interpret(asItIs.hypotheses(), speech, listening));
        for (double speed : SPEEDS) {
            List<Hypothesis> readings =
                    recognizer.recognize(sound.atSpeed(speed)).hypotheses();
            meanings.add(interpreter.interpret(readings, speech, listening));
        }
        return new Part(sound, asItIs.hypotheses(), speech, interpreter.agreed(meanings));
    }

    /** When speech began. */
    interface Times {
        SpeechTime of(Sound sound, Utterance utterance);
    }
}
