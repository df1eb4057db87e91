package strawbed.hearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strawbed.audio.NoiseReduction;
import strawbed.audio.Sound;
import strawbed.speech.Envelope;
import strawbed.speech.Hypothesis;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Utterance;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;

/**
 * Hears one sound four times: as it is, and with less noise, this also a little faster and slower. What they agree on is
 * a better reading than any of them, and what they do not agree on an honest doubt.
 */
final class Passes {
    private static final double FASTER = 1.07;
    private static final double SLOWER = 0.93;

    /** Noise is turned down by this much at most, in dB. */
    private static final double LESS_NOISE = 12;

    private Passes() {}

    static Part hear(Sound sound, Recognizers recognizers, Interpreter interpreter, Listening listening, Times times) {
        Utterance asItIs = recognizers.ours().recognize(sound);
        SpeechTime speech = times.of(sound, asItIs);
        Evidence evidence = evidence(sound, asItIs, recognizers.ours());
        Interpretation meaning = interpreter.interpret(evidence, speech, listening);
        // Most of what is no statement is found out above, so that the dearest hearing is spared.
        if (!(meaning instanceof Interpretation.NoMatch) && recognizers.any().isPresent()) {
            evidence = evidence.withFree(freeScore(recognizers.any().get().recognize(sound)));
            meaning = interpreter.interpret(evidence, speech, listening);
        }
        return new Part(sound, evidence, speech, meaning);
    }

    private static Evidence evidence(Sound sound, Utterance asItIs, SpeechRecognizer ours) {
        Sound clearer = NoiseReduction.of(sound, LESS_NOISE);
        List<List<Hypothesis>> passes = new ArrayList<>(List.of(asItIs.hypotheses()));
        for (Sound variant : List.of(clearer, clearer.atSpeed(FASTER), clearer.atSpeed(SLOWER))) {
            passes.add(ours.recognize(variant).hypotheses());
        }
        return new Evidence(passes, OptionalDouble.empty(), Optional.of(Envelope.of(clearer)));
    }

    /** Free speech that heard no word does not fit at all. */
    private static double freeScore(Utterance free) {
        return free.hypotheses().isEmpty()
                ? Double.NEGATIVE_INFINITY
                : free.hypotheses().get(0).score();
    }

    /** When speech began. */
    interface Times {
        SpeechTime of(Sound sound, Utterance utterance);
    }
}
