package strawbed.alike;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A phone of the CMU Pronouncing Dictionary with what tells it from others: of a vowel where the tongue begins and ends,
 * of a consonant voice, place and manner.
 *
 * <p>The features are those of the International Phonetic Association's chart; the weights put on them are our own
 * (common practice, no published source), held against the stand-ins that were measured to be heard.
 */
enum Phone {
    // Vowels: height from open 0 to close 1 and depth from front 0 to back 1, at the beginning and at the end.
    AA(0.0, 0.8),
    AE(0.15, 0.1),
    AH(0.3, 0.6),
    AO(0.25, 1.0),
    AX(0.45, 0.5),
    EH(0.4, 0.1),
    ER(0.5, 0.5),
    IH(0.8, 0.2),
    IY(1.0, 0.0),
    UH(0.8, 0.8),
    UW(1.0, 1.0),
    AW(0.05, 0.5, 0.8, 0.9),
    AY(0.05, 0.5, 0.8, 0.1),
    EY(0.55, 0.1, 0.9, 0.1),
    OW(0.5, 1.0, 0.8, 0.9),
    OY(0.4, 1.0, 0.8, 0.1),
    // Consonants: place from lips 0 to throat 1.
    P(false, 0.0, Manner.STOP),
    B(true, 0.0, Manner.STOP),
    T(false, 0.4, Manner.STOP),
    D(true, 0.4, Manner.STOP),
    K(false, 0.8, Manner.STOP),
    G(true, 0.8, Manner.STOP),
    CH(false, 0.5, Manner.AFFRICATE),
    JH(true, 0.5, Manner.AFFRICATE),
    F(false, 0.1, Manner.FRICATIVE),
    V(true, 0.1, Manner.FRICATIVE),
    TH(false, 0.25, Manner.FRICATIVE),
    DH(true, 0.25, Manner.FRICATIVE),
    S(false, 0.4, Manner.SIBILANT),
    Z(true, 0.4, Manner.SIBILANT),
    SH(false, 0.5, Manner.SIBILANT),
    ZH(true, 0.5, Manner.SIBILANT),
    HH(false, 1.0, Manner.FRICATIVE),
    M(true, 0.0, Manner.NASAL),
    N(true, 0.4, Manner.NASAL),
    NG(true, 0.8, Manner.NASAL),
    L(true, 0.4, Manner.LIQUID),
    R(true, 0.5, Manner.LIQUID),
    W(true, 0.0, Manner.GLIDE),
    Y(true, 0.6, Manner.GLIDE);

    /** How breath gets out; the further apart, the more it is heard. */
    private enum Manner {
        STOP(0),
        AFFRICATE(0.35),
        SIBILANT(0.7),
        FRICATIVE(0.55),
        NASAL(1.2),
        LIQUID(1.6),
        GLIDE(1.8);

        private final double at;

        Manner(double at) {
            this.at = at;
        }
    }

    private static final double VOICE = 0.2;
    private static final double PLACE = 0.6;
    private static final double VOWEL = 0.8;

    private static final Map<String, Phone> NAMED =
            Arrays.stream(values()).collect(Collectors.toMap(Phone::text, Function.identity()));

    private final boolean vowel;
    private final boolean voiced;
    private final double x;
    private final double y;
    private final double endX;
    private final double endY;

    Phone(double height, double depth) {
        this(height, depth, height, depth);
    }

    Phone(double height, double depth, double endHeight, double endDepth) {
        this.vowel = true;
        this.voiced = true;
        this.x = height;
        this.y = depth;
        this.endX = endHeight;
        this.endY = endDepth;
    }

    Phone(boolean voiced, double place, Manner manner) {
        this.vowel = false;
        this.voiced = voiced;
        this.x = place;
        this.y = manner.at;
        this.endX = x;
        this.endY = y;
    }

    /**
     * The phone with this name.
     *
     * @throws IllegalArgumentException if the dictionary has none such
     */
    static Phone named(String name) {
        Phone phone = NAMED.get(name);
        if (phone == null) {
            throw new IllegalArgumentException("No phone is called \"" + name + "\"");
        }
        return phone;
    }

    private String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it costs when this is heard where nothing was said, or not heard: little for what people swallow. */
    double weight() {
        return switch (this) {
            case AX -> 0.35;
            case HH, T, D -> 0.4;
            case IH, Y, W, R, L -> 0.5;
            default -> vowel ? 0.8 : 0.65;
        };
    }

    /** What it costs when this is taken for another, from 0 to 1. */
    double distance(Phone other) {
        if (this == other) {
            return 0;
        }
        if (vowel && other.vowel) {
            double begin = Math.hypot(x - other.x, y - other.y);
            double end = Math.hypot(endX - other.endX, endY - other.endY);
            double rhotic = this == ER || other == ER ? 0.3 : 0;
            return Math.min(1, 0.1 + rhotic + VOWEL * (begin + end) / 2);
        }
        if (vowel || other.vowel) {
            return vowel ? nearGlide(this, other) : nearGlide(other, this);
        }
        double voice = voiced == other.voiced ? 0 : VOICE;
        return Math.min(1, 0.1 + voice + PLACE * Math.abs(x - other.x) + Math.abs(y - other.y));
    }

    private static double nearGlide(Phone vowel, Phone consonant) {
        return switch (consonant) {
            case Y -> vowel == IY || vowel == IH ? 0.35 : 1;
            case W -> vowel == UW || vowel == UH ? 0.35 : 1;
            case R -> vowel == ER ? 0.25 : 1;
            default -> 1;
        };
    }
}
