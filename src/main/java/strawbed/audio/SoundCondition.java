package strawbed.audio;

import java.util.Locale;

/**
 * Whether the sound of an utterance is fit to be understood, and what is wrong with it if not. Noise that comes and goes,
 * as of gates and cows, is mostly not told: its quiet moments are taken for the place.
 */
public enum SoundCondition {
    GOOD,
    TOO_QUIET,
    /** Driven into full scale, where its form is lost. */
    TOO_LOUD,
    TOO_NOISY;

    /**
     * In dB of full scale. Set on recordings here, by those that PeoplesSoundsIT judges: the quietest speaker of the
     * digits has -52, the loudest of them 40 dB down -56.
     */
    static final double LEAST_LEVEL = -54;

    /**
     * As a part of the time of speech. Set on recordings here, by the same and by the voices kept for testing: 6 dB over
     * full scale cost the voices nothing, 12 dB much. People's recordings 20 dB over it have 0.05 at least.
     */
    static final double MOST_CLIPPED = 0.03;

    /** In dB. Our own measurements with this speech model: below about 15 dB a level meter should warn. */
    static final double LEAST_OVER_NOISE = 15;

    /** Judges an utterance with some of the place before its speech, as {@link Endpointer} gives it. */
    public static SoundCondition of(Sound utterance) {
        return of(SoundMeasure.of(utterance));
    }

    /** The first that holds: what is clipped has a false noise, and so has what is hardly above the last bit. */
    static SoundCondition of(SoundMeasure measure) {
        if (measure.clipped() > MOST_CLIPPED) {
            return TOO_LOUD;
        }
        if (measure.level() < LEAST_LEVEL) {
            return TOO_QUIET;
        }
        return measure.overNoise() < LEAST_OVER_NOISE ? TOO_NOISY : GOOD;
    }

    /** As files for other programs name it, such as "too noisy". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
