package strawbed.statement;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;

/**
 * Weighs the meanings that several hearings of one sound allow. A meaning lags behind by how much worse its best reading
 * is than the best one that was heard at all, on the average of all hearings; the one that lags least is taken. It is
 * asked about when another is close, when few hearings found it, when even it lags far, or when free speech fits the
 * sound better.
 */
final class Weighing {
    private final Thresholds thresholds;
    private final Evidence evidence;
    private final Map<Object, Candidate> bySense = new LinkedHashMap<>();

    /** One meaning: its best reading, how far it lags in each hearing, how many had it first, its words by the clock. */
    private static final class Candidate {
        private Reading reading;
        private final Hypothesis plainest;
        private final double[] lags;
        private int votes;

        private Candidate(Reading reading, Hypothesis plainest, int passes, double missing) {
            this.reading = reading;
            this.plainest = plainest;
            lags = new double[passes];
            Arrays.fill(lags, missing);
        }

        private double lag() {
            return Arrays.stream(lags).average().orElseThrow();
        }
    }

    private Weighing(Evidence evidence, Thresholds thresholds) {
        this.evidence = evidence;
        this.thresholds = thresholds;
    }

    /**
     * What the sound was taken for; empty when no reading means anything.
     *
     * @param reader the meaning of a reading that parses whole
     */
    static Optional<Weighed> of(
            Evidence evidence, Thresholds thresholds, Function<Hypothesis, Optional<Reading>> reader) {
        Weighing weighing = new Weighing(evidence, thresholds);
        Map<List<String>, Optional<Reading>> known = new LinkedHashMap<>();
        for (int pass = 0; pass < evidence.passes().size(); pass++) {
            weighing.hear(
                    pass, hypothesis -> known.computeIfAbsent(hypothesis.texts(), words -> reader.apply(hypothesis)));
        }
        return weighing.verdict();
    }

    private void hear(int pass, Function<Hypothesis, Optional<Reading>> reader) {
        List<Hypothesis> readings = evidence.passes().get(pass);
        boolean anyBefore = false;
        boolean clearBefore = false;
        for (Hypothesis hypothesis : readings.subList(0, Math.min(readings.size(), thresholds.readings()))) {
            Optional<Reading> read = reader.apply(hypothesis);
            if (read.isEmpty()) {
                continue;
            }
            double lag = Math.min(thresholds.missing(), readings.get(0).score() - hypothesis.score());
            Candidate candidate = bySense.computeIfAbsent(
                    read.get().meaning().sense(),
                    sense -> new Candidate(
                            read.get(), hypothesis, evidence.passes().size(), thresholds.missing()));
            if (lag < Arrays.stream(candidate.lags).min().orElseThrow()) {
                candidate.reading = read.get();
            }
            candidate.lags[pass] = Math.min(candidate.lags[pass], lag);
            boolean clear = read.get().isClear();
            candidate.votes += clear ? (clearBefore ? 0 : 1) : (anyBefore ? 0 : 1);
            anyBefore = true;
            clearBefore |= clear;
        }
    }

    private Optional<Weighed> verdict() {
        Optional<Candidate> clear = least(candidates(true));
        Optional<Candidate> asked = least(candidates(false));
        if (clear.isPresent()
                && asked.map(other -> clear.get().lag() - other.lag() <= thresholds.plausible())
                        .orElse(true)) {
            return Optional.of(judged(clear.get(), candidates(true)));
        }
        return asked.map(candidate -> judged(candidate, bySense.values()));
    }

    private List<Candidate> candidates(boolean clear) {
        return bySense.values().stream()
                .filter(candidate -> candidate.reading.isClear() == clear)
                .toList();
    }

    private static Optional<Candidate> least(Collection<Candidate> some) {
        return some.stream().min(Comparator.comparingDouble(Candidate::lag));
    }

    private Weighed judged(Candidate best, Collection<Candidate> rivals) {
        Interpretation meaning = best.reading.meaning();
        List<Misgiving> against = misgivings(best, thresholds.askLag(), thresholds.rejectFree());
        if (!against.isEmpty()) {
            return new Weighed(new Interpretation.NoMatch(meaning.words()), against);
        }
        Optional<Misgiving.Rival> rival = rival(best, rivals);
        if (rival.isPresent()) {
            Doubt soundsLike = new Doubt.SoundsLike(rival.get().words());
            return new Weighed(Doubted.because(meaning, soundsLike), List.of(rival.get()));
        }
        List<Misgiving> wavering = new ArrayList<>(misgivings(best, thresholds.lag(), mostFree(meaning)));
        int hearings = evidence.passes().size();
        if (best.votes < thresholds.votes() * hearings) {
            wavering.add(new Misgiving.FewHearings(best.votes, hearings));
        }
        leftOut(best).ifPresent(wavering::add);
        return new Weighed(wavering.isEmpty() ? meaning : Doubted.because(meaning, otherWords(best)), wavering);
    }

    private List<Misgiving> misgivings(Candidate best, double mostBehind, double mostFree) {
        List<Misgiving> misgivings = new ArrayList<>();
        if (best.lag() > mostBehind) {
            misgivings.add(new Misgiving.LagsBehind(best.lag(), mostBehind));
        }
        double better = freeLead(best);
        if (better > mostFree) {
            misgivings.add(new Misgiving.FreeSpeechFits(better, mostFree));
        }
        return misgivings;
    }

    private Optional<Misgiving.Rival> rival(Candidate best, Collection<Candidate> rivals) {
        return least(rivals.stream()
                        .filter(other -> other != best && other.lag() - best.lag() < margin(best, other))
                        .toList())
                .map(other ->
                        new Misgiving.Rival(other.reading.words(), other.lag() - best.lag(), margin(best, other)));
    }

    private double margin(Candidate best, Candidate other) {
        if (other.reading.namesOtherCalf(best.reading)) {
            return thresholds.otherCalf();
        }
        return other.reading.tellsOtherValue(best.reading) ? thresholds.otherValue() : thresholds.margin();
    }

    /** Something as loud as speech beside the words. */
    private Optional<Misgiving> leftOut(Candidate best) {
        Duration most = Duration.ofMillis((long) thresholds.leftOutMillis());
        return evidence.envelope()
                .map(envelope -> envelope.longestWithout(best.plainest.words()))
                .filter(sound -> sound.compareTo(most) > 0)
                .map(sound -> new Misgiving.LeavesOut(sound, most));
    }

    /**
     * In noise free speech fits better anyway, as it has a word for every noise; and it fits a control that was said, as
     * those are plain English.
     */
    private double mostFree(Interpretation meaning) {
        if (meaning instanceof Interpretation.ControlHeard) {
            return thresholds.rejectFree();
        }
        return evidence.envelope()
                .filter(envelope -> envelope.clearness() < thresholds.clear())
                .map(noisy -> thresholds.freeInNoise())
                .orElse(thresholds.free());
    }

    /** By how much, for each word, free speech fits the sound better. */
    private double freeLead(Candidate best) {
        return evidence.plain().isEmpty()
                ? Double.NEGATIVE_INFINITY
                : evidence.freeLead(
                        evidence.plain().get(0).score() - best.lags[0],
                        best.reading.words().size());
    }

    /** What a hearing had before it, where all of it is words. */
    private Doubt otherWords(Candidate best) {
        return evidence.passes().stream()
                .flatMap(pass -> pass.stream().limit(1))
                .map(Hypothesis::texts)
                .filter(words -> !words.equals(best.reading.words()) && !words.contains(RecognizedWord.UNKNOWN))
                .findFirst()
                .map(words -> (Doubt) new Doubt.SoundsLike(words))
                .orElseGet(Doubt.Unclear::new);
    }
}
