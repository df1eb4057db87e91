package strawbed.bench;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import strawbed.audio.Sound;
import strawbed.voice.FreeTtsVoice;

/**
 * What an open microphone hears in a barn where nobody talks to the recorder: rounds of six minutes (quiet, then each
 * noise of the bench, then voices) at levels that change, with two sentences of chatter in each minute. A minute is
 * made when it is asked for, the same for the same seed. Owned by one thread.
 */
public final class BarnSound {
    /** Sentences of chatter in each minute. */
    public static final int CHATTER_A_MINUTE = 2;

    private static final List<Noise> NOISES = List.of(Noise.values());

    private static final int MINUTE = 60 * Sound.RATE;

    /** Quiet, the noises, and overlapping voices. */
    private static final int KINDS = NOISES.size() + 2;

    /** Of a microphone by itself, in dB of full scale. */
    private static final double HUSH = -65;

    /** The lowest and the highest level of noise, in dB of full scale. */
    private static final double SOFT = -50;

    private static final double HARD = -22;

    /** The lowest and the highest level of chatter: from across the barn, and beside the microphone. */
    private static final double FAR = -38;

    private static final double NEAR = -16;

    /** Enough for voices that do not repeat soon, and no more memory than need be. */
    private static final int OVERLAPPING = 30;

    private final FreeTtsVoice voice = new FreeTtsVoice();
    private final List<String> chatter = Babble.lines("/chatter-sentences.txt");
    private final Babble babble =
            new Babble(chatter.stream().limit(OVERLAPPING).map(voice::speak).toList());
    private final long seed;

    public BarnSound(long seed) {
        this.seed = seed;
    }

    /** What a minute is made of, in words. */
    public static String name(int minute) {
        int kind = Math.floorMod(minute, KINDS);
        if (kind == 0) {
            return "quiet";
        }
        return kind <= NOISES.size() ? NOISES.get(kind - 1).words() : "overlapping voices";
    }

    /** A minute of it, from the first on, which is 0. */
    public Sound minute(int minute) {
        SplittableRandom random = new SplittableRandom(Objects.hash("barn", seed, minute));
        short[] all = ground(Math.floorMod(minute, KINDS), random).copySamples();
        int part = MINUTE / CHATTER_A_MINUTE;
        for (int i = 0; i < CHATTER_A_MINUTE; i++) {
            Sound said = voice.speak(chatter.get(random.nextInt(chatter.size())));
            double gain = amplitude(random.nextDouble(FAR, NEAR)) / Math.max(1, Mix.activeLevel(said.copySamples()));
            add(all, said, i * part + random.nextInt(Math.max(1, part - said.length())), gain);
        }
        return Sound.of(all, 0);
    }

    private Sound ground(int kind, SplittableRandom random) {
        if (kind == 0) {
            return Mix.alone(Noise.pink(MINUTE, random), amplitude(HUSH));
        }
        double[] noise =
                kind <= NOISES.size() ? NOISES.get(kind - 1).made(MINUTE, random) : babble.made(MINUTE, random);
        return Mix.alone(noise, amplitude(random.nextDouble(SOFT, HARD)));
    }

    private static void add(short[] all, Sound said, int at, double gain) {
        short[] samples = said.copySamples();
        for (int i = 0; i < samples.length && at + i < all.length; i++) {
            all[at + i] = Mix.clipped(all[at + i] + gain * samples[i]);
        }
    }

    /** A fan that runs, a minute long, at a level in dB of full scale. */
    public static Sound fan(double decibels) {
        return Mix.alone(Noise.FAN.made(MINUTE, new SplittableRandom(60)), amplitude(decibels));
    }

    /** What a microphone gives in a quiet place, a minute long. */
    public static Sound hush() {
        return Mix.alone(Noise.pink(MINUTE, new SplittableRandom(65)), amplitude(HUSH));
    }

    /** The level of a sound while somebody speaks in it, in dB of full scale. */
    public static double speechLevel(Sound sound) {
        return 20 * Math.log10(Math.max(1, Mix.activeLevel(sound.copySamples())) / -(double) Short.MIN_VALUE);
    }

    /** The root mean square of samples that have a level in dB of full scale. */
    public static double amplitude(double decibels) {
        return -Short.MIN_VALUE * Math.pow(10, decibels / 20);
    }
}
