package strawbed.audio;

import java.util.Arrays;

/**
 * Short sounds that tell how it went, for people who do not look. They differ in their rhythm, which is heard where a
 * pitch is not: in noise, and by people who hear high tones badly. None has the rhythm of an alarm of medical devices
 * (IEC 60601-1-8: one, two, three, or three and two equal pulses). Made by formula.
 */
public enum Cue {
    /** Something was heard and is being looked at: one soft tick. */
    HEARD,
    /** A fact is in the record: short and long, rising. */
    SAVED,
    /** An answer is wanted: long and short, and then a glide upwards, as in a question. */
    QUESTION,
    /** Something needs a person: 0.9 s of two tones by turns, without a pause, and the loudest of all. */
    PROBLEM;

    private static final double EDGE_MILLIS = 8;

    /** One tone, or a glide from one to another; without a frequency it is a pause. */
    private record Part(double millis, double fromHertz, double toHertz) {
        boolean isPause() {
            return fromHertz == 0;
        }
    }

    /** The sound, always the same. */
    public Sound sound() {
        return switch (this) {
            case HEARD -> render(0.2, tone(50, 1_200));
            case SAVED -> render(0.35, tone(70, 880), pause(60), tone(210, 1_320));
            case QUESTION ->
                render(0.5, tone(200, 1_000), pause(70), tone(80, 1_000), pause(70), new Part(320, 800, 1_700));
            case PROBLEM -> render(0.9, warble(90, 10, 1_000, 1_500));
        };
    }

    private static Part tone(double millis, double hertz) {
        return new Part(millis, hertz, hertz);
    }

    private static Part pause(double millis) {
        return new Part(millis, 0, 0);
    }

    private static Part[] warble(double millis, int count, double oneHertz, double otherHertz) {
        Part[] parts = new Part[count];
        for (int i = 0; i < count; i++) {
            parts[i] = tone(millis, i % 2 == 0 ? oneHertz : otherHertz);
        }
        return parts;
    }

    /**
     * The parts in a row; the wave goes on from tone to tone without a step, so that nothing clicks.
     *
     * @param peak of full scale
     */
    private static Sound render(double peak, Part... parts) {
        int length = Arrays.stream(parts).mapToInt(Cue::samples).sum();
        short[] samples = new short[length];
        double phase = 0;
        int at = 0;
        for (int p = 0; p < parts.length; p++) {
            Part part = parts[p];
            int count = samples(part);
            boolean opens = p == 0 || parts[p - 1].isPause();
            boolean closes = p == parts.length - 1 || parts[p + 1].isPause();
            for (int i = 0; i < count && !part.isPause(); i++) {
                double hertz = part.fromHertz() + (part.toHertz() - part.fromHertz()) * i / count;
                phase += 2 * Math.PI * hertz / Sound.RATE;
                double edge = Math.min(opens ? edge(i) : 1, closes ? edge(count - 1 - i) : 1);
                samples[at + i] = (short) Math.round(Short.MAX_VALUE * peak * edge * Math.sin(phase));
            }
            at += count;
        }
        return Sound.of(samples, 0);
    }

    private static int samples(Part part) {
        return (int) (part.millis() * Sound.RATE / 1_000);
    }

    /** A raised cosine: from 0 at the end of a tone to 1 within it. */
    private static double edge(int samplesFromEnd) {
        double part = samplesFromEnd / (EDGE_MILLIS * Sound.RATE / 1_000);
        return part >= 1 ? 1 : (1 - Math.cos(Math.PI * part)) / 2;
    }
}
